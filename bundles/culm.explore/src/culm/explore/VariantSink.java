package culm.explore;

import java.io.IOException;

/** Takes variants as they come, in the order of their rows. */
public interface VariantSink {
    /** Before the first row. */
    default void begin(VariantHead head) throws IOException {
    }

    void rows(VariantBlock block) throws IOException;
}

package culm.workbench.internal.editor;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something that is made when it is first asked for. Used on the display's thread only.
 *
 * @param <T> what
 */
final class Late<T> {
    private final Supplier<T> maker;
    private Optional<T> made = Optional.empty();

    Late(Supplier<T> maker) {
        this.maker = maker;
    }

    /** {@return it; made now when it was not yet} */
    T get() {
        if (made.isEmpty()) {
            made = Optional.of(maker.get());
        }
        return made.get();
    }

    /** {@return it, if it was made} */
    Optional<T> ifMade() {
        return made;
    }
}

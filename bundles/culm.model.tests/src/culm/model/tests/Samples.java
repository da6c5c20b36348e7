package culm.model.tests;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The sample files beside the tests. */
final class Samples {
    private Samples() {
    }

    static String text(String name) throws IOException {
        try (InputStream in = Samples.class.getResourceAsStream("samples/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}

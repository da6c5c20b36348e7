package culm.figures;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** The data of drawings know no screen: java.awt only where pixels are made, PDFBox only where fonts are read and PDF is written, nothing of SWT. */
class ArrowsTest {
    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(Path.of("src"))) {
            return all.filter(p -> p.toString().endsWith(".java")).toList();
        }
    }

    @Test
    void eachBackEndKeepsToItself() throws IOException {
        List<Path> sources = sources();
        assertTrue(sources.size() > 50, "run from the bundle's folder");
        for (Path source : sources) {
            String text = Files.readString(source);
            String folder = source.getParent().getFileName().toString();
            assertTrue(folder.equals("png") || !text.contains("import java.awt") && !text.contains("import javax.imageio"), source + " uses AWT");
            assertTrue(List.of("pdf", "font", "png").contains(folder) || !text.contains("import org.apache"), source + " uses PDFBox");
            assertTrue(!text.contains("import org.eclipse"), source + " uses Eclipse");
        }
    }

    @Test
    void noFileGrowsTooLong() throws IOException {
        for (Path source : sources()) {
            assertTrue(Files.readAllLines(source).size() <= 300, source + " is too long");
        }
    }
}

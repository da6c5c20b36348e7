package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

/** Habits that no compiler holds: short files, text that ends its lines one way. */
class HandWrittenTest {

    private static final int MOST_LINES = 500;
    private static final Set<String> CODE = Set.of("java", "xcore", "xml", "sh", "md", "properties", "exsd", "css", "product", "target", "MF");

    @Test
    void noFileIsLong() throws IOException {
        List<Path> code = Tree.written().stream().filter(HandWrittenTest::isCode).toList();
        assertTrue(code.size() > 50, "only " + code.size() + " files were found");
        List<String> tooLong = code.stream().filter(each -> Tree.lines(each).size() > MOST_LINES).map(this::shortName).toList();
        assertEquals(List.of(), tooLong, "files over " + MOST_LINES + " lines");
    }

    @Test
    void noFileNamesAFolderOfOneMachine() throws IOException {
        List<String> found = Tree.written().stream().filter(HandWrittenTest::isCode)
                .filter(each -> Tree.lines(each).stream().anyMatch(line -> line.matches(".*[\"'(= ]/(home|work|Users)/[a-z]+/.*"))).map(this::shortName).toList();
        assertEquals(List.of(), found);
    }

    @Test
    void codeIsIndentedBySpaces() throws IOException {
        List<String> found = Tree.written().stream().filter(each -> each.toString().endsWith(".java"))
                .filter(each -> Tree.lines(each).stream().anyMatch(line -> line.startsWith("\t"))).map(this::shortName).toList();
        assertEquals(List.of(), found);
    }

    private String shortName(Path file) {
        return Tree.ROOT.relativize(file).toString();
    }

    private static boolean isCode(Path file) {
        String name = file.getFileName().toString();
        return CODE.contains(name.substring(name.lastIndexOf('.') + 1));
    }
}

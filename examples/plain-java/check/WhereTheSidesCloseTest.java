import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.junit.jupiter.api.Test;

/** The example does what the README says, and the README shows the example as it is. */
class WhereTheSidesCloseTest {
    @Test
    void tellsWhereTheSidesClose() {
        PrintStream before = System.out;
        Locale locale = Locale.getDefault();
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        try {
            Locale.setDefault(Locale.ROOT);
            System.setOut(new PrintStream(told, true, StandardCharsets.UTF_8));
            WhereTheSidesClose.main(new String[0]);
        } finally {
            System.setOut(before);
            Locale.setDefault(locale);
        }
        String sentence = told.toString(StandardCharsets.UTF_8).strip();
        assertTrue(sentence.matches("The sides close at 4[56]\\.\\d mm with \\d\\.\\d turns left, give or take \\d\\.\\d\\."), sentence);
    }

    @Test
    void theReadmeShowsIt() throws IOException {
        String source = Files.readString(Path.of("src/WhereTheSidesClose.java"));
        String body = source.substring(source.indexOf("        Blank blank"), source.indexOf("    }\n}"));
        String readme = Files.readString(Path.of("../../README.md"));
        assertTrue(body.lines().allMatch(line -> readme.contains(line.strip())), "the README's example is another one");
    }
}

package culm.cli.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.cli.Terminal;
import culm.explore.Spread;
import culm.explore.Varied;
import culm.geometry.profile.Profiles;

/** Spreads that were measured, from tables as spreadsheets write them. */
class SpreadsTest {
    @TempDir
    Path folder;

    @BeforeEach
    void aStudio() throws Exception {
        Path examples = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(examples.resolve("examples/studio"))) {
            examples = examples.getParent();
        }
        for (String name : List.of("trial-12.reed", "harbour-row.parts")) {
            Files.copy(examples.resolve("examples/studio").resolve(name), folder.resolve(name));
        }
    }

    private List<Varied> spreads(String spread) throws Exception {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        Question question = new Question(Arguments.read(List.of("trial-12.reed", "tie.length=" + spread), List.of(), List.of()), Profiles.load(), Rules.load(),
                new Terminal(nowhere, nowhere, folder));
        return Spreads.of(question, true);
    }

    private void table(String text) throws Exception {
        Files.writeString(folder.resolve("measured.csv"), text);
    }

    private double[] measured() throws Exception {
        return ((Spread.Measured) spreads("measured:measured.csv:off by").get(0).spread()).values();
    }

    @Test
    void theyAreReadWhateverTheSpreadsheetWrites() throws Exception {
        table("blank,off by\n1,0.1\n2,-0.25\n");
        assertEquals(List.of(0.1, -0.25), java.util.Arrays.stream(measured()).boxed().toList());
        table("\uFEFFblank;\"off by\";\"remark; long\"\r\n1;0,1;\"a; b\"\r\n\r\n2;\u22120,25;\r\n");
        assertEquals(List.of(0.1, -0.25), java.util.Arrays.stream(measured()).boxed().toList());
        table("# caliper: 0.03\nblank\toff by\n1\t0.1\n2\t-0.25\n");
        assertEquals(List.of(0.1, -0.25), java.util.Arrays.stream(measured()).boxed().toList());
    }

    @Test
    void whatCannotBeReadIsToldWithItsLine() throws Exception {
        table("blank,off by\n1,0.1\n\n2,much\n");
        String why = assertThrows(CommandException.class, this::measured).getMessage();
        assertEquals("measured.csv, line 4: 'much' is not a number", why);
        table("blank,other\n1,0.1\n");
        assertTrue(assertThrows(CommandException.class, this::measured).getMessage().contains("no column 'off by'; there are blank, other"));
    }

    @Test
    void othersAreRefusedWithTheWord() throws Exception {
        assertTrue(assertThrows(CommandException.class, () -> spreads("normal:much")).getMessage().contains("'much' is not a number"));
        assertTrue(assertThrows(CommandException.class, () -> spreads("normal:NaN")).getMessage().contains("'NaN' is not a number"));
        assertEquals(new Spread.Normal(0.05), spreads("normal:0.05").get(0).spread());
    }
}

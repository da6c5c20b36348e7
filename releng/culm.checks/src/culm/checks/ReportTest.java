package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** {@code culm report} on the example studio, as a process without a display. */
class ReportTest {
    private static final Path STUDIO = Tree.ROOT.resolve("examples/studio");

    private static JsonObject json(String design) throws Exception {
        return JsonParser.parseString(CommandLine.run(STUDIO, "report", design, "--json").out()).getAsJsonObject();
    }

    private static boolean found(JsonObject report, String rule, String severity) {
        return report.getAsJsonArray("findings").asList().stream().map(f -> f.getAsJsonObject())
                .anyMatch(f -> f.get("rule").getAsString().equals(rule) && f.get("severity").getAsString().equals(severity));
    }

    @ParameterizedTest
    @CsvSource({"trial-12.reed, 0, turnsLeft, warning", "trial-8-overwrapped.reed, 1, overwrapped, error", "trial-9-open.reed, 1, sidesOpen, error",
            "trial-10-closes-low.reed, 0, turnsLeft, warning", "trial-11-measured-staple.reed, 0, tiePerTurn, fine",
            "trial-13-two-gouges.reed, 0, tiePerTurn, fine", "trial-14.reed, 0, turnsLeft, fine", "horn-3.reed, 0, tiePerTurn, fine"})
    void eachExampleShowsWhatItIsThereFor(String design, int code, String rule, String severity) throws Exception {
        CommandLine run = CommandLine.run(STUDIO, "report", design, "--json");
        assertEquals(code, run.code(), run.err());
        assertTrue(found(JsonParser.parseString(run.out()).getAsJsonObject(), rule, severity), run.out());
    }

    /** Common practice, no source: tied at 72 on a staple of 47, the sides close about one turn under a wrap that stops at 46.5. */
    @Test
    void tiedAt72TheSidesCloseAboutOneTurnUnderTheWrap() throws Exception {
        JsonObject report = json("trial-12.reed");
        assertEquals(46.5, report.getAsJsonObject("heights").get("wrapTop").getAsDouble());
        assertEquals(47, report.getAsJsonObject("heights").get("stapleTop").getAsDouble());
        assertEquals(1, report.get("turnsLeft").getAsDouble(), 0.5);
        assertEquals(0.9, report.get("tieLengthPerTurn").getAsDouble(), 0.1);
    }

    /** Common practice, no source: a shorter tie closes lower. */
    @Test
    void aShorterTieClosesLower() throws Exception {
        assertTrue(json("trial-10-closes-low.reed").get("sidesCloseAt").getAsDouble() < json("trial-12.reed").get("sidesCloseAt").getAsDouble());
    }

    @Test
    void aSpoolIsEnoughForSoManyBlanks() throws Exception {
        CommandLine run = CommandLine.run(STUDIO, "report", "trial-12.reed", "--spool", "50", "--tails", "200", "--json");
        JsonObject spool = JsonParser.parseString(run.out()).getAsJsonObject().getAsJsonObject("spool");
        double each = spool.get("perBlank").getAsDouble();
        int blanks = spool.get("blanks").getAsInt();
        assertEquals(json("trial-12.reed").getAsJsonObject("thread").get("length").getAsDouble() + 200, each, 1e-9);
        assertTrue(blanks * each <= 50_000 && (blanks + 1) * each > 50_000, spool.toString());
        assertEquals(50_000 - blanks * each, spool.get("left").getAsDouble(), 1e-6);
        assertTrue(CommandLine.run(STUDIO, "report", "trial-12.reed", "--spool", "50,0").out().contains("enough for " + (int) (50_000 / (each + 100)) + " blanks"));
        assertEquals(2, CommandLine.run(STUDIO, "report", "trial-12.reed", "--spool", "-1").code());
        assertEquals(2, CommandLine.run(STUDIO, "report", "trial-12.reed", "--tails", "100").code());
    }

    @Test
    void marksThatDoNotExistAreLeftOutAndWhatCannotBeToldIsNull() throws Exception {
        JsonObject horn = json("horn-3.reed");
        assertFalse(horn.getAsJsonObject("heights").has("corkTop"));
        JsonObject open = json("trial-9-open.reed");
        assertTrue(open.get("sidesCloseAt").isJsonNull());
        assertTrue(open.get("turnsLeftBand").isJsonNull());
        assertTrue(open.get("openAtStapleTop").getAsDouble() > 0);
        assertFalse(open.getAsJsonObject("heights").has("sidesClose"));
    }

    @Test
    void drawingsAreWritten(@TempDir Path folder) throws Exception {
        assertEquals(0, CommandLine.run(folder, "report", STUDIO.resolve("trial-12.reed").toString(), "--out", "a new folder").code());
        for (String name : new String[] {"length-stack.svg", "cross-section.svg"}) {
            String svg = Files.readString(folder.resolve("a new folder").resolve(name));
            assertTrue(svg.contains("<svg") && svg.endsWith("</svg>\n"), name);
            assertFalse(svg.contains("NaN"), name);
        }
    }

    @Test
    void withoutADisplayTheExampleIsReported() throws Exception {
        CommandLine run = CommandLine.run(STUDIO);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("turns left"), run.out());
        assertEquals(1, run.err().lines().count(), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"report", "report a.reed b.reed", "report --nonsense a.reed", "sing", "report a.reed --out"})
    void wrongUsageIsTwo(String words) throws Exception {
        CommandLine run = CommandLine.run(STUDIO, words.split(" "));
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("culm"), run.err());
    }
}

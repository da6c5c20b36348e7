package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** The exploring commands as processes. */
class ExploreTest {
    private static final Path STUDIO = Tree.ROOT.resolve("examples/studio");

    private static JsonObject json(String... words) throws Exception {
        CommandLine run = CommandLine.run(STUDIO, words);
        assertEquals(0, run.code(), run.err());
        return JsonParser.parseString(run.out()).getAsJsonObject();
    }

    @Test
    void tolerancesAreTheSameForAnyNumberOfThreads() throws Exception {
        JsonObject one = json("tolerances", "trial-12.reed", "--blanks", "20000", "--threads", "1", "--json");
        assertEquals(one, json("tolerances", "trial-12.reed", "--blanks", "20000", "--threads", "3", "--json"));
        JsonObject passed = one.getAsJsonObject("passed");
        assertTrue(passed.get("low").getAsDouble() < passed.get("share").getAsDouble() && passed.get("share").getAsDouble() < passed.get("high").getAsDouble());
        assertEquals(20000, one.get("blanks").getAsLong());
    }

    @Test
    void measuredRowsAreRead(@TempDir Path folder) throws Exception {
        Path rows = folder.resolve("staples.csv");
        Files.writeString(rows, "no;length\n1;46,9\n2;47,1\n");
        JsonObject run = json("tolerances", "trial-12.reed", "staple.length=measured:" + rows + ":length", "--only", "--blanks", "1000", "--json");
        assertTrue(run.getAsJsonObject("turnsLeft").get("standardDeviation").getAsDouble() > 0.05);
        Files.writeString(rows, "no;length\n1;46,9\n2;long\n");
        CommandLine bad = CommandLine.run(STUDIO, "tolerances", "trial-12.reed", "staple.length=measured:" + rows + ":length", "--only");
        assertEquals(3, bad.code());
        assertTrue(bad.err().contains("line 3: 'long' is not a number"), bad.err());
    }

    @Test
    void mattersRanksAndNamesWhatWasAssumed() throws Exception {
        JsonObject matters = json("matters", "trial-12.reed", "--json");
        assertTrue(matters.getAsJsonArray("inputs").size() > 5);
        assertFalse(matters.get("measureBetter").isJsonNull());
    }

    @Test
    void variantsGoToAFile(@TempDir Path folder) throws Exception {
        Path csv = folder.resolve("variants.csv");
        CommandLine run = CommandLine.run(STUDIO, "vary", "trial-12.reed", "staple=trial-12.reed,trial-10-closes-low.reed", "tie.length=71:73:/0.5", "--csv", csv.toString());
        assertEquals(0, run.code(), run.err());
        List<String> lines = Files.readAllLines(csv);
        assertEquals(11, lines.size());
        assertEquals("staple,tie.length,sidesCloseAt,turnsLeft,openAtStapleTop,failed", lines.get(0));
    }

    @Test
    void aMapAndAChoice(@TempDir Path folder) throws Exception {
        JsonObject map = json("map", "trial-12.reed", "tie.length=70:74:21", "shape.width=-0.3:0.3:21", "--json", "--out", folder.toString());
        assertTrue(map.getAsJsonArray("regions").size() > 1);
        String svg = Files.readString(folder.resolve("map.svg"));
        assertTrue(svg.contains("passes every rule") && !svg.contains("NaN"));
        String said = CommandLine.run(STUDIO, "map", "trial-12.reed", "tie.length=70:74:21", "shape.width=-0.3:0.3:21").out();
        assertTrue(said.contains(": passes every rule; bounded by ") && !said.contains("works"), said);
        JsonObject chosen = json("choose", "trial-12.reed", "tie.length=71,72,73", "--json");
        assertTrue(chosen.get("everyCombinationTried").getAsBoolean());
        assertTrue(chosen.get("gain").getAsDouble() >= -0.01);
    }

    @ParameterizedTest
    @CsvSource({"tolerances, tie.length=x", "tolerances, nothing=1", "tolerances, tie.length=normal:-1", "vary, tie.length=1:2", "vary, tie.length=70:72:/-1", "map, tie.length=70:72:3",
        "choose, tie.length=75:70:/1"})
    void wrongWordsAreSaid(String command, String word) throws Exception {
        CommandLine run = CommandLine.run(STUDIO, command, "trial-12.reed", word);
        assertEquals(2, run.code(), run.err());
        assertTrue(run.err().startsWith("culm " + command + ": "), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }
}

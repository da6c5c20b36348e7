package culm.checks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plug-ins in the built program, by the documented path: docs/plug-ins.md. */
class PlugInsTest {
    @TempDir
    Path folder;

    private Path plugIns() {
        return folder.resolve("plug-ins");
    }

    private CommandLine culm(String... words) throws Exception {
        return CommandLine.run(folder, Map.of("CULM_PLUG_INS", plugIns().toString(), "XDG_CACHE_HOME", folder.resolve("cache").toString()), words);
    }

    private static Path exampleJar() throws IOException {
        try (Stream<Path> made = Files.list(Tree.ROOT.resolve("examples/culm.example.plugin/target"))) {
            return made.filter(f -> f.getFileName().toString().matches("culm\\.example\\.plugin-.*\\.jar")).findFirst().orElseThrow();
        }
    }

    @Test
    void theExampleIsInstalledUsedAndTakenAway() throws Exception {
        Path design = Files.copy(Tree.ROOT.resolve("examples/culm.example.plugin/example.reed"), folder.resolve("example.reed"));
        CommandLine without = culm("report", "example.reed");
        assertEquals(1, without.code(), without.err());
        assertTrue(without.out().contains("example.staple.stepped") && without.out().contains("bottom 5.6"), without.out());

        Files.createDirectory(plugIns());
        Path jar = Files.copy(exampleJar(), plugIns().resolve("example.jar"));
        Files.writeString(plugIns().resolve("broken.jar"), "this is no jar");
        CommandLine list = culm("plug-ins");
        assertEquals(0, list.code(), list.err());
        for (String said : List.of("from example.jar", "example.staple.stepped", "stepped tube", "example.shape.fourWidths", "example.rule.caneOnStaple", "broken.jar is not in use")) {
            assertTrue(list.out().contains(said), said + " is not in " + list.out());
        }
        CommandLine with = culm("report", "example.reed");
        assertEquals(0, with.code(), with.out());
        assertTrue(with.out().contains("turns left") && with.out().contains("of cane on the staple hold the blades straight") && with.out().contains("broken.jar"), with.out());
        assertTrue(culm("parameters", "stepped").out().contains("step below the top"));
        String table = culm("parameters").out();
        assertTrue(table.contains("stepped tube (example.staple.stepped)") && table.contains("four widths (example.shape.fourWidths)"), table);

        Files.delete(jar);
        assertFalse(culm("plug-ins").out().contains("example"));
        assertFalse(culm("parameters").out().contains("stepped tube"));
        assertEquals(without.out().replace("\r", ""), culm("report", "example.reed").out().replaceAll("(?m)^.*broken\\.jar.*\\R.*Remove the plug-in.*\\R", ""));
        assertTrue(Files.readString(design).contains("example.staple.stepped"));
    }

    /** Without its plug-in a design is changed and changed back by the program: every byte of it is as it was. */
    @Test
    void withoutItsPlugInADesignIsSavedAsItWas() throws Exception {
        String thread = "<thread id=\"%s\"><diameter value=\"0.41\"/></thread>";
        Files.writeString(folder.resolve("drawer.parts"), "<parts format=\"1\" id=\"drawer\">" + thread.formatted("red") + thread.formatted("blue") + "</parts>");
        String text = Files.readString(Tree.ROOT.resolve("examples/culm.example.plugin/example.reed"))
                .replaceFirst("(?s)<thread id=\"ff\">.*?</thread>", "<thread link=\"drawer.parts#red\"/>");
        Path design = Files.writeString(folder.resolve("example.reed"), text);
        assertEquals(0, culm("replace", "drawer.parts#red", "drawer.parts#blue", "--write").code());
        assertEquals(text.replace("#red", "#blue"), Files.readString(design));
        assertEquals(0, culm("replace", "drawer.parts#blue", "drawer.parts#red", "--write").code());
        assertEquals(text, Files.readString(design));
    }

    @ParameterizedTest
    @ValueSource(strings = {"staple", "gouge", "shape", "rule", "exporter"})
    void aNewOneIsMadeBuiltTestedAndInstalled(String kind) throws Exception {
        CommandLine made = culm("new-plug-in", "harbour.bells", "--kind", kind);
        assertEquals(0, made.code(), made.out() + made.err());
        assertTrue(made.out().contains("0 tests failed"), made.out());
        assertTrue(Files.exists(plugIns().resolve("harbour.bells.jar")));
        assertTrue(culm("plug-ins").out().contains("from harbour.bells.jar"));
    }

    @Test
    void onesOwnMistakesAreToldWithFileAndLine() throws Exception {
        assertEquals(2, culm("new-plug-in", "Harbour Bells").code());
        assertEquals(2, culm("new-plug-in", "int.x").code());
        assertEquals(0, culm("new-plug-in", "harbour.bells").code());
        assertEquals(3, culm("new-plug-in", "harbour.bells").code(), "it is there already");
        Path jar = plugIns().resolve("harbour.bells.jar");
        byte[] good = Files.readAllBytes(jar);
        Path source = folder.resolve("harbour.bells/src/harbour/bells/BentLine.java");
        String text = Files.readString(source);

        Files.writeString(source, text.replace("return new double[] {bendAt};", "return bendAt;"));
        CommandLine wrong = culm("build-plug-in", "harbour.bells");
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains("BentLine.java, line "), wrong.err());

        Files.writeString(source, text.replace("return new double[] {bendAt};", "return new double[] {-1};"));
        CommandLine failing = culm("build-plug-in", "harbour.bells");
        assertEquals(3, failing.code());
        assertTrue(failing.err().contains("its tests fail") && failing.out().contains("a break at -1.0 is outside"), failing.out() + failing.err());
        assertArrayEquals(good, Files.readAllBytes(jar), "what is installed stays");
    }
}

package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import culm.blank.Input;
import culm.blank.Inputs;
import culm.design.DesignedBlank;
import culm.design.Places;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.model.Design;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;

/** From files to blanks: every number arrives with what is known of it, every wrong one is told with its line. */
class BridgeTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void aCopyOfTheStudio() throws IOException {
        try (Stream<Path> all = Files.list(Studios.examples())) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    static List<String> designs() {
        return Studios.studio().index().of(FileKind.DESIGN).stream().map(entry -> entry.shown()).toList();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyExampleCanBeComputed(String name) throws Exception {
        DesignedBlank blank = Studios.BRIDGE.read(Studios.file(name));
        assertFalse(blank.name().isBlank());
        assertEquals(List.of(), blank.remarks());
        assertTrue(blank.blank().problems().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyGivenNumberHasItsPlaceInAFile(String name) throws Exception {
        DesignedBlank blank = Studios.BRIDGE.read(Studios.file(name));
        for (Input input : blank.blank().inputs()) {
            if (!blank.blank().numbers().containsKey(input.path()) && Inputs.all().containsKey(input.path())) {
                continue;
            }
            Places.Place place = blank.places().of(input.path()).orElseThrow(() -> new AssertionError(input.path()));
            String line = Files.readAllLines(Studios.file(place.file())).get(place.line() - 1);
            boolean shown = line.contains(culm.model.text.Numbers.format(input.value())) || input.path().equals(Inputs.DELTA) && line.contains("<fit");
            assertTrue(shown, input.path() + " " + input.value() + " is not in " + place + ": " + line);
        }
    }

    @Test
    void toleranceAndHowAreCarriedOver() throws Exception {
        var blank = Studios.BRIDGE.read(Studios.file("trial-12.reed")).blank();
        assertEquals(0.05, blank.tolerance(Inputs.STAPLE_LENGTH).plusMinus());
        assertTrue(blank.tolerance(Inputs.STAPLE_LENGTH).measured());
        assertEquals(0.05, blank.tolerance(Inputs.COMPRESSION).plusMinus());
        assertFalse(blank.tolerance(Inputs.COMPRESSION).measured());
        assertEquals(0.03, blank.tolerance("shape.places[3].width").plusMinus());
        assertTrue(blank.tolerance("shape.places[3].width").measured());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "trial-12.reed|<length value=\"72\"|<length value=\"2\"|trial-12.reed",
            "trial-12.reed|<wrapTop value=\"46.5\"|<wrapTop value=\"900\"|trial-12.reed",
            "harbour-row.parts|<wall value=\"0.25\"|<wall value=\"9\"|harbour-row.parts",
            "harbour-row.parts|<row id=\"c\" fromFold=\"10\" width=\"6.55\"/>|<row id=\"c\" fromFold=\"3\" width=\"6.55\"/>|harbour-row.parts",
            "harbour-row.parts|<row id=\"c\" fromFold=\"10\" width=\"6.55\"/>|<row id=\"c\" fromFold=\"10\"/>|harbour-row.parts",
            "harbour-row.parts|<parameter name=\"middle\" value=\"0.6\"|<parameter name=\"middle\" value=\"66\"|harbour-row.parts",
            "trial-12.reed|<staple link=\"harbour-row.parts#staple-47\"/>||trial-12.reed",
            "trial-12.reed|#staple-47|#gouge-60-45|trial-12.reed"})
    void aWrongNumberIsToldWithFileAndLine(String file, String from, String to, String named) throws Exception {
        Path changed = folder.resolve(file);
        String text = Files.readString(changed);
        assertTrue(text.contains(from), from);
        Files.writeString(changed, text.replace(from, to == null ? "" : to));
        FileProblem problem = assertThrows(FileProblemException.class, () -> Studios.BRIDGE.read(folder.resolve("trial-12.reed"))).problem();
        assertEquals(named, problem.file());
        assertTrue(problem.line() > 0, problem.message());
        if (to != null) {
            List<String> lines = Files.readAllLines(changed);
            String around = String.join("\n", lines.subList(Math.max(0, problem.line() - 2), Math.min(lines.size(), problem.line() + 1)));
            assertTrue(around.contains(to.substring(0, Math.min(to.length(), 20))), problem.message() + " says " + around);
        }
    }

    @Test
    void aNewerFileIsNotComputed() throws Exception {
        Path file = folder.resolve("trial-12.reed");
        Files.writeString(file, Files.readString(file).replace("format=\"1\"", "format=\"2\""));
        assertEquals(FileProblem.Kind.NEWER_FORMAT, assertThrows(FileProblemException.class, () -> Studios.BRIDGE.read(file)).problem().kind());
    }

    @Test
    void theDesignsOwnLimitsStandOnTopOfTheStudios() throws Exception {
        Files.writeString(folder.resolve("studio.limits"), "<limits format=\"1\"><limit name=\"turnsMost\" value=\"3\"/><limit name=\"turnsFewest\" value=\"0.5\"/></limits>");
        Path file = folder.resolve("trial-12.reed");
        Files.writeString(file, Files.readString(file).replace("</reed>", "<limits><limit name=\"turnsMost\" value=\"1.5\"/></limits></reed>"));
        var limits = Studios.BRIDGE.read(file).limits();
        assertEquals(1.5, limits.get("turnsMost"));
        assertEquals(0.5, limits.get("turnsFewest"));
        assertEquals(1, limits.get("turnsWanted"));
    }

    /** A change by path in the design is the change by path in the blank, for every input there is. */
    @ParameterizedTest
    @MethodSource("designs")
    void everyInputCanBeSetByItsPath(String name) throws Exception {
        for (Input input : Studios.BRIDGE.read(Studios.file(name)).blank().inputs()) {
            // A fit is replaced as a whole, and a measured staple begins at its bottom.
            if (input.path().equals(Inputs.DELTA) || input.path().equals("staple.places[0].height")) {
                continue;
            }
            Design design = Studios.design(name);
            double value = input.value() + 1e-3 * (input.value() < input.parameter().max() ? 1 : -1);
            Edits.of(design, PartResolver.in(Studios.studio(), Studios.file(name), name), new SplittableRandom(1)).setValue(input.path(), value).execute();
            var blank = Studios.BRIDGE.of(design, Studios.file(name), name, Studios.studio()).blank();
            assertEquals(value, blank.value(input.path()).orElseThrow(), input.path());
        }
    }
}

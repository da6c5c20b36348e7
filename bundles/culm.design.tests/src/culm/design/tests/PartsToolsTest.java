package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.blank.rules.Rules;
import culm.blank.rules.Verdict.Sign;
import culm.design.DesignComparison;
import culm.design.parts.Duplicates;
import culm.design.parts.PartAddress;
import culm.design.parts.Replacement;
import culm.design.parts.Replacement.Preview;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;

/** One part replaced in many designs with a preview, duplicates, two designs side by side. */
class PartsToolsTest {
    @TempDir
    private Path folder;
    private Studio studio;

    @BeforeEach
    void aCopyOfTheStudio() throws IOException {
        try (Stream<Path> all = Files.list(Studios.examples())) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        studio = Studio.at(folder, Studios.FILES);
    }

    private PartAddress part(String id) {
        return new PartAddress(folder.resolve("harbour-row.parts"), id);
    }

    private Replacement replacement(String from, String to) {
        return new Replacement(studio, Studios.BRIDGE, Rules.load(), part(from), part(to));
    }

    @Test
    void aReplacementIsShownThenDoneAndTakenBackToTheByte() throws Exception {
        Path design = folder.resolve("trial-12.reed");
        String before = Files.readString(design);
        List<Preview> previews = replacement("staple-47", "staple-46").preview(studio.index());
        assertEquals(studio.index().usersOf(folder.resolve("harbour-row.parts"), "staple-47").size(), previews.size());
        Preview preview = previews.stream().filter(p -> p.design().equals(design)).findFirst().orElseThrow();
        assertEquals(before, Files.readString(design), "a preview writes nothing");
        assertFalse(preview.before().orElseThrow().sentence().equals(preview.after().orElseThrow().sentence()));
        assertEquals(Sign.DOES_NOT, preview.after().orElseThrow().sign(), "the wrap now stops above the shorter staple's top");
        replacement("staple-47", "staple-46").apply(design);
        assertEquals(before.replace("#staple-47", "#staple-46"), Files.readString(design));
        replacement("staple-46", "staple-47").apply(design);
        assertEquals(before, Files.readString(design));
    }

    @Test
    void aDesignThatNeedsAMissingPlugInKeepsEveryOtherByte() throws Exception {
        Path design = folder.resolve("trial-12.reed");
        Path parts = folder.resolve("harbour-row.parts");
        Files.writeString(parts, Files.readString(parts).replace("culm.staple.oval", "third.party.bell"));
        String before = Files.readString(design);
        Preview preview = replacement("staple-47", "staple-46").preview(studio.index()).stream().filter(p -> p.design().equals(design)).findFirst().orElseThrow();
        assertTrue(preview.before().orElseThrow().sentence().contains("third.party.bell"), preview.toString());
        replacement("staple-47", "staple-46").apply(design);
        assertEquals(before.replace("#staple-47", "#staple-46"), Files.readString(design));
    }

    @Test
    void aShapeCannotTakeAStaplesPlace() {
        String shape = studio.index().parts().stream().filter(h -> h.part().kind().equals("shape")).findFirst().orElseThrow().part().id();
        FileProblemException e = assertThrows(FileProblemException.class, () -> replacement("staple-47", shape).preview(studio.index()));
        assertEquals(Kind.LINK_WRONG_KIND, e.problem().kind());
        assertEquals(Kind.LINK_PART_MISSING, assertThrows(FileProblemException.class, () -> replacement("staple-47", "none").preview(studio.index())).problem().kind());
    }

    @Test
    void partsThatAreTheSameAreFound() throws Exception {
        assertEquals(List.of(), Duplicates.find(studio, studio.index()).groups());
        String text = Files.readString(folder.resolve("harbour-row.parts"));
        int from = text.indexOf("<staple id=\"staple-46\"");
        String staple = text.substring(from, text.indexOf("</staple>", from) + "</staple>".length());
        Files.writeString(folder.resolve("others.parts"), "<parts format=\"1\" id=\"others\">" + staple.replaceFirst("staple-46", "our-46").replaceFirst("<name>[^<]*</name>", "<name>Ours</name>")
                .replace("how=\"measured\"", "how=\"assumed\"") + "</parts>");
        Files.writeString(folder.resolve("copied.reed"), Files.readString(folder.resolve("trial-12.reed")).replaceFirst("<staple link=[^>]*/>", staple));
        Files.writeString(folder.resolve("near.parts"), "<parts format=\"1\" id=\"near\">" + staple.replaceFirst("<length value=\"[0-9.]+\"", "<length value=\"46.2\"") + "</parts>");
        Duplicates.Report report = Duplicates.find(studio, studio.index());
        assertEquals(1, report.groups().size(), report.groups().toString());
        assertEquals(3, report.groups().get(0).size());
        assertEquals(1, report.groups().get(0).stream().filter(Duplicates.Found::copy).count());
    }

    @Test
    void twoDesignsSideBySide() throws Exception {
        DesignComparison same = DesignComparison.of(Studios.BRIDGE.read(folder.resolve("trial-12.reed")), Studios.BRIDGE.read(folder.resolve("trial-12.reed")), Rules.load());
        assertEquals(List.of(), same.inputs());
        assertTrue(same.results().stream().allMatch(r -> r.change().orElse(0) == 0));
        DesignComparison two = DesignComparison.of(Studios.BRIDGE.read(folder.resolve("trial-12.reed")), Studios.BRIDGE.read(folder.resolve("trial-10-closes-low.reed")), Rules.load());
        assertTrue(two.inputs().stream().anyMatch(i -> i.label().equals("tie length")), two.inputs().toString());
        DesignComparison.ResultRow closes = two.results().get(0);
        assertTrue(closes.change().orElseThrow() < 0, "a shorter tie closes lower");
    }
}

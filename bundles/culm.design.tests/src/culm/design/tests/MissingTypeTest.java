package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.blank.Assessment;
import culm.blank.Mark;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;
import culm.design.AbsentType;
import culm.design.DesignedBlank;
import culm.design.ProfileUpgrade;
import culm.model.Design;
import culm.model.files.Loaded;

/** A design whose plug-in is missing opens, says what is missing, shows its values, and is saved as it was. */
class MissingTypeTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"culm.staple.oval, third.party.bell, staple, 'bottom, topNarrow, topWide'",
            "culm.gouge.middleAndSide, third.party.gouge, gouge, 'middle, side, sideAt'",
            "culm.shape.measured, third.party.shape, shape, ''"})
    void opensAndSaysWhatIsMissing(String type, String missing, String part, String numbers) throws Exception {
        for (String name : List.of("trial-12.reed", "harbour-row.parts")) {
            Files.writeString(folder.resolve(name), Files.readString(Studios.file(name)).replace(type, missing));
        }
        DesignedBlank designed = Studios.BRIDGE.read(folder.resolve("trial-12.reed"));
        Assessment a = designed.assess();
        List<Finding> findings = designed.judge(a, Rules.load());
        assertTrue(a.sidesCloseAt().isEmpty());
        assertEquals(46.5, a.heights().of(Mark.WRAP_TOP).orElseThrow());
        Finding told = findings.stream().filter(f -> f.text().contains(missing)).findFirst().orElseThrow();
        assertEquals(Severity.ERROR, told.severity());
        assertEquals(part, told.path());
        for (String number : numbers.isEmpty() ? new String[0] : numbers.split(", ")) {
            assertTrue(designed.blank().inputs().stream().anyMatch(i -> i.path().equals(part + "." + number) && Double.isFinite(i.value())), number);
        }
        if (part.equals("shape")) {
            assertInstanceOf(AbsentType.class, designed.blank().shape().type());
            assertTrue(designed.blank().inputs().stream().anyMatch(i -> i.path().equals("shape.places[3].width") && i.value() == 5.75));
        }
    }

    @Test
    void isSavedAsItWas() throws Exception {
        String text = Files.readString(Studios.file("trial-11-measured-staple.reed")).replace("culm.staple.measured", "third.party.bell")
                .replace("version=\"1\"", "version=\"7\"");
        Path file = folder.resolve("kept.reed");
        Files.writeString(file, text);
        Loaded<Design> loaded = Studios.FILES.load(file, Design.class);
        assertEquals(List.of(), ProfileUpgrade.apply(loaded.document(), Studios.BRIDGE.profiles()));
        assertEquals(text, Studios.FILES.text(loaded.document()));
    }

    @Test
    void aNewerVersionOfATypeIsKeptAndSaid() throws Exception {
        Files.copy(Studios.file("trial-12.reed"), folder.resolve("trial-12.reed"));
        String parts = Files.readString(Studios.file("harbour-row.parts"));
        Files.writeString(folder.resolve("harbour-row.parts"), parts.replace("type=\"culm.staple.oval\" version=\"1\"", "type=\"culm.staple.oval\" version=\"2\""));
        DesignedBlank designed = Studios.BRIDGE.read(folder.resolve("trial-12.reed"));
        assertTrue(designed.judge(designed.assess(), Rules.load()).stream().anyMatch(f -> f.text().contains("version 2")));
    }
}

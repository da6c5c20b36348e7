package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.design.compare.Choice;
import culm.design.compare.Difference;
import culm.design.compare.Side;
import culm.design.compare.ThreeWay;
import culm.geometry.profile.Profiles;
import culm.geometry.words.LengthText;
import culm.model.Design;
import culm.model.Document;
import culm.model.PartsFile;

/** Three versions compared in words of the trade, and put together without losing anything. */
class ThreeWayTest {
    private static final Profiles PROFILES = Profiles.load();

    private static <D extends Document> D read(String text, Class<D> type) throws Exception {
        return Studios.FILES.read(text.getBytes(StandardCharsets.UTF_8), "file", type).document();
    }

    private static String parts() throws Exception {
        return Files.readString(Studios.file("harbour-row.parts"));
    }

    private static ThreeWay parts(String yours, String theirs) throws Exception {
        return ThreeWay.compare(read(parts(), PartsFile.class), read(yours, PartsFile.class), read(theirs, PartsFile.class), PROFILES);
    }

    @Test
    void nothingChanged() throws Exception {
        ThreeWay same = parts(parts(), parts());
        assertEquals(List.of(), same.differences());
        assertEquals(parts(), Studios.FILES.text(same.merged(Map.of())));
    }

    @Test
    void aWidthThatBothChangedIsAConflictInWords() throws Exception {
        ThreeWay three = parts(parts().replace("fromFold=\"22\" width=\"5.1\"", "fromFold=\"22\" width=\"5.15\""),
                parts().replace("fromFold=\"22\" width=\"5.1\"", "fromFold=\"22\" width=\"5.05\""));
        Difference d = three.conflicts().get(0);
        assertEquals(1, three.differences().size());
        assertTrue(d.label().startsWith("shape") && d.label().endsWith("width at 22 mm from the fold"), d.label());
        assertEquals(List.of("5.1 mm", "5.15 mm", "5.05 mm"), List.of(d.before(), d.yours(), d.theirs()));
        assertTrue(Studios.FILES.text(three.merged(Map.of())).contains("width=\"5.15\""), "without a choice yours is kept");
        assertTrue(Studios.FILES.text(three.merged(Map.of(d.path(), Choice.THEIRS))).contains("width=\"5.05\""));
        assertEquals(parts(), Studios.FILES.text(three.merged(Map.of(d.path(), Choice.BEFORE))));
    }

    @Test
    void whatEachChangedAloneIsTakenFromBoth() throws Exception {
        String yours = parts().replace("fromFold=\"22\" width=\"5.1\"", "fromFold=\"22\" width=\"5.15\"").replace("<name>Harbour Row", "<name>Harbour Row, May,");
        String theirs = parts().replace("fromFold=\"26\" width=\"4.83\"", "fromFold=\"26\" width=\"4.85\"")
                .replace("<parameter name=\"bottom\" value=\"5.4\"", "<parameter name=\"bottom\" value=\"5.45\"");
        ThreeWay three = parts(yours, theirs);
        assertEquals(List.of(), three.conflicts());
        String merged = Studios.FILES.text(three.merged(Map.of()));
        for (String part : List.of("width=\"5.15\"", "width=\"4.85\"", "value=\"5.45\"")) {
            assertTrue(merged.contains(part), part + " is not in " + merged);
        }
        assertEquals(merged, Studios.FILES.text(parts(theirs, yours).merged(Map.of())), "whoever merges");
        assertTrue(three.differences().stream().anyMatch(d -> d.label().equals("staple Harbour Row 47, bottom") || d.label().endsWith(", bottom") && d.side() == Side.THEIRS),
                three.differences().toString());
    }

    @Test
    void rowsThatEachAddedAreBothKeptInOrder() throws Exception {
        String row = "<row id=\"e\" fromFold";
        assertTrue(parts().contains(row));
        String yours = parts().replaceFirst(row, "<row id=\"kovu\" fromFold=\"20\" width=\"5.3\"/>\n      " + row);
        String theirs = parts().replaceFirst(row, "<row id=\"mapi\" fromFold=\"18\" width=\"5.5\"/>\n      " + row);
        String merged = Studios.FILES.text(parts(yours, theirs).merged(Map.of()));
        assertTrue(merged.indexOf("mapi") > 0 && merged.indexOf("mapi") < merged.indexOf("kovu"), merged);
        assertEquals(2, parts(yours, theirs).differences().size());
        assertTrue(parts(yours, theirs).differences().get(0).label().contains("place at "), parts(yours, theirs).differences().toString());
    }

    @Test
    void aRowOneRemovedAndTheOtherChangedIsAConflict() throws Exception {
        String yours = parts().replaceFirst("\\s*<row id=\"e\" fromFold[^>]*/>", "");
        String theirs = parts().replace("fromFold=\"22\" width=\"5.1\"", "fromFold=\"22\" width=\"5.05\"");
        ThreeWay three = parts(yours, theirs);
        Difference d = three.conflicts().get(0);
        assertEquals("", d.yours());
        assertTrue(d.theirs().contains("width 5.05"), d.theirs());
        assertTrue(Studios.FILES.text(three.merged(Map.of(d.path(), Choice.THEIRS))).contains("width=\"5.05\""));
        assertEquals(Studios.FILES.text(read(yours, PartsFile.class)), Studios.FILES.text(three.merged(Map.of())));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"<length value=\"72\"|<length value=\"71.5\"|tie length|tie.length", "<wrapTop value=\"46.5\"|<wrapTop value=\"46\"|top of the wrap|tie.wrapTop",
            "#staple-47|#staple-46|staple|staple"})
    void aDesignsChangesAreInTheBenchsWords(String from, String to, String label, String path) throws Exception {
        String text = Files.readString(Studios.file("trial-12.reed"));
        assertTrue(text.contains(from));
        List<Difference> changes = ThreeWay.changes(read(text, Design.class), read(text.replace(from, to), Design.class), PROFILES);
        assertEquals(1, changes.size(), changes.toString());
        assertEquals(label, changes.get(0).label());
        assertEquals(path, changes.get(0).path());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"trial-12.reed|<length value=\"72\"|<length value=\"71.5\"|72 \u00b1 0.2 mm, measured|71.5 \u00b1 0.2 mm, measured",
            "trial-12.reed|<swellWidth value=\"0\"|<swellWidth value=\"0.07\"|0 \u00b1 2 %, assumed|7 \u00b1 2 %, assumed",
            "harbour-row.parts|name=\"bottom\" value=\"5.4\"|name=\"bottom\" value=\"5.45\"|5.4 \u00b1 0.02 mm, measured|5.45 \u00b1 0.02 mm, measured",
            "class.log|<turnsLeftOnLeft value=\"1.5\"|<turnsLeftOnLeft value=\"1\"|1.5 turns, measured|1 turn, measured"})
    void everyNumberHasItsUnit(String file, String from, String to, String before, String now) throws Exception {
        String text = Files.readString(Studios.file(file));
        assertTrue(text.contains(from), text);
        List<Difference> changes = ThreeWay.changes(read(text, Document.class), read(text.replace(from, to), Document.class), PROFILES);
        assertEquals(List.of(before, now), List.of(changes.get(0).before(), changes.get(0).yours()));
    }

    @Test
    void lengthsAreWrittenInAnotherUnitWhenAsked() throws Exception {
        Difference d = parts(parts().replace("fromFold=\"22\" width=\"5.1\"", "fromFold=\"22\" width=\"5.15\""), parts()).differences().get(0).in(unit("cm", 10));
        assertTrue(d.label().endsWith("width at 2.2 cm from the fold"), d.label());
        assertEquals(List.of("0.51 cm", "0.515 cm"), List.of(d.before(), d.yours()));
        assertEquals("5.15 mm", d.in(unit("mm", 1)).yours());
    }

    private static LengthText unit(String sign, double size) {
        return new LengthText() {
            @Override
            public String number(double mm, int digits) {
                return String.valueOf(mm / size);
            }

            @Override
            public String sign() {
                return sign;
            }
        };
    }

    @Test
    void everyFeatureOfAFullFileSurvives() throws Exception {
        for (String name : List.of("trial-11-measured-staple.reed", "trial-13-two-gouges.reed", "trial-14.reed", "horn-3.reed")) {
            String text = Files.readString(Studios.file(name)).replaceFirst("<tie>", "<!-- before the tie --><newThing a=\"1\"><b/></newThing>\n  <tie>");
            String yours = text.replaceFirst("<wrapTop value=\"[0-9.]+\"", "<wrapTop value=\"45.5\"");
            String theirs = text.replaceFirst("<name>", "<name>Later: ");
            ThreeWay three = ThreeWay.compare(read(text, Design.class), read(yours, Design.class), read(theirs, Design.class), PROFILES);
            assertEquals(2, three.differences().size(), three.differences().toString());
            String expected = yours.replaceFirst("<name>", "<name>Later: ");
            assertEquals(Studios.FILES.text(read(expected, Design.class)), Studios.FILES.text(three.merged(Map.of())));
            assertEquals(List.of(), ThreeWay.compare(null, read(text, Design.class), read(text, Design.class), PROFILES).conflicts());
        }
    }
}

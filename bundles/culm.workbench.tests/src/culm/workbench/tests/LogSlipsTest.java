package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;

import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.Test;

import culm.workbench.internal.bench.log.LogEditor;
import culm.workbench.internal.widgets.NumberField;

/** Slips of the pen in a log are told at their field as soon as they are typed. */
class LogSlipsTest extends BenchTest {
    private static final String FILE = "class.log";

    private boolean marked(String feature) throws Exception {
        return ui(() -> ((NumberField) field(feature).getParent()).wrong());
    }

    private List<String> said() throws Exception {
        return ui(() -> find(window().getShell(), Label.class).stream().map(Label::getText).toList());
    }

    @Test
    void aNumberOfAnotherBlankAndALengthThatCannotBeAreRefusedAtTheirField() throws Exception {
        LogEditor editor = openLog(FILE);
        ui(() -> editor.choose("17"));
        settle();
        String before = ui(() -> editor.session().text());
        write("number", "3");
        assertTrue(marked("number"));
        assertTrue(said().contains("Number 3 is that of another blank of this log; the next free one is 27."), said().toString());
        write("number", "17");
        assertFalse(marked("number"), "its own");
        write("stapleLength", "4.7");
        assertTrue(marked("stapleLength"));
        assertTrue(said().stream().anyMatch(s -> s.startsWith("Staple length 4.7 is outside 5 to 100 mm. Usual is 4")), said().toString());
        assertEquals(before, ui(() -> editor.session().text()));
        ui(() -> editor.grid().choose(2));
        settle();
        assertTrue(said().stream().anyMatch(s -> s.startsWith("Blank 17 was left as it is. Staple length 4.7 ")), said().toString());
        assertFalse(marked("stapleLength"), "another blank's");
    }

    @Test
    void aLengthThatIsHardlyMeantIsTakenAndMarkedUntilItIsAnother() throws Exception {
        LogEditor editor = openLog(FILE);
        ui(() -> editor.choose("17"));
        settle();
        write("wrapTop", "4.65");
        assertTrue(marked("wrapTop"));
        assertTrue(ui(() -> field("wrapTop").getToolTipText()).startsWith("Top of the wrap 4.65 mm is far"), "at the field itself too");
        assertTrue(said().stream().anyMatch(s -> s.startsWith("Top of the wrap 4.65 mm is far from what is usual, 46")), said().toString());
        ui(() -> editor.choose("16"));
        settle();
        assertFalse(marked("wrapTop"));
        ui(() -> editor.choose("17"));
        settle();
        assertTrue(marked("wrapTop"), "as long as it is so");
        write("wrapTop", "46.5");
        assertFalse(marked("wrapTop"));
        assertTrue(said().stream().noneMatch(s -> s.contains("far from what is usual")), said().toString());
    }

    @Test
    void aNumberThatStandsTwiceInTheFileIsTold() throws Exception {
        Files.writeString(folder.resolve(FILE), text(FILE).replace("<number>4<", "<number>3<"));
        LogEditor editor = openLog(FILE);
        ui(() -> editor.choose("3"));
        settle();
        assertTrue(marked("number"));
        assertTrue(said().contains("2 blanks of this log have the number 3."), said().toString());
    }
}

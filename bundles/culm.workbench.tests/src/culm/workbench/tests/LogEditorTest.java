package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import culm.bench.log.GroupBy;
import culm.model.LogEntry;
import culm.workbench.internal.bench.log.LogEditor;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.widgets.LinkText;

/** The whole way through the editor for a log: a blank written, filtered, explained; what is learned used and dropped. */
class LogEditorTest extends BenchTest {
    private static final String FILE = "class.log";

    private List<LogEntry> blanks(LogEditor editor) throws Exception {
        return ui(() -> List.copyOf(editor.session().document().getEntries()));
    }

    private void choose(String path) throws Exception {
        ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> path.equals(l.getData("culm.path"))).findFirst().orElseThrow().click());
    }

    @Test
    void theFormFollowsTheFilterAndNeverShowsABlankThatIsHidden() throws Exception {
        LogEditor editor = openLog(FILE);
        int many = blanks(editor).size();
        ui(() -> editor.choose("17"));
        settle();
        String person = ui(() -> field("tiedBy").getText());
        String other = blanks(editor).stream().map(LogEntry::getTiedBy).filter(p -> p != null && !p.equals(person)).findFirst().orElseThrow();
        ui(() -> editor.only(GroupBy.PERSON, other));
        settle();
        assertEquals(other, ui(() -> field("tiedBy").getText()), "of those that pass");
        String number = ui(() -> field("number").getText());
        List<String> passing = blanks(editor).stream().filter(b -> other.equals(b.getTiedBy())).map(LogEntry::getNumber).toList();
        assertEquals(number, passing.get(ui(() -> editor.grid().row())), "the marked one");
        write("tiedBy", person);
        assertEquals(number, ui(() -> field("number").getText()), "one that is edited stays until the filter is another");
        command("org.eclipse.ui.edit.undo");
        assertEquals(many, blanks(editor).size());
        assertEquals(number, ui(() -> field("number").getText()));
    }

    @Test
    void aNewBlankIsWrittenUndoneSavedAndFoundAgain() throws Exception {
        LogEditor editor = openLog(FILE);
        String before = ui(() -> editor.session().text());
        int many = blanks(editor).size();
        command("culm.bench.blank");
        LogEntry blank = blanks(editor).get(many);
        assertEquals("27", blank.getNumber());
        assertEquals("trial-14.reed", blank.getDesign(), "what rarely changes is taken over");
        write("tieLength", "71,8");
        assertEquals("turnsLeftOnLeft", ui(() -> String.valueOf(display().getFocusControl().getData("culm.path"))), "Enter goes on to the next field");
        write("turnsLeftOnLeft", "1.5");
        write("turnsLeftOnRight", "-0.5");
        write("tiedOn", "9.3.2026");
        write("madeFor", "Ines");
        choose("leakFolded.slight");
        choose("keeper.yes");
        choose("keeper.yes");
        assertEquals(71.8, blank.getTieLength().getValue(), 1e-9);
        assertEquals(-0.5, blank.getTurnsLeftOnRight().getValue(), 1e-9);
        assertEquals("2026-03-09", blank.getTiedOn().toString());
        assertEquals(culm.model.Leak.SLIGHT, blank.getLeakFolded());
        assertFalse(blank.isSetKeeper(), "chosen twice is not noted again");
        String changed = ui(() -> editor.session().text());

        for (int i = 0; i < 9; i++) {
            command("org.eclipse.ui.edit.undo");
        }
        assertEquals(before, ui(() -> editor.session().text()));
        assertFalse(ui(editor::isDirty));
        for (int i = 0; i < 9; i++) {
            command("org.eclipse.ui.edit.redo");
        }
        assertEquals(changed, ui(() -> editor.session().text()));
        ui(() -> page().saveEditor(editor, false));
        assertEquals(changed, text(FILE));
        ui(() -> page().closeEditor(editor, false));
        LogEditor again = openLog(FILE);
        assertEquals(many + 1, blanks(again).size());
        assertEquals("Ines", blanks(again).get(many).getMadeFor());
    }

    private List<String> offered(LogEditor editor) throws Exception {
        return ui(() -> java.util.stream.Stream.concat(editor.lines().stream(),
                find(window().getShell(), LinkText.class).stream().filter(LinkText::isVisible).map(LinkText::words)).toList());
    }

    @Test
    void aLogThatMayOnlyBeLookedAtOffersNoChange() throws Exception {
        List<String> changes = List.of("+ new blank", "A slip? take this blank away");
        assertTrue(offered(openLog(FILE)).containsAll(changes));
        ui(() -> page().closeAllEditors(false));
        Files.writeString(folder.resolve(FILE), text(FILE).replace("format=\"1\"", "format=\"99\""));
        List<String> locked = offered(openLog(FILE));
        assertTrue(changes.stream().noneMatch(locked::contains), locked.toString());
        assertTrue(locked.contains("Not as planned? what went wrong"), "what changes nothing is still there");
    }

    @Test
    void whatCannotBeTakenIsSaidAndNothingChanges() throws Exception {
        LogEditor editor = openLog(FILE);
        String before = ui(() -> editor.session().text());
        write("tiedOn", "spring");
        assertTrue(ui(() -> find(window().getShell(), Label.class).stream().anyMatch(l -> l.getText().contains("\"spring\" is no day"))));
        write("turnsLeftOnLeft", "many");
        write("tieLength", "7200");
        assertEquals(before, ui(() -> editor.session().text()));
    }

    @Test
    void aLogThatMayOnlyBeLookedAtLooksLikeIt() throws Exception {
        Files.writeString(folder.resolve(FILE), text(FILE).replace("format=\"1\"", "format=\"99\""));
        LogEditor editor = openLog(FILE);
        String before = ui(() -> editor.session().text());
        assertFalse(ui(() -> field("tieLength").getEditable() || field("tiedBy").getEditable()));
        assertFalse(ui(() -> find(window().getShell(), LinkText.class).stream().filter(l -> "keeper.yes".equals(l.getData("culm.path"))).findFirst().orElseThrow().isEnabled()));
        write("tieLength", "71");
        assertEquals(before, ui(() -> editor.session().text()));
    }

    @Test
    void onlySomeBlanksAreShownAndCountedInTheCharts() throws Exception {
        LogEditor editor = openLog(FILE);
        ui(() -> editor.only(GroupBy.PERSON, "Mira"));
        ui(() -> editor.showPage(LogEditor.Page.CHARTS));
        shown(editor);
        assertTrue(ui(editor::headline).startsWith("8 of 26 blanks. Leaked: 3 of 8"), ui(editor::headline));
        List<String> charts = ui(editor::lines);
        assertEquals(4, charts.size());
        assertTrue(charts.get(0).contains("Mira 3 of 8") && !charts.get(0).contains("Ines"), charts.get(0));
        ui(() -> editor.showPage(LogEditor.Page.WHO));
        shown(editor);
        assertTrue(ui(editor::lines).stream().anyMatch(l -> l.startsWith("no. 24, tied by Mira")), ui(editor::lines).toString());
    }

    @Test
    void whatWentWrongNamesTheCausesAndTheNextCheck() throws Exception {
        LogEditor editor = openLog(FILE);
        ui(() -> editor.choose("11"));
        command("culm.bench.wrong");
        shown(editor);
        List<String> lines = ui(editor::lines);
        assertEquals("Blank 11", lines.get(0));
        assertTrue(lines.get(1).contains("points to crooked cane"), lines.toString());
        ui(() -> editor.choose("15"));
        command("culm.bench.wrong");
        shown(editor);
        lines = ui(editor::lines);
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("Next: ")), lines.toString());
        assertTrue(lines.stream().filter(l -> l.contains(" times its give or take of ")).count() > 5, lines.toString());
    }

    @Test
    void whatIsLearnedIsUsedInADesignWhichSaysSoAndDropped() throws Exception {
        LogEditor editor = openLog(FILE);
        command("culm.bench.learn");
        shown(editor);
        assertTrue(ui(editor::lines).get(0).startsWith("Ines, mooring"), ui(editor::lines).toString());
        assertTrue(ui(editor::lines).stream().anyMatch(l -> l.startsWith("trial-14.reed uses a fit to a blank that worked")));
        ui(() -> editor.link("use it in trial-14.reed"));
        settle();
        DesignEditor design = ui(() -> (DesignEditor) page().getActiveEditor());
        shown(design);
        assertTrue(ui(design::isDirty), "it is saved like any other change");
        assertTrue(ui(() -> session(design).shown().verdict().sentence()).endsWith(", learned from 9 blanks"), ui(() -> session(design).shown().verdict().sentence()));
        command("org.eclipse.ui.edit.undo");
        shown(design);
        assertTrue(ui(() -> session(design).shown().verdict().sentence()).endsWith(", from a blank that worked"));
        command("org.eclipse.ui.edit.redo");

        ui(() -> page().activate(editor));
        settle();
        assertTrue(ui(editor::lines).stream().anyMatch(l -> l.startsWith("trial-14.reed uses what was learned from 9 blanks: Ines")), ui(editor::lines).toString());
        ui(() -> editor.link("drop it"));
        settle();
        shown(design);
        String sentence = ui(() -> session(design).shown().verdict().sentence());
        assertFalse(sentence.contains("learned") || sentence.contains("a blank that worked"), sentence);
    }

    @Test
    void ofATableWithABadRowTheOthersAreTakenAndItIsNamed() throws Exception {
        LogEditor editor = openLog(FILE);
        int many = blanks(editor).size();
        Files.writeString(folder.resolve("more.csv"), "number,tied by,tie length\n40,Ines,72.1\n41,Ines,long\n42,=1+2,71.9\n", StandardCharsets.UTF_8);
        display().asyncExec(() -> editor.tables().read(folder.resolve("more.csv")));
        Shell said = shell("Not all of it was read");
        String words = ui(() -> find(said, Label.class).stream().map(Label::getText).reduce("", String::concat));
        assertTrue(words.contains("2 blanks were taken") && words.contains("more.csv, line 3") && words.contains("long"), words);
        press(said, "OK");
        assertEquals(many + 2, blanks(editor).size());
        assertEquals("=1+2", blanks(editor).get(many + 1).getTiedBy());
    }
}

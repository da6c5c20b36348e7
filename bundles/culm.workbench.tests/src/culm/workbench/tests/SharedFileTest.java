package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.design.compare.Choice;
import culm.design.compare.Difference;
import culm.figures.Role;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.sharing.ChoiceGrid;

/** One file and two people: open elsewhere, changed outside, work that was not saved, what is not known here. */
class SharedFileTest extends StudioTest {
    private static final String FILE = "trial-12.reed";

    private void outside(String from, String to) throws IOException {
        String text = text(FILE);
        assertTrue(text.contains(from), from);
        Files.writeString(folder.resolve(FILE), text.replace(from, to));
    }

    private ChoiceGrid grid(Shell dialog) {
        return find(dialog, ChoiceGrid.class).get(0);
    }

    private Path unsaved() {
        return folder.resolve("." + FILE + ".unsaved");
    }

    /** Whether a number, its give or take and a choice look as if they could be changed; asked on the workbench's thread. */
    private boolean looksEditable(DesignEditor editor) {
        editor.form().open("Staple", true);
        StyledText field = field(editor, Inputs.TIE_LENGTH);
        field.setFocus();
        Button measured = find(window().getShell(), Button.class).stream().filter(b -> b.getText().equals("measured") && b.isVisible()).findFirst().orElseThrow();
        Combo kind = find(editor.form(), Combo.class).get(0);
        boolean ground = field.getBackground().equals(Workshop.of(workbench()).look().colour(Role.PANEL));
        assertEquals(field.getEditable(), ground, "what can be edited has another ground");
        assertEquals(field.getEditable(), measured.isEnabled());
        assertEquals(field.getEditable(), kind.isEnabled());
        return field.getEditable();
    }

    @Test
    void theSecondOneIsToldWhoAndLooksOnly() throws Exception {
        try (HoldsFile other = new HoldsFile(folder.resolve(FILE), "student A")) {
            DesignEditor editor = open(FILE);
            assertTrue(ui(() -> said("student A has had this file open since ")));
            keepPicture("open-elsewhere");
            assertFalse(ui(() -> looksEditable(editor)));
            type(editor, Inputs.TIE_LENGTH, "71");
            assertFalse(ui(editor::isDirty), "it is only looked at");
            assertEquals(72, value(editor, Inputs.TIE_LENGTH), 1e-9);
            click("change it all the same");
            assertTrue(ui(() -> looksEditable(editor)));
            type(editor, Inputs.TIE_LENGTH, "71");
            assertTrue(ui(editor::isDirty));
        }
    }

    @Test
    void whatTheOtherLetsGoOfCanBeChanged() throws Exception {
        DesignEditor editor;
        try (HoldsFile other = new HoldsFile(folder.resolve(FILE), "student A")) {
            editor = open(FILE);
            outside("<finished value=\"70\"", "<finished value=\"69\"");
        }
        click("try again");
        shown(editor);
        assertFalse(ui(() -> said("open since")));
        assertEquals(69, value(editor, Inputs.FINISHED), 1e-9);
        type(editor, Inputs.TIE_LENGTH, "71");
        assertTrue(ui(editor::isDirty));
        assertTrue(Files.exists(folder.resolve("." + FILE + ".open")), "now others are told");
        ui(() -> page().closeEditor(editor, false));
        assertFalse(Files.exists(folder.resolve("." + FILE + ".open")));
    }

    @Test
    void othersSeeTheNameThatWasGiven() throws Exception {
        String before = ui(() -> culm.workbench.internal.app.Workshop.of(workbench()).who());
        Shell dialog = dialog("culm.sharing.name", "My name");
        ui(() -> find(dialog, org.eclipse.swt.widgets.Text.class).get(0).setText("student C"));
        press(dialog, "OK");
        open(FILE);
        assertTrue(Files.readString(folder.resolve("." + FILE + ".open")).startsWith("student C\n"));
        ui(() -> culm.workbench.internal.app.Workshop.of(workbench()).who(before));
    }

    @Test
    void savingOverOthersPutsBothTogetherAsOneStep() throws Exception {
        DesignEditor editor = open(FILE);
        type(editor, Inputs.TIE_LENGTH, "71");
        String mine = ui(() -> session(editor).text());
        outside("<length value=\"72\"", "<length value=\"71.3\"");
        outside("<finished value=\"70\"", "<finished value=\"69\"");
        display().asyncExec(() -> page().saveEditor(editor, false));
        Shell dialog = shell("Yours and theirs");
        List<Difference> rows = ui(() -> grid(dialog).rows());
        assertEquals("tie length", rows.get(0).label());
        assertTrue(rows.get(0).before().startsWith("72 \u00b1 0.2 mm") && rows.get(0).yours().startsWith("71 ") && rows.get(0).theirs().startsWith("71.3"), rows.toString());
        keepPicture("yours-and-theirs");
        ui(() -> {
            grid(dialog).setFocus();
            for (int i = 0; i < 3; i++) {
                key(grid(dialog), SWT.ARROW_RIGHT, 0);
            }
        });
        press(dialog, "Put together");
        until("it is saved", () -> !editor.isDirty());
        shown(editor);
        assertEquals(71.3, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertEquals(69, value(editor, Inputs.FINISHED), 1e-9);
        assertTrue(text(FILE).contains("value=\"71.3\"") && text(FILE).contains("<finished value=\"69\""));
        command("org.eclipse.ui.edit.undo");
        assertEquals(mine, ui(() -> session(editor).text()), "one step takes it back");
        assertTrue(ui(() -> session(editor).changedOnDisk()), "and a save would ask again");
        command("org.eclipse.ui.edit.redo");
        assertFalse(ui(() -> session(editor).changedOnDisk()));
    }

    @Test
    void theComparisonCanBeGivenUp() throws Exception {
        DesignEditor editor = open(FILE);
        type(editor, Inputs.TIE_LENGTH, "71");
        outside("<length value=\"72\"", "<length value=\"71.3\"");
        String theirs = text(FILE);
        display().asyncExec(() -> page().saveEditor(editor, false));
        Shell dialog = shell("Yours and theirs");
        ui(() -> grid(dialog).choose("tie.length", Choice.BEFORE));
        press(dialog, "Cancel");
        settle();
        assertTrue(ui(editor::isDirty));
        assertEquals(71, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertEquals(theirs, text(FILE));
    }

    @Test
    void unsavedWorkIsKeptAndOfferedAgain() throws Exception {
        DesignEditor editor = open(FILE);
        type(editor, Inputs.TIE_LENGTH, "71");
        ui(() -> editor.guards().keepCopy());
        byte[] copy = Files.readAllBytes(unsaved());
        ui(() -> page().closeEditor(editor, false));
        assertFalse(Files.exists(unsaved()), "what was given up is not offered");

        Files.write(unsaved(), copy); // as if the program had ended
        DesignEditor again = open(FILE);
        assertTrue(ui(() -> said("was not saved before the program ended")));
        keepPicture("unsaved-work");
        assertEquals(72, value(again, Inputs.TIE_LENGTH), 1e-9);
        click("restore it");
        shown(again);
        assertEquals(71, value(again, Inputs.TIE_LENGTH), 1e-9);
        command("org.eclipse.ui.edit.undo");
        assertEquals(72, value(again, Inputs.TIE_LENGTH), 1e-9);
        command("org.eclipse.ui.edit.redo");
        ui(() -> page().saveEditor(again, false));
        assertFalse(Files.exists(unsaved()));
        assertTrue(text(FILE).contains("value=\"71\""));
    }

    @Test
    void unsavedWorkThatWasNotDecidedIsPutAside() throws Exception {
        Files.writeString(unsaved(), text(FILE).replace("<length value=\"72\"", "<length value=\"71.7\""));
        DesignEditor editor = open(FILE);
        type(editor, Inputs.TIE_LENGTH, "70.5");
        ui(() -> editor.guards().keepCopy());
        assertTrue(Files.readString(unsaved()).contains("70.5"));
        try (var kept = Files.list(folder.resolve(".removed"))) {
            assertTrue(Files.readString(kept.filter(f -> f.toString().endsWith(".reed")).findFirst().orElseThrow()).contains("71.7"));
        }
    }

    @Test
    void aNewerFileIsOnlyLookedAt() throws Exception {
        Files.writeString(folder.resolve(FILE), text(FILE).replace("format=\"1\"", "format=\"99\""));
        String newer = text(FILE);
        DesignEditor editor = open(FILE);
        assertTrue(ui(() -> said("Only to be looked at")));
        keepPicture("newer-format");
        assertFalse(ui(() -> looksEditable(editor)));
        type(editor, Inputs.TIE_LENGTH, "71");
        assertFalse(ui(editor::isDirty));
        assertEquals(72, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertEquals(newer, text(FILE));
    }

    @Test
    void whatIsMissingOrUnknownIsSaidAndKept() throws Exception {
        Path example = Path.of(System.getProperty("culm.examples"), "culm.example.plugin", "example.reed");
        String text = Files.readString(example).replace("<tie>", "<engraved style=\"plain\"/>\n  <tie>");
        Files.writeString(folder.resolve("example.reed"), text);
        DesignEditor editor = open("example.reed");
        assertTrue(ui(() -> said("example.staple.stepped, example.shape.fourWidths") && said("engraved")));
        keepPicture("missing-plug-in");
        assertEquals(text, ui(() -> session(editor).text()));
        double tie = value(editor, Inputs.TIE_LENGTH);
        type(editor, Inputs.TIE_LENGTH, "71.5");
        ui(() -> page().saveEditor(editor, false));
        assertTrue(text("example.reed").contains("engraved") && text("example.reed").contains("example.staple.stepped"));
        type(editor, Inputs.TIE_LENGTH, culm.model.text.Numbers.format(tie));
        ui(() -> page().saveEditor(editor, false));
        assertEquals(text, text("example.reed"), "every byte is as it was");
    }
}

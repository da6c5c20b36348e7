package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.sharing.GuardBars;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.NoticeBar;

/** Files changed by someone else while they are open here. */
class OutsideTest extends StudioTest {
    private static final String FILE = "trial-12.reed";

    @BeforeEach
    void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        settle();
    }

    private void changeOutside(String from, String to) throws IOException {
        String text = text(FILE);
        assertTrue(text.contains(from), from);
        Files.writeString(folder.resolve(FILE), text.replace(from, to));
    }

    private NoticeBar notice() {
        return find(find(window().getShell(), GuardBars.class).get(0), NoticeBar.class).get(0);
    }

    @Test
    void whatIsNotEditedHereIsTakenOver() throws Exception {
        DesignEditor editor = open(FILE);
        changeOutside("<length value=\"72\"", "<length value=\"71.3\"");
        until("the change is noticed", () -> session(editor).blank().orElseThrow().blank().number(Inputs.TIE_LENGTH) == 71.3);
    }

    @Test
    void whatIsEditedHereIsNeverOverwrittenSilently() throws Exception {
        DesignEditor editor = open(FILE);
        type(editor, Inputs.TIE_LENGTH, "71");
        changeOutside("<finished value=\"70\"", "<finished value=\"69\"");
        String theirs = text(FILE);
        until("the change is noticed", () -> !notice().sentence().isEmpty());
        assertEquals(71, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertEquals(theirs, text(FILE));

        ui(() -> find(notice(), LinkText.class).stream().filter(l -> l.words().equals("keep mine")).findFirst().orElseThrow().setFocus());
        click("keep mine");
        until("the keys go on where the work is", () -> display().getFocusControl() instanceof org.eclipse.swt.custom.StyledText);
        command("org.eclipse.ui.file.save");
        assertTrue(text(FILE).contains("value=\"71\""));
        assertEquals(theirs, Files.readString(folder.resolve(FILE + ".bak")), "what they wrote is kept as the backup");
    }

    /** No dialog: it would come again each time the window is active again. */
    @Test
    void aFileThatWasBrokenOutsideIsToldAboveWhatIsShown() throws Exception {
        DesignEditor editor = open(FILE);
        String whole = text(FILE);
        changeOutside("</tie>", "");
        until("it is told", () -> notice().sentence().contains("not well-formed"));
        assertEquals(72, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertTrue(ui(() -> java.util.stream.Stream.of(display().getShells()).noneMatch(s -> s.isVisible() && s.getText().equals("That cannot be done"))));
        Files.writeString(folder.resolve(FILE), whole);
        until("it is whole again", () -> notice().sentence().isEmpty());
    }

    @Test
    void theirsMayBeTaken() throws Exception {
        DesignEditor editor = open(FILE);
        type(editor, Inputs.TIE_LENGTH, "71");
        changeOutside("<finished value=\"70\"", "<finished value=\"69\"");
        until("the change is noticed", () -> !notice().sentence().isEmpty());
        click("take theirs");
        shown(editor);
        assertEquals(72, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertEquals(69, value(editor, Inputs.FINISHED), 1e-9);
        assertTrue(ui(() -> notice().sentence().isEmpty()));
        assertFalse(ui(editor::isDirty));

        command("org.eclipse.ui.edit.undo");
        assertEquals(71, value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertEquals(70, value(editor, Inputs.FINISHED), 1e-9);
        assertTrue(ui(editor::isDirty));
        until("it is changed outside again", () -> notice().sentence().contains("changed outside while it is edited"));
        command("org.eclipse.ui.edit.redo");
        assertEquals(69, value(editor, Inputs.FINISHED), 1e-9);
        assertFalse(ui(editor::isDirty));
        until("it is theirs again", () -> notice().sentence().isEmpty());
    }

    @Test
    void aChangedPartChangesTheDesignsThatLinkToIt() throws Exception {
        DesignEditor editor = open(FILE);
        String parts = text("harbour-row.parts");
        double wide = value(editor, "staple.topWide");
        String old = "<parameter name=\"topWide\" value=\"" + culm.model.text.Numbers.format(wide) + "\"";
        assertTrue(parts.contains(old), old);
        Files.writeString(folder.resolve("harbour-row.parts"), parts.replace(old, "<parameter name=\"topWide\" value=\"3.3\""));
        until("the part's change arrives", () -> session(editor).blank().orElseThrow().blank().value("staple.topWide").getAsDouble() == 3.3);
    }
}

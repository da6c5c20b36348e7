package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.figures.Palette;
import culm.figures.Role;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.history.HistoryEditor;
import culm.workbench.internal.pair.PairEditor;
import culm.workbench.internal.pair.PairInput;
import culm.workbench.internal.parts.PartsEditor;

/** The pages and dialogs of sharing in a dark window. */
class SharingDarkTest extends StudioTest {
    @BeforeEach
    void dark() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().filter(i -> i.entries().stream().anyMatch(e -> e.file().startsWith(folder))).isPresent());
        command("culm.window.dark");
    }

    @AfterEach
    void light() throws Exception {
        command("culm.window.light");
    }

    private void isDark(Shell dialog) throws Exception {
        Color ground = ui(() -> dialog.getChildren()[0].getBackground());
        var paper = Palette.DARK.of(Role.PAPER);
        assertEquals(java.util.List.of(paper.red(), paper.green(), paper.blue()), java.util.List.of(ground.getRed(), ground.getGreen(), ground.getBlue()));
    }

    @Test
    void dialogs() throws Exception {
        Shell plugIns = dialog("culm.sharing.plugIns", "Plug-ins");
        isDark(plugIns);
        keepPicture("dark-plug-ins");
        press(plugIns, "Close");

        ui(() -> ((PartsEditor) page().openEditor(new FileInput(folder.resolve("harbour-row.parts")), PartsEditor.ID)).choose("staple-47"));
        keepPicture("dark-parts");
        Shell replace = dialog("culm.sharing.replace", "Replace 47, class set");
        isDark(replace);
        keepPicture("dark-replace");
        press(replace, "Cancel");
    }

    @Test
    void comparing() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        type(editor, Inputs.TIE_LENGTH, "71");
        Files.writeString(folder.resolve("trial-12.reed"), text("trial-12.reed").replace("<length value=\"72\"", "<length value=\"71.3\""));
        display().asyncExec(() -> page().saveEditor(editor, false));
        Shell dialog = shell("Yours and theirs");
        isDark(dialog);
        keepPicture("dark-yours-and-theirs");
        press(dialog, "Cancel");
        PairEditor pair = ui(() -> (PairEditor) page().openEditor(new PairInput(folder.resolve("trial-14.reed"), folder.resolve("horn-3.reed")), PairEditor.ID));
        until("both are shown", () -> !pair.pending());
        keepPicture("dark-two-designs");
        command("culm.sharing.history");
        HistoryEditor history = ui(() -> (HistoryEditor) page().getActiveEditor());
        until("the history is at rest", () -> !history.busy());
        keepPicture("dark-history-off");
    }
}

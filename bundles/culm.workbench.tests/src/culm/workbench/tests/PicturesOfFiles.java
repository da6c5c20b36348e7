package culm.workbench.tests;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.workbench.internal.bench.batch.BatchEditor;
import culm.workbench.internal.bench.log.LogEditor;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.history.HistoryEditor;
import culm.workbench.internal.pair.PairEditor;
import culm.workbench.internal.pair.PairInput;
import culm.workbench.internal.parts.PartsEditor;

/** Pictures of every other editor, and of what is said above a file that cannot simply be changed. */
class PicturesOfFiles extends PictureTaker {

    @Test
    void parts() throws Exception {
        smallAndLarge(() -> {
            PartsEditor editor = ui(() -> (PartsEditor) page().openEditor(new FileInput(folder.resolve("harbour-row.parts")), PartsEditor.ID));
            keep("parts-opened");
            for (String part : ui(() -> editor.parts().stream().map(p -> p.getId()).toList())) {
                ui(() -> editor.choose(part));
                keep("parts-" + part);
            }
            ui(() -> editor.choose("staple-47-places"));
            ui(() -> {
                StyledText field = find(window().getShell(), StyledText.class).stream().filter(t -> "staple.places[1].height".equals(t.getData("culm.path"))).findFirst().orElseThrow();
                field.setFocus();
                field.setText("26");
                enter(field);
            });
            keep("parts-trouble");
        });
    }

    @Test
    void batch() throws Exception {
        smallAndLarge(() -> {
            BatchEditor editor = openBatch("class-box.batch");
            keep("batch");
            ui(() -> editor.grid().go(1, 3));
            keep("batch-cell");
            ui(() -> page().closeAllEditors(false));
            newBatch();
            keep("batch-new");
        });
    }

    @Test
    void log() throws Exception {
        smallAndLarge(() -> {
            LogEditor editor = openLog("class.log");
            for (LogEditor.Page page : LogEditor.Page.values()) {
                ui(() -> editor.choose("15"));
                ui(() -> editor.showPage(page));
                shown(editor);
                keep("log-" + page.name().toLowerCase(java.util.Locale.ROOT));
            }
            ui(() -> editor.choose("11"));
            ui(() -> editor.showPage(LogEditor.Page.WRONG));
            shown(editor);
            keep("log-wrong-11");
        });
    }

    @Test
    void pair() throws Exception {
        smallAndLarge(() -> {
            PairEditor pair = ui(() -> (PairEditor) page().openEditor(new PairInput(folder.resolve("trial-12.reed"), folder.resolve("trial-10-closes-low.reed")), PairEditor.ID));
            until("both are shown", () -> !pair.pending());
            keep("pair");
        });
    }

    @Test
    void versions() throws Exception {
        small(() -> {
            HistoryEditor off = history();
            if (!Files.exists(folder.resolve(".git"))) {
                keep("history-off");
                click("begin a history\u2026");
                Shell asked = shell("Begin a history");
                keep("history-begin");
                ui(() -> find(asked, Text.class).get(0).setText("student A"));
                press(asked, "OK");
                until("there is a version", () -> !off.busy() && off.rows() == 1);
            }
            ui(() -> page().closeAllEditors(false));
            DesignEditor design = open("trial-12.reed");
            type(design, Inputs.TIE_LENGTH, value(design, Inputs.TIE_LENGTH) == 71 ? "70.5" : "71");
            ui(() -> page().saveEditor(design, false));
            HistoryEditor editor = history();
            until("what is not kept is there", () -> editor.rows() == 2);
            ui(() -> editor.choose(0));
            keep("history");
            ui(() -> editor.choose(1));
            until("at rest", () -> !editor.busy());
            keep("history-version");
            click("share through\u2026");
            Shell share = shell("Share the studio");
            keep("history-share");
            close(share);
        });
    }

    private HistoryEditor history() throws Exception {
        command("culm.sharing.history");
        HistoryEditor editor = ui(() -> (HistoryEditor) page().getActiveEditor());
        until("the history is at rest", () -> !editor.busy());
        return editor;
    }

    @Test
    void guarded() throws Exception {
        small(() -> {
            Path file = folder.resolve("trial-12.reed");
            String text = Files.readString(file);
            try (HoldsFile other = new HoldsFile(file, "student A")) {
                open("trial-12.reed");
                keep("guard-elsewhere");
                ui(() -> page().closeAllEditors(false));
            }
            Files.writeString(folder.resolve(".trial-12.reed.unsaved"), text.replace("<length value=\"72\"", "<length value=\"71.7\""));
            open("trial-12.reed");
            keep("guard-unsaved");
            ui(() -> page().closeAllEditors(false));
            Files.deleteIfExists(folder.resolve(".trial-12.reed.unsaved"));
            Files.writeString(file, text.replace("format=\"1\"", "format=\"99\""));
            open("trial-12.reed");
            keep("guard-newer");
            ui(() -> page().closeAllEditors(false));
            Files.writeString(file, text.replace("#staple-47\"", "#lost\""));
            open("trial-12.reed");
            keep("guard-lost-part");
            ui(() -> page().closeAllEditors(false));
            Files.writeString(file, text);
            Path example = Path.of(System.getProperty("culm.examples"), "culm.example.plugin", "example.reed");
            Files.writeString(folder.resolve("example.reed"), Files.readString(example).replace("<tie>", "<engraved style=\"plain\"/>\n  <tie>"));
            open("example.reed");
            keep("guard-missing");
            ui(() -> page().closeAllEditors(false));
            Path parts = folder.resolve("harbour-row.parts");
            String drawer = Files.readString(parts);
            Files.writeString(parts, drawer.replace("format=\"1\"", "format=\"99\""));
            PartsEditor editor = ui(() -> (PartsEditor) page().openEditor(new FileInput(parts), PartsEditor.ID));
            ui(() -> editor.choose("staple-47"));
            keep("guard-parts");
            ui(() -> page().closeAllEditors(false));
            Files.writeString(parts, drawer);
            Path log = folder.resolve("class.log");
            String blanks = Files.readString(log);
            Files.writeString(log, blanks.replace("format=\"1\"", "format=\"99\""));
            openLog("class.log");
            keep("guard-log");
            ui(() -> page().closeAllEditors(false));
            Files.writeString(log, blanks);
            Files.deleteIfExists(folder.resolve("example.reed"));
        });
    }
}

package culm.workbench.tests;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.batch.BatchActions;
import culm.workbench.internal.bench.batch.BatchEditor;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.explore.VariantsPage;
import culm.workbench.internal.parts.PartsEditor;
import culm.workbench.internal.studio.StudioView;

/** Pictures of every dialog. */
class PicturesOfDialogs extends PictureTaker {

    @Test
    void ofADesign() throws Exception {
        small(() -> {
            open("trial-12.reed");
            keepDialog("culm.design.limits", "My limits", "dialog-limits");
            Shell fit = dialog("culm.design.fit", "Start from a blank that works");
            keep("dialog-fit-empty");
            fill(fit, "turnsSeen", "1,5");
            settle();
            keep("dialog-fit");
            fill(fit, "turnsSeen", "many");
            keep("dialog-fit-refused");
            close(fit);
            keepDialog("culm.design.export", "Write a drawing", "dialog-export");
            keepDialog("culm.sharing.writeAs", "Write numbers and findings", "dialog-write-numbers");
            keepDialog("culm.bench.card", "Bench card", "dialog-card");
            keepDialog("culm.bench.template", "Templates", "dialog-templates");
            keepDialog("culm.sharing.compare", "Compare with", "dialog-compare");
            keepDialog("culm.sharing.plugIns", "Plug-ins", "dialog-plug-ins");
            keepDialog("culm.sharing.name", "My name", "dialog-name");
        });
    }

    @Test
    void theAssistant() throws Exception {
        small(() -> {
            Shell assistant = dialog("culm.studio.newDesign", "New design");
            keep("dialog-new");
            fill(assistant, "name", "Class blank 7");
            ui(() -> find(assistant, Combo.class).get(0).setFocus());
            press(assistant, "parts of the studio");
            keep("dialog-new-chosen");
            press(assistant, "Next >");
            keep("dialog-new-parts");
            press(assistant, "< Back");
            press(assistant, "a caliper and a mandrel alone");
            press(assistant, "Next >");
            keep("dialog-new-caliper");
            fill(assistant, Inputs.STAPLE_LENGTH, "4700");
            keep("dialog-new-caliper-refused");
            close(assistant);
        });
    }

    @Test
    void ofTheStudio() throws Exception {
        small(() -> {
            keepDialog("culm.studio.newParts", "New parts file", "dialog-new-parts-file");
            keepDialog("culm.bench.newBatch", "New batch of staples", "dialog-new-batch");
            keepDialog("culm.bench.newLog", "New reed log", "dialog-new-log");
            choose("trial-12.reed");
            keepDialog("culm.studio.copy", "Copy", "dialog-copy");
            keepDialog("culm.studio.rename", "Rename", "dialog-rename");
            choose("harbour-row.parts");
            display().asyncExec(() -> new culm.workbench.internal.studio.StudioActions(window()).remove());
            Shell remove = shell("Remove Harbour Row, the drawer of parts");
            keep("dialog-remove");
            close(remove);
        });
    }

    private void choose(String file) throws Exception {
        ui(() -> ((StudioView) page().showView(StudioView.ID))
                .reveal(Workshop.of(workbench()).studio().index().get().entries().stream().filter(e -> e.shown().equals(file)).findFirst().orElseThrow()));
    }

    @Test
    void ofParts() throws Exception {
        small(() -> {
            Path parts = folder.resolve("harbour-row.parts");
            String text = Files.readString(parts);
            PartsEditor editor = ui(() -> (PartsEditor) page().openEditor(new FileInput(parts), PartsEditor.ID));
            ui(() -> editor.choose("staple-47"));
            Shell replace = dialog("culm.sharing.replace", "Replace 47, class set");
            keep("dialog-replace-opened");
            ui(() -> {
                Combo by = find(replace, Combo.class).get(0);
                by.select(Stream.of(by.getItems()).map(t -> t.startsWith("46,")).toList().indexOf(true));
                by.notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
            });
            until("every design is looked at", () -> find(replace, org.eclipse.swt.widgets.Button.class).stream().anyMatch(b -> b.getText().equals("Replace") && b.isEnabled()));
            keep("dialog-replace");
            close(replace);
            click("remove");
            Shell remove = shell("Remove 47, class set");
            keep("dialog-remove-part");
            close(remove);
            ui(() -> page().closeAllEditors(false));
            String staple = text.substring(text.indexOf("  <staple id=\"staple-46\">"), text.indexOf("  <staple id=\"staple-47-places\">"));
            Files.writeString(parts, text.replace(staple, staple + staple.replace("staple-46", "again").replace("46, one of the short ones", "46 from the box")));
            keepDialog("culm.sharing.duplicates", "Parts that are there twice", "dialog-duplicates");
            Files.writeString(parts, text);
        });
    }

    @Test
    void ofTheBench() throws Exception {
        small(() -> {
            BatchEditor batch = openBatch("class-box.batch");
            keepDialog("culm.bench.card", "Bench card", "dialog-batch-card");
            Files.writeString(folder.resolve("box.csv"), "staple;length;top wide;top narrow\n7;47,01;3,38;2,12\n8;forty;3,40;2,11\n");
            display().asyncExec(() -> new BatchActions(batch).read(folder.resolve("box.csv")));
            Shell read = shell("Not all of it was read");
            keep("dialog-read-table");
            close(read);
            ui(() -> page().closeAllEditors(false));
            openLog("class.log");
            keepDialog("culm.bench.write", "Write a table", "dialog-write-table");
        });
    }

    @Test
    void ofExploring() throws Exception {
        small(() -> {
            DesignEditor editor = open("trial-12.reed");
            command("culm.explore.variants");
            VariantsPage page = ui(() -> editor.explore().variants());
            ui(() -> {
                page.list().rows().get(0).values("70 to 74 by 0.5");
                page.list().rows().get(1).values("-0.1; 0; 0.1");
                page.run();
            });
            until("the variants are there", () -> !page.pending() && page.found().isPresent());
            ui(() -> page.table().choose(2));
            display().asyncExec(() -> page.actions().keep());
            Shell keep = shell("Keep as a variant");
            keep("dialog-keep-variant");
            close(keep);
            display().asyncExec(() -> page.actions().open());
            Shell open = shell("Open as a new design");
            keep("dialog-open-variant");
            close(open);
        });
    }

    @Test
    void yoursAndTheirs() throws Exception {
        small(() -> {
            Path file = folder.resolve("trial-12.reed");
            String text = Files.readString(file);
            DesignEditor editor = open("trial-12.reed");
            type(editor, Inputs.TIE_LENGTH, "71");
            type(editor, Inputs.WRAP_TOP, "46.3");
            Files.writeString(file, text.replace("<length value=\"72\"", "<length value=\"71.3\"").replace("<finished value=\"70\"", "<finished value=\"69\""));
            display().asyncExec(() -> page().saveEditor(editor, false));
            Shell dialog = shell("Yours and theirs");
            keep("dialog-yours-and-theirs");
            close(dialog);
            ui(() -> page().closeAllEditors(false));
            Files.writeString(file, text);
        });
    }
}

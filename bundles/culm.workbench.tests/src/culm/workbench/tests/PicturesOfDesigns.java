package culm.workbench.tests;

import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.explore.ChoicePage;
import culm.workbench.internal.explore.RowsCanvas;
import culm.workbench.internal.explore.TolerancesPage;
import culm.workbench.internal.explore.VariantsPage;
import culm.workbench.internal.studio.StudioView;
import culm.workbench.internal.widgets.LinkText;

/** Pictures of the editor for designs with its pages, and of the studio. */
class PicturesOfDesigns extends PictureTaker {

    @Test
    void pages() throws Exception {
        smallAndLarge(() -> {
            DesignEditor editor = open("trial-12.reed");
            keep("reed-opened");
            ui(() -> {
                Canvas reed = figure("Reed");
                mouse(reed, SWT.MouseMove, reed.getClientArea().width * 3 / 5, 80);
            });
            keep("reed");
            ui(() -> figure("Reed").setFocus());
            keep("reed-focus");
            ui(() -> editor.showPage(DesignEditor.Page.GRAPHS));
            ui(() -> {
                Canvas along = figure("Graphs along the reed");
                mouse(along, SWT.MouseMove, along.getClientArea().width * 3 / 5, 80);
            });
            keep("graphs");
            ui(() -> editor.showPage(DesignEditor.Page.CHANGES));
            keep("changes-opened");
            type(editor, Inputs.TIE_LENGTH, "71");
            until("compared", () -> !editor.changes().pending());
            keep("changes");
            ui(() -> {
                editor.showPage(DesignEditor.Page.REED);
                for (String section : List.of("Staple", "Cane", "Tie")) {
                    editor.form().open(section, true);
                }
                find(window().getShell(), LinkText.class).stream().filter(l -> "shape.places".equals(l.getData("culm.table"))).findFirst().orElseThrow().click();
                editor.form().focus("shape.places[2].width");
            });
            keep("more");
            ui(() -> field(editor, Inputs.THREAD_PITCH).setFocus());
            keep("more-below");
        });
    }

    @Test
    void exploring() throws Exception {
        smallAndLarge(() -> {
            DesignEditor editor = open("trial-12.reed");
            command("culm.explore.variants");
            keep("variants-opened");
            VariantsPage page = ui(() -> editor.explore().variants());
            ui(() -> {
                page.list().rows().get(0).values("70 to 74 by 0.5");
                page.list().rows().get(1).values("-0.3 to 0.3 by 0.05");
                page.run();
            });
            until("the variants are there", () -> !page.pending() && page.found().isPresent());
            ui(() -> page.table().choose(3));
            RowsCanvas table = ui(page::table);
            until("all that can be seen is judged", () -> IntStream.range(0, table.getVerticalBar().getThumb()).noneMatch(r -> table.verdict(table.rows()[r]).equals("\u2026")));
            keep("variants");
            ui(() -> page.look(VariantsPage.Sight.MAP));
            keep("variants-map");
            ui(() -> page.look(VariantsPage.Sight.PARALLEL));
            keep("variants-parallel");
            command("culm.explore.matters");
            keep("matters");
            command("culm.explore.tolerances");
            keep("tolerances-opened");
            TolerancesPage tolerances = ui(() -> editor.explore().tolerances());
            ui(() -> tolerances.run());
            until("it has run", () -> !tolerances.bar().running());
            keep("tolerances");
            command("culm.explore.choice");
            keep("choice-opened");
            ChoicePage choice = ui(() -> editor.explore().best());
            ui(() -> {
                choice.list().rows().get(0).values("70 to 74 by 0.5");
                choice.list().add("staple");
                choice.run();
            });
            until("it was found", () -> !choice.bar().running() && choice.chosen().isPresent());
            keep("choice");
        });
    }

    @Test
    void otherDesigns() throws Exception {
        small(() -> {
            for (String other : List.of("horn-3", "trial-8-overwrapped", "trial-9-open", "trial-10-closes-low", "trial-11-measured-staple", "trial-13-two-gouges", "trial-14")) {
                DesignEditor editor = open(other + ".reed");
                ui(() -> {
                    editor.nextFinding();
                    Canvas list = (Canvas) display().getFocusControl();
                    key(list, SWT.ARROW_RIGHT, 0);
                });
                keep(other);
                ui(() -> page().closeAllEditors(false));
            }
            command("culm.window.thou");
            open("trial-12.reed");
            keep("thousandths");
            command("culm.window.mm");
        });
    }

    @Test
    void studio() throws Exception {
        smallAndLarge(() -> {
            ui(() -> ((StudioView) page().showView(StudioView.ID)).viewer().expandAll());
            keep("nothing-open");
            ui(() -> ((StudioView) page().showView(StudioView.ID)).viewer().collapseAll());
            ui(() -> ((StudioView) page().showView(StudioView.ID)).viewer().expandToLevel(2));
        });
    }
}

package culm.workbench.tests;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.studio.StudioView;
import culm.workbench.internal.widgets.LinkText;

/**
 * Pictures of every page and dialog, light and dark, small and large, to be looked at. No test: its name keeps it out of the runs of tests;
 * {@code releng/pictures} runs it.
 */
class Pictures extends StudioTest {
    private static final Point SMALL = new Point(1280, 800);
    private static final Point LARGE = new Point(1900, 1150);
    private String prefix = "";

    @BeforeEach
    void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().isPresent());
    }

    @Test
    void everything() throws Exception {
        for (Point size : List.of(SMALL, LARGE)) {
            for (String theme : List.of("light", "dark")) {
                command("culm.window." + theme);
                ui(() -> {
                    window().getShell().setLocation(0, 0);
                    window().getShell().setSize(size);
                });
                prefix = (size == SMALL ? "small-" : "large-") + theme + "-" + System.getProperty("culm.pictures", "");
                pages();
                others();
                if (size == SMALL) {
                    dialogs();
                }
                ui(() -> page().closeAllEditors(false));
            }
        }
        command("culm.window.light");
    }

    private void keep(String name) throws Exception {
        keepPicture(prefix + name);
    }

    private void pages() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        ui(() -> {
            Canvas reed = figure("Reed");
            mouse(reed, SWT.MouseMove, reed.getClientArea().width * 3 / 5, 80);
        });
        keep("reed");
        ui(() -> editor.showPage(DesignEditor.Page.GRAPHS));
        ui(() -> {
            Canvas along = figure("Graphs along the reed");
            mouse(along, SWT.MouseMove, along.getClientArea().width * 3 / 5, 80);
        });
        keep("graphs");
        ui(() -> editor.showPage(DesignEditor.Page.CHANGES));
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
        ui(() -> page().closeAllEditors(false));
    }

    private void others() throws Exception {
        for (String other : List.of("horn-3", "trial-9-open", "trial-8-overwrapped", "trial-11-measured-staple", "trial-14")) {
            DesignEditor editor = open(other + ".reed");
            ui(() -> {
                editor.nextFinding();
                Canvas list = (Canvas) display().getFocusControl();
                key(list, SWT.ARROW_RIGHT, 0);
            });
            keep(other);
            ui(() -> page().closeAllEditors(false));
        }
        ui(() -> {
            StudioView view = (StudioView) page().showView(StudioView.ID);
            view.viewer().expandAll();
        });
        keep("nothing-open");
        ui(() -> ((StudioView) page().showView(StudioView.ID)).viewer().collapseAll());
        ui(() -> ((StudioView) page().showView(StudioView.ID)).viewer().expandToLevel(2));
    }

    private void dialogs() throws Exception {
        open("trial-12.reed");
        Shell limits = dialog("culm.design.limits", "My limits");
        keep("dialog-limits");
        press(limits, "Cancel");
        Shell fit = dialog("culm.design.fit", "Start from a blank that works");
        keep("dialog-fit-empty");
        fill(fit, "turnsSeen", "1,5");
        settle();
        keep("dialog-fit");
        press(fit, "Cancel");
        Shell export = dialog("culm.design.export", "Write a drawing");
        keep("dialog-export");
        press(export, "Cancel");
        Shell assistant = dialog("culm.studio.newDesign", "New design");
        keep("dialog-new");
        fill(assistant, "name", "Class blank 7");
        ui(() -> find(assistant, Combo.class).get(0).setFocus());
        press(assistant, "parts of the studio");
        press(assistant, "Next >");
        keep("dialog-new-parts");
        press(assistant, "< Back");
        press(assistant, "a caliper and a mandrel alone");
        press(assistant, "Next >");
        keep("dialog-new-caliper");
        press(assistant, "Cancel");
        Shell copy = dialog("culm.studio.newParts", "New parts file");
        keep("dialog-new-parts-file");
        press(copy, "Cancel");
    }
}

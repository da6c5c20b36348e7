package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.explore.ExplorePage.Question;
import culm.workbench.internal.explore.RowsCanvas;
import culm.workbench.internal.explore.VariantsFound;
import culm.workbench.internal.explore.VariantsPage;

/** What is said of a variant in its row, and of the design that it becomes. */
class VariantVerdictsTest extends ExploringTest {
    @Test
    void aVariantHasTheVerdictThatItHasAsADesign() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = variants(editor);
        VariantsFound found = ui(() -> page.found().orElseThrow());
        until("all that is seen is judged", () -> !page.pending() && page.table().verdict(RowsCanvas.OWN).length() > 1 && page.table().cell(8, 6).length() > 1);
        assertEquals("may fit, give or take " + ui(editor::verdict).replaceFirst(".*give or take ", ""), ui(() -> page.table().verdict(RowsCanvas.OWN)), "the header's words");
        int passes = java.util.stream.IntStream.range(0, 27).filter(r -> found.line(r).failed().isEmpty()).findFirst().orElseThrow();
        ui(() -> {
            page.table().choose(passes);
            page.actions().use();
        });
        shown(editor);
        assertEquals(ui(() -> page.table().verdict(passes)), ui(() -> session(editor).shown().verdict().sign().word()) + ", give or take "
                + ui(editor::verdict).replaceFirst(".*give or take ", ""));
        keep("explore-verdicts");
    }

    /** Of a design fitted to a blank that worked, what was changed counts with its own give or take. */
    @Test
    void aWiderVariantOfAFittedDesignHasTheVerdictThatItHasAsADesign() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS, "trial-14.reed");
        VariantsPage page = ui(() -> editor.explore().variants());
        ui(() -> {
            page.list().rows().get(0).values("72; 72.4; 72.8");
            page.list().rows().get(1).values("0; 0.05");
            page.run();
        });
        until("all is judged", () -> !page.pending() && page.table().rows().length == 6 && page.table().cell(5, 6).length() > 1);
        int wider = ui(() -> java.util.stream.IntStream.range(0, 6).filter(r -> page.table().verdict(r).startsWith("may fit, ") && page.found().orElseThrow().line(r).values()[1] > 0).findFirst().orElseThrow());
        String judged = ui(() -> page.table().verdict(wider));
        ui(() -> {
            page.table().choose(wider);
            page.actions().use();
        });
        shown(editor);
        assertEquals(judged, ui(() -> session(editor).shown().verdict().sign().word()) + ", give or take " + ui(editor::verdict).replaceFirst(".*give or take ([0-9.]+).*", "$1"));
        String used = ui(() -> session(editor).text());
        display().asyncExec(page.actions()::use);
        press(shell("That cannot be done"), "OK");
        assertEquals(used, ui(() -> session(editor).text()), "not added once more to what has changed since");
    }
}

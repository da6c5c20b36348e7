package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.BeforeEach;

import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.explore.ExplorePage.Question;
import culm.workbench.internal.explore.VariantsPage;

/** What tests of the page Explore have in common. */
abstract class ExploringTest extends StudioTest {
    static final String FILE = "trial-12.reed";

    @BeforeEach
    void studio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().isPresent());
    }

    final DesignEditor ask(Question question) throws Exception {
        return ask(question, FILE);
    }

    final DesignEditor ask(Question question, String file) throws Exception {
        DesignEditor editor = open(file);
        command("culm.explore." + question.name().toLowerCase(java.util.Locale.ROOT));
        assertEquals(question, ui(() -> editor.explore().question()));
        return editor;
    }

    final VariantsPage variants(DesignEditor editor) throws Exception {
        VariantsPage page = ui(() -> editor.explore().variants());
        ui(() -> {
            page.list().rows().get(0).values("70 to 74 by 0.5");
            page.list().rows().get(1).values("-0.1; 0; 0.1");
            page.run();
        });
        until("the variants are there", () -> !page.pending() && page.table().rows().length == 27);
        return page;
    }

    /** A picture light and dark. */
    final void keep(String name) throws Exception {
        keepPicture(name);
        command("culm.window.dark");
        keepPicture(name + "-dark");
        command("culm.window.light");
    }
}

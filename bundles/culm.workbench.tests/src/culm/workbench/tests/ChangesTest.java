package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import culm.blank.rules.Verdict;
import culm.workbench.internal.changes.ChangesPage;
import culm.workbench.internal.editor.DesignEditor;

/** What changes if: a change is tried, judged and used, or given up. */
class ChangesTest extends StudioTest {
    private static final String ASKED = "what-if";

    private void attempt(DesignEditor editor, String number) throws Exception {
        type(editor, ASKED, number);
        until("it is compared", () -> !editor.changes().pending());
    }

    @Test
    void whatIsTriedIsJudged() throws Exception {
        DesignEditor editor = open("trial-14.reed");
        command("culm.design.changes");
        ChangesPage page = editor.changes();
        until("it is compared", () -> !page.pending());
        assertEquals("", ui(() -> page.verdict().sentence()), "the header tells how the design itself stands");

        attempt(editor, "66");
        assertEquals(Verdict.Sign.DOES_NOT, page.verdict().sign());
        assertTrue(page.verdict().sentence().startsWith("as tried, it does not work: sides close with 8.0 turns left"), page.verdict().sentence());
        assertTrue(page.against().stream().anyMatch(t -> t.startsWith("The finished length of 70.0 mm is not below the fold")), page.against().toString());
        assertFalse(ui(editor::isDirty));
        keepPicture("what-changes-if-tried");
        inThousandths(() -> assertEquals("2598\u2009thou", ui(() -> field(editor, ASKED).getText())));

        attempt(editor, "71.9");
        assertEquals(Verdict.Sign.FITS, page.verdict().sign());
        assertEquals(java.util.List.of(), page.against());
        click("try nothing");
        until("it is compared", () -> !page.pending());
        assertEquals("", ui(() -> page.verdict().sentence()));
        assertEquals("72.0\u2009mm", ui(() -> field(editor, ASKED).getText()));
    }
}

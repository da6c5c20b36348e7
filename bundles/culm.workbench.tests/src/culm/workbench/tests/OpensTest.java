package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The window opens, on the perspective for designing. */
class OpensTest extends WorkbenchTest {

    @Test
    void oneWindowStands() throws Exception {
        assertEquals(1, ui(() -> workbench().getWorkbenchWindowCount()));
        assertTrue(ui(() -> window().getShell().isVisible()));
    }

    @Test
    void onThePerspectiveForDesigning() throws Exception {
        assertEquals("culm.workbench.design", ui(() -> page().getPerspective().getId()));
    }
}

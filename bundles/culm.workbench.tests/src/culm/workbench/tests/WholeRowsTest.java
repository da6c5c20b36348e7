package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.workbench.internal.bench.grid.Grid;
import culm.workbench.internal.bench.log.LogEditor;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.explore.VariantsPage;
import culm.workbench.internal.widgets.RowsList;

/** In a window of any height tables end on whole rows, and what is out of sight is counted. */
class WholeRowsTest extends BenchTest {
    private static final int LOWEST = 700;
    private static final int HIGHEST = 730;
    private Point before;

    @BeforeEach
    void size() throws Exception {
        before = ui(() -> window().getShell().getSize());
        openStudio();
    }

    @AfterEach
    void sizeAgain() throws Exception {
        ui(() -> window().getShell().setSize(before));
    }

    @Test
    void theListOfALogEndsOnAWholeRow() throws Exception {
        LogEditor log = openLog("class.log");
        Grid grid = ui(() -> find(window().getShell(), Grid.class).stream().filter(Control::isVisible).findFirst().orElseThrow());
        for (int row : new int[] {0, 13, 25}) {
            ui(() -> grid.choose(row));
            endsWhole(grid);
        }
        assertTrue(ui(() -> grid.getVerticalBar().isVisible()));
        assertEquals(25, ui(grid::row));
        shown(log);
    }

    @Test
    void theTableOfVariantsEndsOnAWholeRow() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        command("culm.explore.variants");
        VariantsPage page = ui(() -> editor.explore().variants());
        ui(() -> {
            page.list().rows().get(0).values("70 to 74 by 0.1");
            page.run();
        });
        until("the variants are there", () -> !page.pending() && page.found().isPresent());
        endsWhole(page.table());
    }

    @Test
    void belowTheLastWholeRowNothingIsChosen() throws Exception {
        openLog("class.log");
        Grid grid = ui(() -> find(window().getShell(), Grid.class).stream().filter(Control::isVisible).findFirst().orElseThrow());
        ui(() -> grid.choose(0));
        boolean spare = false;
        for (int height = LOWEST; height < HIGHEST; height += 3) {
            int now = height;
            ui(() -> window().getShell().setSize(1280, now));
            settle();
            boolean empty = ui(() -> paperAtTheEdge(grid, 6));
            spare |= empty;
            ui(() -> {
                grid.choose(0);
                mouse(grid, SWT.MouseDown, 60, grid.getClientArea().height - 3);
            });
            assertTrue(!empty || ui(grid::row) == 0, "a row that cannot be seen was chosen at " + height);
        }
        assertTrue(spare, "at some height there is room below the last whole row");
    }

    /** Whether the lowest lines of points hold one colour only. */
    private boolean paperAtTheEdge(Grid grid, int lines) {
        ImageData seen = picture(grid);
        int bottom = grid.getClientArea().height;
        int paper = seen.getPixel(4, bottom - 1);
        for (int y = bottom - lines; y < bottom; y++) {
            for (int x = 4; x < grid.getClientArea().width - 20; x++) {
                if (seen.getPixel(x, y) != paper) {
                    return false;
                }
            }
        }
        return true;
    }

    private void endsWhole(Composite table) throws Exception {
        for (int height = LOWEST; height < HIGHEST; height += 3) {
            int now = height;
            ui(() -> window().getShell().setSize(1280, now));
            settle();
            assertTrue(ui(() -> coloursAtTheEdge(table)).size() <= 2, "no letters are cut at " + height);
        }
    }

    /** The colours of the lowest line of points, beside the scroll bar. */
    private Set<Integer> coloursAtTheEdge(Composite table) {
        Point size = new Point(table.getClientArea().width - 20, table.getClientArea().height);
        ImageData seen = picture(table);
        Set<Integer> colours = new TreeSet<>();
        for (int x = 4; x < size.x; x++) {
            colours.add(seen.getPixel(x, size.y - 1));
        }
        return colours;
    }

    @Test
    void findingsThatAreOutOfSightAreCounted() throws Exception {
        DesignEditor editor = open("trial-8-overwrapped.reed");
        type(editor, Inputs.TIE_LENGTH, "66");
        RowsList findings = ui(() -> find(window().getShell(), RowsList.class).stream().filter(l -> l.getClass().getSimpleName().equals("FindingsList")).findFirst().orElseThrow());
        ui(() -> window().getShell().setSize(1280, 640));
        settle();
        assertTrue(ui(() -> findings.getVerticalBar().isVisible()));
        assertTrue(ui(findings::spoken).matches("\\d+ findings\\. Findings, \\d more below"), ui(findings::spoken));
        for (int high = 90; high < 112; high += 3) {
            int now = high;
            ui(() -> findings.setSize(findings.getSize().x, now));
            settle();
            assertTrue(ui(() -> coloursAtTheEdge(findings)).size() <= 1, "no letters are cut at " + high);
        }
        ui(() -> window().getShell().setSize(1280, 1500));
        settle();
        assertTrue(ui(findings::spoken).matches("\\d+ findings\\. Findings"), ui(findings::spoken));
    }
}

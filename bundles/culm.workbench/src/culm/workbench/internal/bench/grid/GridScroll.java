package culm.workbench.internal.bench.grid;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.ScrollBar;

/** How far a grid is scrolled, in points; up and down by whole rows. */
final class GridScroll {
    private final Grid grid;
    private final GridModel model;
    private final GridLook paint;

    GridScroll(Grid grid, GridModel model, GridLook paint) {
        this.grid = grid;
        this.model = model;
        this.paint = paint;
        grid.getVerticalBar().addListener(SWT.Selection, e -> grid.scrolled());
        grid.getHorizontalBar().addListener(SWT.Selection, e -> grid.scrolled());
    }

    int left() {
        return grid.getHorizontalBar().isVisible() ? grid.getHorizontalBar().getSelection() : 0;
    }

    int top() {
        int line = paint.line();
        return grid.getVerticalBar().isVisible() ? (grid.getVerticalBar().getSelection() + line / 2) / line * line : 0;
    }

    void fit() {
        Rectangle area = grid.getClientArea();
        paint.room(area.width);
        set(grid.getVerticalBar(), model.rows() * paint.line(), paint.whole(area.height) * paint.line(), paint.line());
        set(grid.getHorizontalBar(), paint.width(), area.width, 24);
    }

    private static void set(ScrollBar bar, int all, int room, int step) {
        int thumb = Math.max(1, Math.min(all, room));
        bar.setVisible(all > room);
        bar.setValues(Math.min(bar.getSelection(), Math.max(0, all - thumb)), 0, Math.max(1, all), thumb, step, Math.max(1, room - step));
    }

    /** Scrolls as far as is needed to see a cell. */
    void reveal(int row, int column) {
        fit();
        Rectangle area = grid.getClientArea();
        Rectangle cell = paint.cell(row, column, left(), top());
        int first = cell.y - paint.head();
        shift(grid.getVerticalBar(), top(), first, first + cell.height - paint.whole(area.height) * paint.line());
        shift(grid.getHorizontalBar(), left(), cell.x, cell.x + cell.width - area.width);
    }

    private static void shift(ScrollBar bar, int at, int before, int beyond) {
        if (!bar.isVisible()) {
            return;
        }
        if (before < 0) {
            bar.setSelection(at + before);
        } else if (beyond > 0) {
            bar.setSelection(at + beyond);
        }
    }
}

package culm.workbench.internal.bench.grid;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** How a grid looks, and where its cells are. */
final class GridLook {
    private static final int PAD = 6;
    /** Below the last row, for a scroll bar that lies over it. */
    private static final int SLACK = 8;
    private final Look look;
    private final GridModel model;
    private int room;

    GridLook(Look look, GridModel model) {
        this.look = look;
        this.model = model;
    }

    /** Height of the heads above: the words, and the unit where a column has one. */
    int head() {
        boolean units = model.columns().stream().anyMatch(c -> !c.unit().isEmpty());
        return line() + (units ? (int) Math.ceil(small()) : 0);
    }

    private double small() {
        return look.measure().line(Size.SMALL);
    }

    /** Height of a row. */
    int line() {
        return (int) Math.ceil(look.measure().line(Size.BODY)) + 8;
    }

    /** Room there is for the columns, points; what they leave goes to the words at the right. */
    void room(int points) {
        room = points;
    }

    /** Width of all columns. */
    int width() {
        return right(model.columns().size());
    }

    /** How wide all columns before this one are. */
    private int right(int column) {
        List<GridColumn> columns = model.columns();
        int first = columns.size();
        while (first > 0 && columns.get(first - 1).editable() && !columns.get(first - 1).number()) {
            first--;
        }
        int words = columns.size() - first;
        int spare = Math.max(0, room - columns.stream().mapToInt(GridColumn::width).sum());
        int given = words == 0 || column <= first ? 0 : spare * (column - first) / words;
        return columns.stream().limit(column).mapToInt(GridColumn::width).sum() + given;
    }

    Rectangle cell(int row, int column, int left, int top) {
        int x = right(column);
        return new Rectangle(x - left, row < 0 ? -top : head() + row * line() - top, model.columns().isEmpty() ? 0 : right(column + 1) - x, row < 0 ? head() : line());
    }

    /** How many rows are shown below the heads in so much height; the grid ends on a whole one. */
    int whole(int height) {
        return Math.max(1, (height - head() - SLACK) / line());
    }

    /** Whether a row, or the heads, may stand at a height: below the last whole row nothing does. */
    boolean shows(int y, int height) {
        return y < head() + whole(height) * line();
    }

    /** The cell at a point; row -1 for the heads, column -1 beside them. */
    GridModel.Place at(int x, int y, int left, int top) {
        int row = y < head() ? -1 : (y + top - head()) / line();
        for (int c = 0; c < model.columns().size(); c++) {
            if (x < right(c + 1) - left) {
                return new GridModel.Place(row, c);
            }
        }
        return new GridModel.Place(row, -1);
    }

    void paint(GC gc, Rectangle area, int left, int top, int currentRow, int currentColumn, boolean focused) {
        gc.setAntialias(SWT.ON);
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRectangle(area);
        int first = Math.max(0, top / line());
        int last = Math.min(model.rows() - 1, first + whole(area.height) - 1);
        for (int row = first; row <= last; row++) {
            row(gc, row, left, top, row == currentRow);
        }
        heads(gc, area, left);
        if (currentRow < first || currentRow > last || model.columns().isEmpty()) {
            return;
        }
        Rectangle cell = cell(currentRow, currentColumn, left, top);
        if (model.columns().stream().noneMatch(GridColumn::editable)) {
            gc.setBackground(look.colour(focused ? Role.THREAD : Role.QUIET));
            gc.fillRectangle(0, cell.y, 3, cell.height - 1);
        } else if (!model.columns().get(currentColumn).editable()) {
            gc.setForeground(look.colour(Role.QUIET));
            gc.drawRectangle(cell.x + 1, cell.y + 1, cell.width - 3, cell.height - 3);
        }
    }

    private void row(GC gc, int row, int left, int top, boolean current) {
        Rectangle whole = cell(row, 0, left, top);
        if (current && !model.locked()) {
            gc.setBackground(look.colour(Role.PANEL));
            gc.fillRectangle(whole.x, whole.y, width(), whole.height);
        }
        boolean quiet = model.quiet(row);
        for (int c = 0; c < model.columns().size(); c++) {
            Rectangle cell = cell(row, c, left, top);
            boolean doubt = model.doubt(row, c).isPresent();
            GridColumn column = model.columns().get(c);
            gc.setFont(look.font(Size.BODY, quiet ? SWT.ITALIC : SWT.NORMAL));
            gc.setForeground(look.colour(quiet || !column.editable() ? Role.QUIET : Role.INK));
            text(gc, model.text(row, c), cell, column.number());
            if (doubt) {
                gc.setForeground(look.colour(Role.DOES_NOT));
                gc.setBackground(look.colour(Role.DOES_NOT));
                gc.setLineWidth(1);
                gc.drawRectangle(cell.x + 2, cell.y + 2, cell.width - 5, cell.height - 5);
                gc.fillPolygon(new int[] {cell.x + 2, cell.y + 2, cell.x + 9, cell.y + 2, cell.x + 2, cell.y + 9});
            }
        }
        gc.setForeground(look.colour(Role.GRID));
        gc.setLineWidth(1);
        gc.drawLine(whole.x, whole.y + whole.height - 1, whole.x + width() - 1, whole.y + whole.height - 1);
    }

    private void heads(GC gc, Rectangle area, int left) {
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRectangle(0, 0, area.width, head());
        gc.setFont(look.font(Size.SMALL, SWT.NORMAL));
        gc.setForeground(look.colour(Role.QUIET));
        for (int c = 0; c < model.columns().size(); c++) {
            Rectangle cell = cell(-1, c, left, 0);
            GridColumn column = model.columns().get(c);
            int top = (line() - gc.getFontMetrics().getHeight()) / 2;
            head(gc, column.head() + model.order(c), column.number(), cell, top);
            head(gc, column.unit(), column.number(), cell, top + (int) Math.ceil(small()));
        }
        gc.setForeground(look.colour(Role.RULE));
        gc.drawLine(-left, head() - 1, width() - left - 1, head() - 1);
    }

    private void head(GC gc, String words, boolean number, Rectangle cell, int y) {
        String shown = Clip.to(words, look.measure(), Size.SMALL, cell.width - 6);
        gc.drawString(shown, number ? cell.x + cell.width - PAD - gc.stringExtent(shown).x : cell.x + PAD, y, true);
    }

    private void text(GC gc, String text, Rectangle cell, boolean number) {
        if (text.isEmpty()) {
            return;
        }
        String shown = Clip.to(text, look.measure(), Size.BODY, cell.width - 2 * PAD + 2);
        int x = number ? cell.x + cell.width - PAD - gc.stringExtent(shown).x : cell.x + PAD;
        gc.drawString(shown, x, cell.y + (cell.height - gc.getFontMetrics().getHeight()) / 2, true);
    }
}

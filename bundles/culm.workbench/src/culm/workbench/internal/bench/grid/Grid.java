package culm.workbench.internal.bench.grid;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.figures.Role;
import culm.workbench.internal.handlers.PasteHandler;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.Typing;

/**
 * A table that a caliper can fill: a value, Enter, the next. One cell is the current one; what is typed goes into it, and it is
 * taken over by Enter, Tab, the arrow keys up and down or a click elsewhere. Only the rows that can be seen are painted.
 */
public final class Grid extends Canvas {
    private final Look look;
    private final GridModel model;
    private final GridLook paint;
    private final CellField field;
    private final GridScroll scroll;
    private int row;
    private int column;
    private Consumer<String> say = sentence -> { };
    private Runnable moved = () -> { };

    /**
     * A grid.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param model what it shows
     */
    public Grid(Composite parent, Look look, GridModel model) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL | SWT.H_SCROLL);
        this.look = look;
        this.model = model;
        this.paint = new GridLook(look, model);
        this.scroll = new GridScroll(this, model, paint);
        look.dress(this, Role.PAPER, Role.INK);
        field = new CellField(this, look);
        new Typing(field::typedAnew, this::take, field::giveBack).in(field.control());
        field.control().setVisible(false);
        Predicate<String> paste = this::paste;
        field.control().setData(PasteHandler.KEY, paste);
        field.control().addListener(SWT.KeyDown, this::key);
        field.control().addListener(SWT.Traverse, this::traverse);
        field.control().addListener(SWT.FocusOut, e -> take());
        field.control().addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.Paint, e -> paint.paint(e.gc, getClientArea(), scroll.left(), scroll.top(), row, column, isFocusControl() || field.control().isFocusControl()));
        addListener(SWT.Resize, e -> {
            scroll.reveal(row, column);
            scrolled();
        });
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.KeyDown, this::sideways);
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        addListener(SWT.MouseDown, this::click);
        addListener(SWT.MouseMove, this::hover);
        look.onChange(this, this::show);
        field.control().getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = words();
            }
        });
        show();
    }

    /** What to do with a sentence about what was typed; empty when all is well again. */
    public void onSay(Consumer<String> todo) {
        say = todo;
    }

    /** What to do when another row becomes the current one. */
    public void onMove(Runnable todo) {
        moved = todo;
    }

    /** The current cell in words. */
    private String words() {
        return model.columns().isEmpty() || row >= model.rows() ? "" : "row " + (row + 1) + ", " + (model.columns().get(column).head() + " " + model.columns().get(column).unit()).strip() + ", " + model.text(row, column)
                + model.doubt(row, column).map(d -> ", " + d).orElse("");
    }

    /** Shows the model as it is now. */
    public void show() {
        row = Math.max(0, Math.min(row, model.rows() - 1));
        column = Math.max(0, Math.min(column, model.columns().size() - 1));
        scroll.fit();
        place();
        redraw();
    }

    private void place() {
        boolean there = row < model.rows() && !model.columns().isEmpty() && model.columns().get(column).editable();
        field.lock(model.locked());
        Rectangle cell = paint.cell(row, column, scroll.left(), scroll.top());
        field.place(cell, there && cell.y >= paint.head() && paint.shows(cell.y, getClientArea().height));
        if (there) {
            field.show(model.text(row, column), model.columns().get(column).number());
            field.control().setData("culm.path", row + "." + model.columns().get(column).id());
        }
    }

    void scrolled() {
        scroll.fit();
        place();
        redraw();
    }

    /** {@return the current row} */
    public int row() {
        return row;
    }

    /** {@return the current column} */
    public int column() {
        return column;
    }

    /**
     * Makes a cell the current one, without taking over what is typed.
     *
     * @param toRow its row
     * @param toColumn its column
     */
    public void go(int toRow, int toColumn) {
        boolean other = toRow != row;
        row = Math.max(0, Math.min(toRow, model.rows() - 1));
        column = Math.max(0, Math.min(toColumn, model.columns().size() - 1));
        scroll.reveal(row, column);
        place();
        redraw();
        if (other) {
            moved.run();
        }
        if (field.control().isVisible()) {
            field.control().setFocus();
            field.control().selectAll();
        } else {
            forceFocus();
        }
    }

    /**
     * Where typing begins in a table that is still empty.
     *
     * @param at the column
     */
    public void begin(int at) {
        column = at;
        show();
    }

    /**
     * Makes a row the current one, without taking the focus.
     *
     * @param to the row
     */
    public void choose(int to) {
        row = Math.max(0, Math.min(to, model.rows() - 1));
        scroll.reveal(row, column);
        place();
        redraw();
        moved.run();
    }

    @Override
    public boolean setFocus() {
        if (field.control().isVisible()) {
            field.control().selectAll();
            return field.control().setFocus();
        }
        return forceFocus();
    }

    /** Takes over what is typed into the current cell. @return whether it could be used */
    public boolean take() {
        if (!field.typed()) {
            return true;
        }
        Optional<String> wrong = model.enter(row, column, field.control().getText());
        say.accept(wrong.orElse(""));
        field.wrong(wrong.isPresent());
        if (wrong.isEmpty()) {
            field.settle();
            show();
        }
        return wrong.isEmpty();
    }

    private void traverse(Event e) {
        switch (e.detail) {
            case SWT.TRAVERSE_RETURN -> {
                e.doit = false;
                if (take()) {
                    GridModel.Place next = model.next(row, column);
                    go(next.row(), next.column());
                }
            }
            case SWT.TRAVERSE_ESCAPE -> {
                if (field.typed()) {
                    e.doit = false;
                    field.giveBack();
                    say.accept("");
                }
            }
            case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS -> tab(e, e.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
            default -> { }
        }
    }

    /** To the next cell that can be typed into; from the last and the first out of the table. */
    private void tab(Event e, int step) {
        if (!take()) {
            e.doit = false;
            return;
        }
        int at = row * model.columns().size() + column;
        int last = model.rows() * model.columns().size();
        for (at += step; at >= 0 && at < last; at += step) {
            if (model.columns().get(at % model.columns().size()).editable()) {
                e.doit = false;
                go(at / model.columns().size(), at % model.columns().size());
                return;
            }
        }
        e.doit = true;
    }

    private void key(Event e) {
        boolean control = (e.stateMask & SWT.MOD1) != 0;
        int page = Math.max(1, getClientArea().height / paint.line() - 2);
        switch (e.keyCode) {
            case SWT.ARROW_UP -> move(row - 1);
            case SWT.ARROW_DOWN -> move(row + 1);
            case SWT.PAGE_UP -> move(row - page);
            case SWT.PAGE_DOWN -> move(row + page);
            case SWT.HOME -> move(control ? 0 : row);
            case SWT.END -> move(control ? model.rows() - 1 : row);
            case SWT.DEL -> {
                if (control) {
                    field.giveBack();
                    model.remove(row);
                    show();
                }
            }
            default -> { }
        }
    }

    private void sideways(Event e) {
        int to = e.keyCode == SWT.ARROW_LEFT ? column - 1 : e.keyCode == SWT.ARROW_RIGHT ? column + 1 : column;
        if (to != column && to >= 0 && to < model.columns().size()) {
            go(row, to);
        }
    }

    private void move(int to) {
        int there = Math.max(0, Math.min(to, model.rows() - 1));
        if (there != row && take()) {
            go(there, column);
        }
    }

    private boolean paste(String text) {
        Optional<String> said = model.paste(row, column, text);
        if (said.isEmpty()) {
            return false;
        }
        field.giveBack();
        say.accept(said.get());
        show();
        return true;
    }

    private void click(Event e) {
        GridModel.Place at = paint.at(e.x, e.y, scroll.left(), scroll.top());
        if (at.row() < 0 && at.column() >= 0 && take()) {
            sort(at.column());
        } else if (paint.shows(e.y, getClientArea().height) && at.row() >= 0 && at.row() < model.rows() && at.column() >= 0 && take()) {
            go(at.row(), at.column());
        }
    }

    /** The current row stays the current one, wherever it stands then. */
    private void sort(int by) {
        int now = model.sort(by, row);
        if (now >= 0) {
            row = now;
            scroll.reveal(row, column);
            show();
        }
    }

    private void hover(Event e) {
        GridModel.Place at = paint.at(e.x, e.y, scroll.left(), scroll.top());
        String tip = at.column() < 0 || !paint.shows(e.y, getClientArea().height) ? null : at.row() < 0 ? model.columns().get(at.column()).help()
                : at.row() < model.rows() ? model.doubt(at.row(), at.column()).orElse(null) : null;
        if (!java.util.Objects.equals(tip, getToolTipText())) {
            setToolTipText(tip);
        }
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = paint.width() + 18;
        return new Point(wHint == SWT.DEFAULT ? width : wHint, hHint == SWT.DEFAULT ? 200 : hHint);
    }

    /** {@return colours and fonts} */
    Look look() {
        return look;
    }
}

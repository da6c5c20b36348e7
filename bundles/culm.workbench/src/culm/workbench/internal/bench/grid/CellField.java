package culm.workbench.internal.bench.grid;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Rectangle;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.undo.TypedText;
import culm.workbench.internal.undo.UndoTarget;

/** The field that lies over the current cell of a grid. */
final class CellField {
    private final Look look;
    private final StyledText text;
    private final TypedText typing;
    private String shown = "";
    private boolean wrong;
    private boolean locked;
    private String refused = "";

    CellField(Grid grid, Look look) {
        this.look = look;
        text = new StyledText(grid, SWT.SINGLE);
        typing = new TypedText(text::setText);
        text.setData(UndoTarget.KEY, typing);
        text.addListener(SWT.Modify, e -> typing.typed(text.getText()));
        text.addListener(SWT.FocusIn, e -> text.redraw());
        text.addListener(SWT.FocusOut, e -> text.redraw());
        text.addListener(SWT.Paint, e -> {
            if (locked && !text.isFocusControl()) {
                return;
            }
            e.gc.setForeground(look.colour(wrong ? Role.DOES_NOT : Role.THREAD));
            e.gc.setLineWidth(wrong ? 2 : 1);
            Rectangle area = text.getClientArea();
            e.gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
        });
        dress();
        look.onChange(text, this::dress);
    }

    private void dress() {
        text.setFont(look.font(Size.BODY, SWT.NORMAL));
        text.setEditable(!locked);
        text.setBackground(look.colour(locked ? Role.PAPER : Role.PANEL));
        text.setForeground(look.colour(Role.INK));
        text.setSelectionBackground(look.colour(Role.THREAD));
        text.setSelectionForeground(look.colour(Role.PAPER));
    }

    /** Lets its text be looked at only, as plain text, or edited again. */
    void lock(boolean now) {
        if (locked != now) {
            locked = now;
            dress();
        }
    }

    StyledText control() {
        return text;
    }

    void place(Rectangle cell, boolean visible) {
        text.setVisible(visible);
        if (visible) {
            text.setBounds(cell.x, cell.y, cell.width, cell.height);
            int margin = Math.max(0, (cell.height - text.getLineHeight()) / 2);
            text.setMargins(5, margin, 5, 0);
        }
    }

    /** Shows a cell's text, unless something is just being typed. */
    void show(String now, boolean number) {
        text.setAlignment(number ? SWT.RIGHT : SWT.LEFT);
        if (wrong && typed()) {
            return;
        }
        if (!now.equals(shown) || !text.getText().equals(now)) {
            shown = now;
            giveBack();
        }
    }

    boolean typed() {
        return !text.getText().equals(shown);
    }

    /** Whether something is typed that was not refused yet. */
    boolean typedAnew() {
        return typed() && !text.getText().equals(refused);
    }

    void wrong(boolean now) {
        wrong = now;
        refused = now ? text.getText() : "";
        text.redraw();
    }

    /** What is typed was taken over. */
    void settle() {
        shown = text.getText();
        typing.reset(shown);
    }

    void giveBack() {
        wrong = false;
        text.setText(shown);
        typing.reset(shown);
        text.selectAll();
    }
}

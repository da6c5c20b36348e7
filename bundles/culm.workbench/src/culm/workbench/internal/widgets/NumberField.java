package culm.workbench.internal.widgets;

import java.util.function.IntConsumer;
import java.util.function.Predicate;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.undo.TypedText;
import culm.workbench.internal.undo.UndoTarget;

/**
 * A number edited where it stands: right-aligned, with its unit. What was assumed has a dashed frame and slanted digits,
 * so that it looks different from what was measured. Enter or leaving the field takes it over, Escape gives it back,
 * the arrow keys step it.
 */
public final class NumberField extends Canvas {
    /** Where a number comes from. */
    public enum Origin {
        /** Measured by someone. */
        MEASURED,
        /** Assumed. */
        ASSUMED,
        /** Computed; it cannot be edited. */
        COMPUTED
    }

    private static final int MARGIN = 5;
    private final Look look;
    private final StyledText text;
    private final TypedText typing;
    private String shown = "";
    private String refused = "";
    private Origin origin = Origin.MEASURED;
    private boolean trouble;
    private boolean locked;
    private Predicate<String> enter = typed -> true;
    private IntConsumer step = hundredths -> { };
    private Runnable focus = () -> { };

    /**
     * An empty field.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    public NumberField(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        text = new StyledText(this, SWT.SINGLE);
        text.setAlignment(SWT.RIGHT);
        text.setMargins(0, 0, 0, 0);
        typing = new TypedText(this::put);
        text.setData(UndoTarget.KEY, typing);
        new Typing(this::typed, this::takeOver, this::giveBackQuietly).in(text);
        addListener(SWT.Paint, this::paint);
        addListener(SWT.Resize, e -> place());
        addListener(SWT.MouseDown, e -> text.setFocus());
        text.addListener(SWT.FocusIn, e -> focused());
        text.addListener(SWT.FocusOut, e -> {
            takeOver();
            giveBackQuietly();
            text.setSelection(0);
            redraw();
        });
        text.addListener(SWT.Modify, e -> typing.typed(text.getText()));
        text.addListener(SWT.Traverse, this::traverse);
        text.addVerifyKeyListener(e -> e.doit = !stepped(e.keyCode, e.stateMask));
        dress();
        look.onChange(this, this::dress);
    }

    /** Words stand at the left. */
    public void forWords() {
        text.setAlignment(SWT.LEFT);
    }

    /** What to do with a text that was typed; it says whether it could be used. Called with something else than what was shown. */
    public void onEnter(Predicate<String> todo) {
        enter = todo;
    }

    /** What to do for an arrow key; it is called with hundredths of a mm, 10 or 1, up or down. */
    public void onStep(IntConsumer todo) {
        step = todo;
    }

    /** What to do when the field gets the focus. */
    public void onFocus(Runnable todo) {
        focus = todo;
    }

    /**
     * Shows a number, unless the user is just typing one.
     *
     * @param number the number with its unit
     * @param from where it comes from
     * @param wrong whether something is wrong with it
     */
    public void show(String number, Origin from, boolean wrong) {
        boolean same = number.equals(shown) && from == origin && wrong == trouble;
        boolean typed = text.isFocusControl() && !text.getText().equals(shown);
        if (same && !typed) {
            return;
        }
        shown = number;
        if (trouble != wrong) {
            trouble = wrong;
            redraw();
        }
        if (origin != from) {
            origin = from;
            dress();
        }
        if (!typed) {
            put(number);
            typing.reset(number);
        }
    }

    /** Lets its number be looked at only, as plain text, or edited again. */
    public void lock(boolean now) {
        if (locked != now) {
            locked = now;
            dress();
        }
    }

    private boolean editable() {
        return origin != Origin.COMPUTED && !locked;
    }

    /** Puts back what is shown. */
    public void giveBack() {
        put(shown);
        typing.reset(shown);
        text.selectAll();
    }

    /** Puts back what is shown, without taking the focus. */
    public void giveBackQuietly() {
        put(shown);
        typing.reset(shown);
    }

    /** {@return whether it is marked as wrong} */
    public boolean wrong() {
        return trouble;
    }

    /** Whether something is typed that was neither taken over nor refused yet. */
    private boolean typed() {
        return editable() && !text.getText().equals(shown) && !text.getText().equals(refused);
    }

    /** Takes over what is typed, as leaving the field does. */
    public void settle() {
        takeOver();
    }

    /** {@return the text as it stands in the field} */
    public String text() {
        return text.getText();
    }

    /** {@return the control that takes the keys} */
    public StyledText control() {
        return text;
    }

    @Override
    public boolean setFocus() {
        return text.setFocus();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int height = text.getLineHeight() + 6;
        return new Point(wHint == SWT.DEFAULT ? 84 : wHint, hHint == SWT.DEFAULT ? height : hHint);
    }

    private void put(String number) {
        text.setText(number);
    }

    private void focused() {
        text.selectAll();
        redraw();
        focus.run();
    }

    private void takeOver() {
        String typed = text.getText();
        if (!typed.equals(shown) && editable()) {
            refused = "";
            if (enter.test(typed)) {
                giveBackQuietly();
            } else {
                refused = typed;
            }
        }
    }

    private void traverse(Event e) {
        if (e.detail == SWT.TRAVERSE_RETURN) {
            takeOver();
            text.selectAll();
            e.doit = false;
        } else if (e.detail == SWT.TRAVERSE_ESCAPE && !text.getText().equals(shown)) {
            giveBack();
            e.doit = false;
        } else if (e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            e.doit = true;
        }
    }

    private boolean stepped(int key, int mask) {
        if (key != SWT.ARROW_UP && key != SWT.ARROW_DOWN || !editable() || (mask & ~SWT.SHIFT) != 0) {
            return false;
        }
        takeOver();
        int size = (mask & SWT.SHIFT) != 0 ? 1 : 10;
        step.accept(key == SWT.ARROW_UP ? size : -size);
        text.selectAll();
        return true;
    }

    private void dress() {
        int style = origin == Origin.ASSUMED ? SWT.ITALIC : SWT.NORMAL;
        text.setFont(look.font(Size.BODY, style));
        text.setEditable(editable());
        Role ground = editable() ? Role.PANEL : Role.PAPER;
        text.setBackground(look.colour(ground));
        text.setForeground(look.colour(origin == Origin.MEASURED ? Role.INK : Role.QUIET));
        text.setSelectionBackground(look.colour(Role.THREAD));
        text.setSelectionForeground(look.colour(Role.PAPER));
        setBackground(getParent().getBackground());
        redraw();
    }

    private void place() {
        Rectangle area = getClientArea();
        int height = Math.min(area.height - 2, text.getLineHeight());
        text.setBounds(MARGIN, (area.height - height) / 2, Math.max(1, area.width - 2 * MARGIN), height);
    }

    private void paint(Event e) {
        Rectangle area = getClientArea();
        e.gc.setAntialias(SWT.ON);
        e.gc.setBackground(look.colour(Role.PAPER));
        e.gc.fillRectangle(area);
        if (!editable() && !text.isFocusControl()) {
            return;
        }
        boolean focused = text.isFocusControl();
        boolean assumed = origin == Origin.ASSUMED;
        boolean taking = focused && editable(); // what may only be looked at does not look as if it took what is typed
        Role edge = trouble ? Role.DOES_NOT : taking ? Role.THREAD : assumed ? Role.QUIET : Role.RULE;
        FieldFrame.paint(e.gc, look, area, editable() ? Role.PANEL : Role.PAPER, edge, trouble || taking, assumed);
    }
}

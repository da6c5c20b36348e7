package culm.workbench.internal.form;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import culm.blank.rules.Severity;
import culm.figures.Clip;
import culm.figures.Lines;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.SignPainter;

/** The words beside a field, in two lines where one is too short for them, with a sign when there is a finding about it. */
public final class FieldLabel extends Canvas {
    private static final int SIGN = 16;
    /** Room for its words in a narrow form, points. */
    static final int NARROW = 124;
    private final Look look;
    private final int widest;
    private String words = "";
    private List<String> lines = List.of();
    private Optional<Severity> sign = Optional.empty();

    /**
     * Words without a sign.
     *
     * @param parent where they go
     * @param look colours and fonts
     * @param words what they say
     * @param widest room for them in one line, points
     */
    public FieldLabel(Composite parent, Look look, String words, int widest) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        this.widest = widest;
        say(words);
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, e -> {
            int height = getClientArea().height;
            sign.ifPresent(s -> SignPainter.paint(e.gc, look, s, SIGN / 2, height / 2));
            e.gc.setFont(look.font(Size.BODY, SWT.NORMAL));
            e.gc.setForeground(look.colour(Role.QUIET));
            int line = (int) (look.measure().line(Size.BODY));
            int y = (height - line * lines.size()) / 2;
            for (String part : lines) {
                e.gc.drawString(Clip.to(part, look.measure(), Size.BODY, getClientArea().width - SIGN - 4), SIGN + 4, y, true);
                y += line;
            }
        });
    }

    /** Says something else. */
    void say(String now) {
        if (!now.equals(words)) {
            words = now;
            setData("culm.words", now);
            int before = lines.size();
            lines = Lines.of(now, look.measure(), Size.BODY, false, widest);
            if (before > 0 && before != lines.size()) {
                requestLayout();
            }
            redraw();
        }
    }

    /** Shows a sign, or none. */
    public void sign(Optional<Severity> now) {
        if (!sign.equals(now)) {
            sign = now;
            redraw();
        }
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        double height = lines.size() * (look.measure().line(Size.BODY)) + 4;
        double widest = lines.stream().mapToDouble(l -> look.measure().width(l, Size.BODY, false)).max().orElse(0);
        return new Point(wHint == SWT.DEFAULT ? (int) Math.ceil(widest) + SIGN + 8 : wHint, (int) Math.ceil(height));
    }
}

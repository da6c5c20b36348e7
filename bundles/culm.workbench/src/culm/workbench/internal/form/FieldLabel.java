package culm.workbench.internal.form;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import culm.blank.rules.Severity;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.Clip;
import culm.workbench.internal.widgets.SignPainter;

/** The words beside a field, with a sign when there is a finding about it. */
final class FieldLabel extends Canvas {
    private static final int SIGN = 16;
    private final Look look;
    private final String words;
    private Optional<Severity> sign = Optional.empty();

    FieldLabel(Composite parent, Look look, String words) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        this.words = words;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, e -> {
            int height = getClientArea().height;
            sign.ifPresent(s -> SignPainter.paint(e.gc, look, s, SIGN / 2, height / 2));
            e.gc.setFont(look.font(Size.BODY, SWT.NORMAL));
            e.gc.setForeground(look.colour(Role.QUIET));
            String shown = Clip.to(words, look.measure(), Size.BODY, getClientArea().width - SIGN - 4);
            e.gc.drawString(shown, SIGN + 4, (height - e.gc.getFontMetrics().getHeight()) / 2, true);
        });
    }

    void sign(Optional<Severity> now) {
        if (!sign.equals(now)) {
            sign = now;
            redraw();
        }
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        double height = look.measure().ascent(Size.BODY) + look.measure().descent(Size.BODY) + 4;
        return new Point(wHint == SWT.DEFAULT ? (int) look.measure().width(words, Size.BODY, false) + SIGN + 8 : wHint, (int) height);
    }
}

package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import culm.blank.rules.Verdict;
import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** A verdict in one line: its sign and its sentence. */
public final class SignLine extends Canvas {
    private final Look look;
    private Verdict verdict = new Verdict(Verdict.Sign.MAY_FIT, "");

    /**
     * An empty line.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    public SignLine(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, e -> {
            if (verdict.sentence().isEmpty()) {
                return;
            }
            int height = getClientArea().height;
            SignPainter.paint(e.gc, look, verdict.sign(), 8, height / 2);
            e.gc.setFont(look.font(Size.BODY, SWT.NORMAL));
            e.gc.setForeground(look.colour(verdict.sign() == Verdict.Sign.DOES_NOT ? Role.DOES_NOT : Role.INK));
            String text = Clip.to(verdict.sentence(), look.measure(), Size.BODY, getClientArea().width - 26);
            e.gc.drawString(text, 22, (height - e.gc.getFontMetrics().getHeight()) / 2, true);
        });
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = verdict.sentence();
            }
        });
    }

    /** Shows a verdict; nothing when its sentence is empty. */
    public void show(Verdict now) {
        verdict = now;
        setToolTipText(now.sentence());
        redraw();
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int height = (int) Math.ceil(look.measure().line(Size.BODY)) + 6;
        return new Point(wHint == SWT.DEFAULT ? 200 : wHint, height);
    }
}

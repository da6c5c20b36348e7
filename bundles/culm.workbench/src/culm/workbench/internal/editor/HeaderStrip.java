package culm.workbench.internal.editor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Verdict;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.Clip;
import culm.workbench.internal.widgets.SignPainter;

/** The design's name and, always under it, the verdict. */
final class HeaderStrip extends Canvas {
    private static final int LEFT = 18;
    private final Look look;
    private String name = "";
    private Verdict verdict = Shown.NOTHING.verdict();

    HeaderStrip(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, this::paint);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = name + ": " + verdict.sentence();
            }
        });
    }

    void show(String newName, Verdict newVerdict) {
        if (name.equals(newName) && verdict.equals(newVerdict)) {
            return;
        }
        name = newName;
        verdict = newVerdict;
        setToolTipText(fits() ? null : verdict.sentence());
        redraw();
    }

    /** {@return the verdict that stands there} */
    Verdict verdict() {
        return verdict;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        double height = line(Size.TITLE) + line(Size.HEADING) + 20;
        return new Point(wHint == SWT.DEFAULT ? 600 : wHint, (int) Math.ceil(height));
    }

    private double line(Size size) {
        return look.measure().ascent(size) + look.measure().descent(size);
    }

    private int room() {
        return getClientArea().width - 2 * LEFT - 18;
    }

    private boolean fits() {
        return look.measure().width(verdict.sentence(), Size.HEADING, false) <= room();
    }

    private void paint(Event e) {
        Rectangle area = getClientArea();
        e.gc.setTextAntialias(SWT.ON);
        e.gc.setFont(look.font(Size.TITLE, SWT.BOLD));
        e.gc.setForeground(look.colour(Role.INK));
        e.gc.drawString(name, LEFT, 9, true);
        int y = (int) (9 + line(Size.TITLE) + 3);
        e.gc.setFont(look.font(Size.HEADING, SWT.NORMAL));
        SignPainter.paint(e.gc, look, verdict.sign(), LEFT + 6, y + (int) (line(Size.HEADING) / 2));
        e.gc.setForeground(look.colour(verdict.sign() == Verdict.Sign.DOES_NOT ? Role.DOES_NOT : verdict.sign() == Verdict.Sign.FITS ? Role.FITS : Role.INK));
        e.gc.drawString(Clip.to(verdict.sentence(), look.measure(), Size.HEADING, area.width - 2 * LEFT - 18), LEFT + 18, y, true);
    }
}

package culm.workbench.internal.editor;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Verdict;
import culm.figures.Clip;
import culm.figures.Lines;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.SignPainter;

/** The design's name and, always under it, the verdict. */
final class HeaderStrip extends Canvas {
    private static final int LEFT = 18;
    private static final int NAME = 9;
    private static final int SIGN = 18;
    private static final int GAP = 10;
    private final Look look;
    private String name = "";
    private String word = "";
    private Verdict verdict = Shown.NOTHING.verdict();
    private int shownLines = 1;
    private int nameRoom = Integer.MAX_VALUE;

    HeaderStrip(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        look.clear(this);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, this::paint);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = name + ": " + word + ", " + verdict.sentence();
            }
        });
    }

    /** Shows them. @param told whether the verdict is one; else its sentence says why there is none, quietly while it is only being computed */
    void show(String newName, Verdict newVerdict, boolean told) {
        String newWord = told ? newVerdict.sign().word() : "";
        if (name.equals(newName) && verdict.equals(newVerdict) && word.equals(newWord)) {
            return;
        }
        boolean whole = !name.equals(newName);
        name = newName;
        word = newWord;
        verdict = newVerdict;
        if (lines(getSize().x).size() != shownLines) {
            requestLayout();
            whole = true;
        }
        if (whole) {
            redraw();
        } else { // beside the name stand links, which stay
            Point all = getSize();
            redraw(0, below(), all.x, all.y - below(), false);
        }
    }

    /** Where the verdict begins, below the name. */
    private int below() {
        return (int) (NAME + line(Size.TITLE) + 3);
    }

    /** The name ends before what stands at its right. @param right where that begins, points */
    void nameRoom(int right) {
        if (nameRoom != right) {
            nameRoom = right;
            redraw();
        }
    }

    /** {@return the verdict that stands there} */
    Verdict verdict() {
        return verdict;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? Math.max(600, getSize().x) : wHint;
        double height = line(Size.TITLE) + lines(width).size() * line(Size.HEADING) + 20;
        return new Point(wHint == SWT.DEFAULT ? 600 : wHint, (int) Math.ceil(height));
    }

    /** The verdict in as many lines as it needs: none of it may hide. */
    private List<String> lines(int width) {
        return Lines.of(verdict.sentence(), look.measure(), Size.HEADING, false, Math.max(200, width - LEFT - indent()));
    }

    /** Nothing is known yet. */
    private boolean waiting() {
        return verdict.equals(Shown.NOTHING.verdict());
    }

    private Role ink() {
        return waiting() ? Role.QUIET : verdict.sign() == Verdict.Sign.DOES_NOT ? Role.DOES_NOT : verdict.sign() == Verdict.Sign.FITS ? Role.FITS : Role.INK;
    }

    private int indent() {
        return waiting() ? LEFT : LEFT + SIGN + (word.isEmpty() ? 0 : (int) look.measure().width(word, Size.HEADING, true) + GAP);
    }

    private double line(Size size) {
        return look.measure().line(size);
    }

    private void paint(Event e) {
        Rectangle area = getClientArea();
        e.gc.setForeground(look.colour(Role.INK));
        look.write(e.gc, Clip.to(name, look.measure(), Size.TITLE, true, nameRoom - LEFT), Size.TITLE, true, LEFT, NAME);
        int y = below();
        if (!waiting()) {
            SignPainter.paint(e.gc, look, verdict.sign(), LEFT + 6, y + (int) (line(Size.HEADING) / 2));
        }
        e.gc.setForeground(look.colour(ink()));
        look.write(e.gc, word, Size.HEADING, true, LEFT + SIGN, y);
        List<String> lines = lines(area.width);
        shownLines = lines.size();
        for (String line : lines) {
            look.write(e.gc, line, Size.HEADING, false, indent(), y);
            y += (int) line(Size.HEADING);
        }
    }
}

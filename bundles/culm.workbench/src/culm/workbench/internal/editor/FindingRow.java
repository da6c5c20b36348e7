package culm.workbench.internal.editor;

import java.util.List;

import org.eclipse.swt.graphics.GC;

import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.figures.Lines;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.widgets.SignPainter;

/** One finding as it is painted in the list. */
final class FindingRow {
    private static final int SIGN = 24;
    private static final int GAP = 14;
    /** The space above and below its text, of which some may be cut, points. */
    static final int AROUND = 4;
    /** Above its letters a line has so much room, points. */
    private static final int BARE = 3;
    private final Finding finding;
    private final Look look;
    private final String why;
    private List<String> lines = List.of();
    private List<String> more = List.of();
    private boolean open;
    private int top;
    private int bottom;
    private int whyFrom;
    private int fixFrom;
    private boolean fixBelow;
    private int textHeight;
    private int right = -1;

    FindingRow(Finding finding, LengthUnit unit, Look look) {
        this.finding = finding;
        this.look = look;
        why = FindingWords.more(finding, unit);
    }

    Finding finding() {
        return finding;
    }

    boolean isOpen() {
        return open;
    }

    void open(boolean now) {
        open = now;
    }

    private int room() {
        return Math.max(120, whyFrom - GAP - SIGN - 12);
    }

    private String fixText() {
        return finding.fix().map(Fix::text).map(t -> t.endsWith(".") ? t.substring(0, t.length() - 1) : t).orElse("");
    }

    /** Finds its place below another. @return where the next one goes */
    int place(int y, int width) {
        if (width != right) {
            measure(width);
        }
        top = y;
        if (open) {
            more = why.lines().flatMap(part -> Lines.of(part, look.measure(), Size.SMALL, false, room()).stream()).toList();
        }
        bottom = top + 2 * AROUND + textHeight + (fixBelow ? fixHeight() : 0) + (open ? more.size() * line(Size.SMALL) + 3 : 0);
        return bottom;
    }

    private void measure(int width) {
        right = width;
        double whyWidth = why.isEmpty() ? 0 : look.measure().width("why", Size.BODY, false);
        double fix = fixText().isEmpty() ? 0 : look.measure().width(fixText(), Size.BODY, false);
        double words = look.measure().width(finding.text(), Size.BODY, false);
        fixBelow = fix > 0 && words > right - 4 - fix - GAP - whyWidth - GAP - SIGN - 12;
        fixFrom = fixBelow ? SIGN + 12 : (int) (right - 4 - fix);
        whyFrom = (int) ((fixBelow ? right - 4 : fixFrom - (fix > 0 ? GAP : 0)) - whyWidth);
        lines = Lines.of(finding.text(), look.measure(), Size.BODY, false, room());
        textHeight = lines.size() * line(Size.BODY);
    }

    private int fixHeight() {
        return line(Size.BODY) + 2;
    }

    /** Where the proposal begins, below the top. */
    private int fixTop() {
        return AROUND + (fixBelow ? textHeight + 2 : 0);
    }

    int top() {
        return top;
    }

    int bottom() {
        return bottom;
    }

    boolean holds(int y) {
        return y >= top && y < bottom;
    }

    private boolean inFirstLine(int y) {
        return y < top + 2 * AROUND + line(Size.BODY);
    }

    boolean whyAt(int x, int y) {
        return !why.isEmpty() && inFirstLine(y) && x >= whyFrom - 2 && x < whyFrom + look.measure().width("why", Size.BODY, false) + 10;
    }

    boolean fixAt(int x, int y) {
        int from = top + fixTop();
        return finding.fix().isPresent() && y >= from - 2 && y < from + fixHeight() && x >= fixFrom - 2
                && x <= fixFrom + look.measure().width(fixText(), Size.BODY, false) + 12;
    }

    /** Lines that would be cut through their letters are left out. @param height of what can be seen */
    void paint(GC gc, int left, int scrolled, int height, boolean chosen) {
        int y = top - scrolled + AROUND;
        if (chosen) {
            gc.setBackground(look.colour(Role.PANEL));
            gc.fillRoundRectangle(left - 6, top - scrolled, right + 6, bottom - top, 6, 6);
            gc.setForeground(look.colour(Role.THREAD));
            gc.setLineWidth(1);
            gc.drawRoundRectangle(left - 6, top - scrolled, right + 5, bottom - top - 1, 6, 6);
        }
        int middle = y + line(Size.BODY) / 2;
        if (whole(y, Size.BODY, height)) {
            SignPainter.paint(gc, look, finding.severity(), left + 6, middle);
        }
        gc.setForeground(look.colour(Role.INK));
        write(gc, lines, Size.BODY, left + SIGN, y, height);
        gc.setForeground(look.colour(Role.THREAD));
        if (!why.isEmpty()) {
            write(gc, List.of("why"), Size.BODY, left + whyFrom - 12, y, height);
        }
        if (!fixText().isEmpty()) {
            write(gc, List.of(fixText()), Size.BODY, left + fixFrom - 12, top - scrolled + fixTop(), height);
        }
        if (open) {
            gc.setForeground(look.colour(Role.QUIET));
            write(gc, more, Size.SMALL, left + SIGN, y + textHeight + (fixBelow ? fixHeight() : 0) + 3, height);
        }
    }

    private void write(GC gc, List<String> text, Size size, int x, int y, int height) {
        int at = y;
        for (String line : text) {
            if (whole(at, size, height)) {
                look.write(gc, line, size, false, x, at);
            }
            at += line(size);
        }
    }

    private boolean whole(int y, Size size, int height) {
        return y >= -BARE && y + line(size) <= height;
    }

    private int line(Size size) {
        return (int) Math.ceil(look.measure().line(size));
    }
}

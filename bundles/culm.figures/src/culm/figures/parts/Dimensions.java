package culm.figures.parts;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/** Dimension lines with their length in the middle, or beside them where it has no room there. */
public final class Dimensions {
    private static final double HEAD = 6;
    private static final double TICK = 5;
    private final TextMeasure measure;

    /** @param measure how wide words are */
    public Dimensions(TextMeasure measure) {
        this.measure = measure;
    }

    /** A line from one place to another further right, drawing units. */
    public void across(Pen pen, double from, double to, double y, String words) {
        double wide = measure.width(words, Size.SMALL, false);
        boolean small = to - from < wide + 4 * HEAD;
        PathBuilder heads = Path.start();
        if (to - from > 3 * HEAD) {
            heads.move(from, y).line(from + HEAD, y - HEAD / 2.6).line(from + HEAD, y + HEAD / 2.6).close();
            heads.move(to, y).line(to - HEAD, y - HEAD / 2.6).line(to - HEAD, y + HEAD / 2.6).close();
        }
        pen.line(from, y - TICK, from, y + TICK, Role.QUIET, Style.THIN);
        pen.line(to, y - TICK, to, y + TICK, Role.QUIET, Style.THIN);
        pen.line(from, y, to, y, Role.INK, Style.THIN);
        pen.shape(heads.path(), Style.fill(Role.INK));
        double x = small ? to + 8 : (from + to) / 2 - wide / 2;
        if (!small) {
            pen.shape(Path.box(new Box(x - 4, y - 7, wide + 8, 14)), Style.fill(Role.PAPER));
        }
        pen.text(words, x, y + 4, Anchor.START, Size.SMALL, Role.INK);
    }
}

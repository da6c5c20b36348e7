package culm.figures.svg;

import culm.figures.Numbers;
import culm.figures.PathSink;

/** Writes the pieces of a path as SVG path data. */
final class SvgPath implements PathSink {
    private final StringBuilder out;

    SvgPath(StringBuilder out) {
        this.out = out;
    }

    @Override
    public void move(double x, double y) {
        out.append('M');
        pair(x, y);
    }

    @Override
    public void line(double x, double y) {
        out.append('L');
        pair(x, y);
    }

    @Override
    public void curve(double x1, double y1, double x2, double y2, double x, double y) {
        out.append('C');
        pair(x1, y1);
        out.append(' ');
        pair(x2, y2);
        out.append(' ');
        pair(x, y);
    }

    @Override
    public void close() {
        out.append('Z');
    }

    private void pair(double x, double y) {
        out.append(Numbers.plain(x)).append(' ').append(Numbers.plain(y));
    }
}

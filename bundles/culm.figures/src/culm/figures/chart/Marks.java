package culm.figures.chart;

import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Style;

/** The signs of series. */
final class Marks {
    private static final double R = 3.6;

    private Marks() {
    }

    static Path at(Series.Marker marker, double x, double y) {
        PathBuilder path = Path.start();
        switch (marker) {
            case DOT -> path.circle(x, y, R);
            case SQUARE -> path.move(x - R, y - R).line(x + R, y - R).line(x + R, y + R).line(x - R, y + R).close();
            case TRIANGLE -> path.move(x, y - R * 1.25).line(x + R * 1.15, y + R * 0.85).line(x - R * 1.15, y + R * 0.85).close();
            case CROSS -> path.move(x - R, y - R).line(x + R, y + R).move(x - R, y + R).line(x + R, y - R);
            case NONE -> {
                // a line without signs
            }
        }
        return path.path();
    }

    static Style style(Series s) {
        return s.marker() == Series.Marker.CROSS ? Style.line(s.role(), 1.8) : Style.fill(s.role()).edged(Role.PAPER, Style.THIN);
    }

    /** A short piece of a series for the legend. */
    static void sample(Pen pen, Series s, double x, double y) {
        if (s.line()) {
            pen.shape(Path.line(x, y, x + 16, y), Style.line(s.role(), 1.8).broken(s.dash()));
        }
        pen.shape(at(s.marker(), x + 8, y), style(s));
    }
}

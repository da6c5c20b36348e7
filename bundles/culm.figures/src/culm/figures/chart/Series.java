package culm.figures.chart;

import java.util.List;

import culm.figures.Dash;
import culm.figures.Role;

/**
 * Values to draw. A value that is not finite interrupts the line and has no point.
 *
 * @param name   for the legend
 * @param points (x, y), in the order of drawing
 * @param line   whether the points are joined
 * @param marker sign at each point
 * @param role   colour
 * @param dash   how the line is broken
 */
public record Series(String name, List<double[]> points, boolean line, Marker marker, Role role, Dash dash) {
    /** The sign at a point; series differ by it as well as by colour. */
    public enum Marker {
        NONE, DOT, SQUARE, TRIANGLE, CROSS
    }

    public Series {
        points = List.copyOf(points);
    }

    /** A whole line without signs. */
    public static Series line(String name, List<double[]> points, Role role) {
        return new Series(name, points, true, Marker.NONE, role, Dash.SOLID);
    }

    /** Signs without a line. */
    public static Series points(String name, List<double[]> points, Marker marker, Role role) {
        return new Series(name, points, false, marker, role, Dash.SOLID);
    }
}

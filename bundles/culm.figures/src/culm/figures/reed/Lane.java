package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Scale;

/**
 * A strip of the page along the reed with its axis in the middle: (z, distance from the axis) in mm to drawing units.
 *
 * @param scale  along the reed
 * @param middle where the axis lies, drawing units
 * @param across enlargement across the axis; 1 is true to scale
 */
record Lane(Scale scale, double middle, double across) {
    double x(double z) {
        return scale.x(z);
    }

    /** @param off distance from the axis, upwards */
    double y(double off) {
        return middle - off * perMm();
    }

    /** Drawing units to a mm across. */
    double perMm() {
        return scale.perMm() * across;
    }

    /** The area between the outline and its mirror image. */
    Path both(List<double[]> outline) {
        return between(outline, mirrored(outline));
    }

    /** The area between two outlines. */
    Path between(List<double[]> upper, List<double[]> lower) {
        List<double[]> round = new ArrayList<>(upper.size() + lower.size());
        upper.forEach(p -> round.add(at(p)));
        for (int i = lower.size() - 1; i >= 0; i--) {
            round.add(at(lower.get(i)));
        }
        return round.size() < 3 ? Path.start().path() : Path.polygon(round);
    }

    /** The outline and its mirror image as lines. */
    Path lines(List<double[]> outline) {
        PathBuilder path = Path.start();
        path.through(outline.stream().map(this::at).toList());
        path.through(mirrored(outline).stream().map(this::at).toList());
        return path.path();
    }

    static List<double[]> mirrored(List<double[]> outline) {
        return outline.stream().map(p -> new double[] {p[0], -p[1]}).toList();
    }

    private double[] at(double[] p) {
        return new double[] {x(p[0]), y(p[1])};
    }
}

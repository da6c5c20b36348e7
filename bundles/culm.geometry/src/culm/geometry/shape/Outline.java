package culm.geometry.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;

import culm.geometry.section.Point;

/**
 * The flat outline of the cane as cut: its width along the blade, the ears at the fold included. Points are x along the cane from the fold, y across,
 * mm. Ears are taken as strips of one width beside the blade, from the fold over their whole length.
 *
 * @param width        width along the blade, without ears
 * @param measured     what of the bark side that width is
 * @param tubeRadius   radius of the bark, mm
 * @param foldedLength from the fold to the end of the cane, mm
 * @param earsWidth    extra width on each side at the fold, mm, 0 for none
 * @param earsLength   how far the ears reach from the fold, mm, 0 for none
 */
public record Outline(ShapeWidth width, WidthMeasure measured, double tubeRadius, double foldedLength, double earsWidth, double earsLength) {
    private static final int DEEPEST = 12;

    /** First place of the outline: the fold, or where the widths begin. */
    public double from() {
        return Math.max(0, width.from());
    }

    /** Last place of the outline: the end of the cane, or where the widths end. */
    public double to() {
        return Math.min(foldedLength, width.to());
    }

    /** Whether the widths reach from the fold to the end of the cane. */
    public boolean complete() {
        return width.from() <= 0 && width.to() >= foldedLength;
    }

    /**
     * Full width at s with its ears, from() &lt;= s &lt;= to(), mm.
     * @param as straight across (chord), or flattened along the bark (arc)
     * @throws culm.geometry.GeometryException when the cane is wider than the tube there
     */
    public double widthAt(double s, WidthMeasure as) {
        return converted(width.at(s) + (s <= earsLength ? 2 * earsWidth : 0), as);
    }

    private double converted(double full, WidthMeasure as) {
        if (as == measured) {
            return full;
        }
        double half = Edge.barkAngle(full, measured, tubeRadius);
        return as == WidthMeasure.ARC ? 2 * tubeRadius * half : 2 * tubeRadius * Math.sin(half);
    }

    /**
     * The outline of one blade, from the fold to the end of the cane, as a closed polygon (the first point is not repeated), counterclockwise from the fold's lower side.
     * @param as        straight across, or flattened
     * @param tolerance largest distance of the polygon from the outline, mm, positive
     */
    public List<Point> folded(WidthMeasure as, double tolerance) {
        List<Point> side = side(as, tolerance);
        List<Point> all = new ArrayList<>(mirrored(side, 1, -1));
        List<Point> back = new ArrayList<>(side);
        Collections.reverse(back);
        all.addAll(back);
        return all;
    }

    /** The outline of both blades before folding, the fold at x = 0, from one end of the cane to the other; see {@link #folded(WidthMeasure, double)}. */
    public List<Point> unfolded(WidthMeasure as, double tolerance) {
        List<Point> right = side(as, tolerance);
        List<Point> left = mirrored(right, -1, 1);
        Collections.reverse(left);
        List<Point> upper = new ArrayList<>(left);
        upper.addAll(right.get(0).x() == 0 ? right.subList(1, right.size()) : right);
        List<Point> all = new ArrayList<>(mirrored(upper, 1, -1));
        Collections.reverse(upper);
        all.addAll(upper);
        return all;
    }

    private List<Point> side(WidthMeasure as, double tolerance) {
        double end = to();
        double[] marks = DoubleStream.concat(DoubleStream.of(from(), end), DoubleStream.of(width.breaks())).filter(s -> s >= from() && s <= end)
                .sorted().distinct().toArray();
        boolean eared = earsWidth > 0 && earsLength > from() && earsLength < end;
        if (eared) {
            marks = DoubleStream.concat(Arrays.stream(marks), DoubleStream.of(earsLength)).sorted().distinct().toArray();
        }
        List<Point> points = new ArrayList<>();
        points.add(new Point(marks[0], widthAt(marks[0], as) / 2));
        for (int i = 1; i < marks.length; i++) {
            double a = marks[i - 1];
            double b = marks[i];
            boolean behindEar = eared && a >= earsLength;
            if (eared && a == earsLength) {
                points.add(new Point(a, bare(a, as)));
            }
            refine(points, a, behindEar ? bare(a, as) : widthAt(a, as) / 2, b, behindEar ? bare(b, as) : widthAt(b, as) / 2, as, tolerance, DEEPEST);
        }
        return points;
    }

    private double bare(double s, WidthMeasure as) {
        return converted(width.at(s), as) / 2;
    }

    private void refine(List<Point> points, double a, double ya, double b, double yb, WidthMeasure as, double tolerance, int depth) {
        double mid = 0.5 * (a + b);
        double y = widthAt(mid, as) / 2;
        double quarter = widthAt(0.5 * (a + mid), as) / 2;
        double off = Math.max(Math.abs(y - 0.5 * (ya + yb)), Math.abs(quarter - 0.75 * ya - 0.25 * yb));
        if (depth == 0 || off <= tolerance / 2) {
            points.add(new Point(b, yb));
            return;
        }
        refine(points, a, ya, mid, y, as, tolerance, depth - 1);
        refine(points, mid, y, b, yb, as, tolerance, depth - 1);
    }

    private static List<Point> mirrored(List<Point> points, int alongSign, int acrossSign) {
        List<Point> turned = new ArrayList<>();
        for (Point p : points) {
            turned.add(new Point(alongSign * p.x() + 0.0, acrossSign * p.y()));
        }
        return turned;
    }
}

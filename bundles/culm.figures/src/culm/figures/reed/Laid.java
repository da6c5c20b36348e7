package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;

import culm.geometry.gouge.Gouge;
import culm.geometry.gouge.GougeSection;
import culm.geometry.section.Point;
import culm.geometry.section.Section;
import culm.geometry.shape.Edge;

/**
 * Cane laid around a section, for drawing: theta turns from the blade's middle, mu is the length on the mid-surface, phi the cane's own angle.
 * d phi / d theta = (rho + q t / 2) / (g (R - t / 2)), mu = g (R phi - T / 2), by Runge and Kutta's fourth-order steps of about a degree,
 * or of three for an outline alone; in steps of a degree mu(pi/2) agrees with {@link culm.blank.Seam#needed(double)} within 1e-6 mm. Above a
 * staple the same is used with no staple inside.
 */
final class Laid {
    /** Steps to the seam for a section. */
    static final int FINE = 90;
    /** Steps to the seam for how far the cane reaches: half a thousandth of a mm from that of fine ones. */
    static final int COARSE = 30;
    private static final double BEYOND = 0.5;
    private static final int EDGE_POINTS = 6;
    private static final int FACE_POINTS = 48;
    private static final int REACH_POINTS = 10;
    private final Section section;
    private final Gouge gouge;
    private final GougeSection cane;
    private final Growth growth;
    private final double[] theta;
    private final double[] mu;
    private final double[] phi;
    private final double needed;

    /** How the cane differs from as measured: width of gouge and shape, thickness, and the fitted length. */
    record Growth(double gougeWidth, double shapeWidth, double thickness, double delta) {
    }

    Laid(Section section, Gouge gouge, GougeSection cane, Growth growth, int steps) {
        this.section = section;
        this.gouge = gouge;
        this.cane = cane;
        this.growth = growth;
        int beyond = (int) Math.ceil(steps * BEYOND / (Math.PI / 2));
        int n = steps + beyond + 1;
        theta = new double[n];
        mu = new double[n];
        phi = new double[n];
        double h = Math.PI / 2 / steps;
        for (int i = 1; i < n; i++) {
            double at = theta[i - 1];
            double p = phi[i - 1];
            double k1 = slope(at, p);
            double k2 = slope(at + h / 2, p + h / 2 * k1);
            double k3 = slope(at + h / 2, p + h / 2 * k2);
            double k4 = slope(at + h, p + h * k3);
            theta[i] = i * h;
            phi[i] = p + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        double thicknessSoFar = 0;
        for (int i = 1; i < n; i++) {
            double middle = cane.thickness((phi[i] + phi[i - 1]) / 2);
            thicknessSoFar += (phi[i] - phi[i - 1]) / 6 * (cane.thickness(phi[i - 1]) + 4 * middle + cane.thickness(phi[i]));
            mu[i] = growth.gougeWidth() * (gouge.tubeRadius() * phi[i] - thicknessSoFar / 2);
        }
        needed = mu[steps];
    }

    private double slope(double at, double p) {
        double t = cane.thickness(p);
        return (section.curvatureRadius(Math.PI / 2 - at) + growth.thickness() * t / 2) / (growth.gougeWidth() * (gouge.tubeRadius() - t / 2));
    }

    /** Half-width needed, mu at the seam. */
    double needed() {
        return needed;
    }

    /** Half-width that the cane has between its meeting corners. */
    double given(Edge edge) {
        return edgeLength(edge.meeting());
    }

    private double edgeLength(double angle) {
        return growth.shapeWidth() * gouge.midSurface(cane, angle) + growth.delta();
    }

    /**
     * Outline of the upper blade, (x, y) in mm, y through the opening upwards: inside from left to right, right edge, bark from right to left,
     * left edge.
     * @param edge  where it ends, as cut
     * @param shift moved to the right along its mid-surface by so much
     * @param other the same for the lower blade, which it meets in the middle where both are pinched
     */
    List<double[]> blade(Edge edge, double shift, double other) {
        double right = needed + (shift - other) / 2;
        double left = -needed + (shift - other) / 2;
        List<double[]> rightEdge = edge(edge, 1, shift, right);
        List<double[]> leftEdge = edge(edge, -1, shift, left);
        List<double[]> outline = new ArrayList<>();
        face(outline, leftEdge.get(0)[0], rightEdge.get(0)[0], shift, false);
        rightEdge.forEach(p -> outline.add(point(p[0], p[1])));
        face(outline, rightEdge.get(EDGE_POINTS)[0], leftEdge.get(EDGE_POINTS)[0], shift, true);
        for (int i = EDGE_POINTS; i >= 0; i--) {
            outline.add(point(leftEdge.get(i)[0], leftEdge.get(i)[1]));
        }
        return outline;
    }

    /** Half of what is seen from the wide side: the blade's farthest point from the narrow axis, when it lies straight. */
    double reach(Edge edge) {
        List<double[]> cut = edge(edge, 1, 0, needed);
        double end = cut.get(EDGE_POINTS)[0];
        double farthest = 0;
        for (double[] p : cut) {
            farthest = Math.max(farthest, point(p[0], p[1])[0]);
        }
        for (int i = 1; i <= REACH_POINTS; i++) {
            double at = end * (1 - 0.5 * i / REACH_POINTS);
            double t = cane.thickness(interpolate(theta, phi, at));
            farthest = Math.max(farthest, point(at, growth.thickness() * t)[0]);
        }
        return farthest;
    }

    /** The bark side alone, from left to right, as (x, y). */
    List<double[]> bark(Edge edge, double shift, double other) {
        double right = edge(edge, 1, shift, needed + (shift - other) / 2).get(EDGE_POINTS)[0];
        double left = edge(edge, -1, shift, -needed + (shift - other) / 2).get(EDGE_POINTS)[0];
        List<double[]> face = new ArrayList<>();
        face(face, left, right, shift, true);
        return face;
    }

    /** Points of a cut edge from inside to bark as (theta, distance from the inner face). */
    private List<double[]> edge(Edge edge, int side, double shift, double limit) {
        double radius = gouge.tubeRadius();
        double inner = radius - cane.thickness(edge.inner());
        double x0 = inner * Math.sin(edge.inner());
        double y0 = inner * Math.cos(edge.inner());
        double x1 = radius * Math.sin(edge.outer());
        double y1 = radius * Math.cos(edge.outer());
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= EDGE_POINTS; i++) {
            double u = (double) i / EDGE_POINTS;
            double x = x0 + u * (x1 - x0);
            double y = y0 + u * (y1 - y0);
            double angle = Math.atan2(x, y);
            double depth = Math.hypot(x, y) - (radius - cane.thickness(angle));
            double along = side * edgeLength(angle) + shift;
            along = side > 0 ? Math.min(along, limit) : Math.max(along, limit);
            points.add(new double[] {thetaAt(along), growth.thickness() * Math.max(0, depth)});
        }
        return points;
    }

    private void face(List<double[]> outline, double from, double to, double shift, boolean outer) {
        for (int i = 0; i <= FACE_POINTS; i++) {
            double at = from + (to - from) * i / FACE_POINTS;
            double own = Math.abs(interpolate(theta, mu, Math.abs(at)) * Math.signum(at) - shift);
            double off = outer ? growth.thickness() * cane.thickness(interpolate(mu, phi, own)) : 0;
            outline.add(point(at, off));
        }
    }

    private double[] point(double at, double off) {
        double psi = Math.PI / 2 - at;
        Point p = section.boundary(psi);
        return new double[] {p.x() + off * Math.cos(psi), p.y() + off * Math.sin(psi)};
    }

    private double thetaAt(double along) {
        return Math.signum(along) * interpolate(mu, theta, Math.abs(along));
    }

    private static double interpolate(double[] from, double[] to, double at) {
        int low = 0;
        int top = from.length - 1;
        while (top - low > 1) {
            int middle = (low + top) >>> 1;
            if (from[middle] <= at) {
                low = middle;
            } else {
                top = middle;
            }
        }
        return to[low] + (to[top] - to[low]) * Math.min(1, (at - from[low]) / (from[top] - from[low]));
    }
}

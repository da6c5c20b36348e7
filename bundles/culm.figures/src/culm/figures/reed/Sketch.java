package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;

/**
 * The blades above the staple, outside the model and only sketched: the mid-surface is an ellipse whose quarter perimeter is the half-width the
 * cane has there; its narrow half-axis falls evenly from the staple's top to half the thickness at the fold, where the blades touch.
 *
 * @param wide   half-axis of the mid-surface along x, mm
 * @param narrow half-axis of the mid-surface along y, mm
 * @param middle thickness in the middle, mm
 * @param side   thickness at the edge, mm
 */
record Sketch(double wide, double narrow, double middle, double side) {
    private static final int POINTS = 48;

    /** The ellipse with a quarter perimeter and a narrow half-axis; a circle where the quarter is too short for that. */
    static Sketch of(double quarter, double narrow, double middle, double side) {
        if (quarter <= narrow * Math.PI / 2) {
            double r = quarter * 2 / Math.PI;
            return new Sketch(r, r, middle, side);
        }
        double low = narrow;
        double high = quarter;
        for (int i = 0; i < 40; i++) {
            double a = (low + high) / 2;
            if (perimeter(a, narrow) / 4 < quarter) {
                low = a;
            } else {
                high = a;
            }
        }
        return new Sketch((low + high) / 2, narrow, middle, side);
    }

    /** Ramanujan's second approximation, 1914: within 0.05 % for any ellipse, enough for a sketch. */
    static double perimeter(double a, double b) {
        double h = (a - b) * (a - b) / ((a + b) * (a + b));
        return Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h)));
    }

    /** Half of what is seen from the wide side. */
    double reach() {
        return wide + side / 2;
    }

    /** Inner and outer face in the middle, from the axis. */
    double inside() {
        return Math.max(0, narrow - middle / 2);
    }

    double outside() {
        return inside() + middle;
    }

    /** Outline of the upper blade, (x, y) in mm. */
    List<double[]> blade() {
        List<double[]> outline = new ArrayList<>();
        face(outline, -1);
        face(outline, 1);
        return outline;
    }

    private void face(List<double[]> outline, int outward) {
        for (int i = 0; i <= POINTS; i++) {
            double psi = Math.PI * (outward < 0 ? 1 - (double) i / POINTS : (double) i / POINTS);
            double c = Math.cos(psi);
            double s = Math.sin(psi);
            double off = outward * (side + (middle - side) * s) / 2;
            double length = Math.hypot(c / wide, s / narrow);
            double x = wide * c + off * c / wide / length;
            double y = narrow * s + off * s / narrow / length;
            outline.add(new double[] {x, Math.max(0, y)});
        }
    }
}

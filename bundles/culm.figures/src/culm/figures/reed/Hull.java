package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;

/** What a tight thread lies on: the support function of a set of points, so that the offset curve is exact for their convex hull. */
final class Hull {
    private static final int DIRECTIONS = 180;
    private final List<double[]> points;

    /** @param upper points (x, y), mm; they count with their images below the axis unless {@code lower} gives those */
    Hull(List<double[]> upper, List<double[]> lower) {
        points = new ArrayList<>(upper);
        points.addAll(lower);
    }

    /** The hull moved outward by d, as a closed polygon. */
    List<double[]> outward(double d) {
        List<double[]> curve = new ArrayList<>();
        for (int i = 0; i < DIRECTIONS; i++) {
            double psi = 2 * Math.PI * i / DIRECTIONS;
            double c = Math.cos(psi);
            double s = Math.sin(psi);
            double[] best = points.get(0);
            for (double[] p : points) {
                if (p[0] * c + p[1] * s > best[0] * c + best[1] * s) {
                    best = p;
                }
            }
            curve.add(new double[] {best[0] + d * c, best[1] + d * s});
        }
        return curve;
    }
}

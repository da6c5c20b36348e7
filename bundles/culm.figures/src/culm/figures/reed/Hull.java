package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;

/** What a tight thread lies on: the support function of a set of points, so that the offset curve is exact for their convex hull. */
final class Hull {
    private static final int DIRECTIONS = 180;
    private final List<double[]> touched = new ArrayList<>();

    /** @param points all points (x, y), mm; at least one */
    Hull(List<double[]> points) {
        double[] x = points.stream().mapToDouble(p -> p[0]).toArray();
        double[] y = points.stream().mapToDouble(p -> p[1]).toArray();
        for (int i = 0; i < DIRECTIONS; i++) {
            double c = Math.cos(2 * Math.PI * i / DIRECTIONS);
            double s = Math.sin(2 * Math.PI * i / DIRECTIONS);
            int best = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < x.length; k++) {
                double h = x[k] * c + y[k] * s;
                if (h > most) {
                    most = h;
                    best = k;
                }
            }
            touched.add(new double[] {x[best], y[best], c, s});
        }
    }

    /** The hull moved outward by d, as a closed polygon. */
    List<double[]> outward(double d) {
        return touched.stream().map(t -> new double[] {t[0] + d * t[2], t[1] + d * t[3]}).toList();
    }
}

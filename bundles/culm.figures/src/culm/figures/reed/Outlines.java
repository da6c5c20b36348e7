package culm.figures.reed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

import culm.geometry.GeometryException;

/** Outlines of a reed over height, from the wide side and in the cut through its middle: points (z, distance from the axis), mm. */
final class Outlines {
    private static final double STEP = 0.5;
    /** The sketch leaves the shape it has on the staple over so many mm. */
    private static final double JOINED = 2;
    private final Reed reed;
    private final List<double[]> caneWide = new ArrayList<>();
    /** By height, as far as they were made for the wide side; the cut asks at the same heights. */
    private final Map<Double, Sketch> sketches = new HashMap<>();

    Outlines(Reed reed) {
        this.reed = reed;
        if (reed.drawable()) {
            for (double z : heights(Math.max(0, reed.caneEnd()), reed.fold())) {
                caneReach(z).ifPresent(x -> caneWide.add(new double[] {z, x}));
            }
        }
    }

    /** Half of the cane seen from the wide side, over height: on the staple as laid, above it as sketched. */
    List<double[]> caneWide() {
        return caneWide;
    }

    /** Interpolated from {@link #caneWide()}. */
    double caneWideAt(double z) {
        for (int i = 1; i < caneWide.size(); i++) {
            double[] a = caneWide.get(i - 1);
            double[] b = caneWide.get(i);
            if (z <= b[0] && z >= a[0]) {
                return b[0] == a[0] ? b[1] : a[1] + (b[1] - a[1]) * (z - a[0]) / (b[0] - a[0]);
            }
        }
        return caneWide.isEmpty() ? 0 : caneWide.get(z < caneWide.get(0)[0] ? 0 : caneWide.size() - 1)[1];
    }

    /** What the thread lies on, seen from the wide side: the cane, or the staple where the sides stand far open. */
    double underThreadWide(double z) {
        double cane = z >= reed.caneEnd() ? caneWideAt(z) : 0;
        return z > reed.stapleTop() ? cane : Math.max(cane, reed.outside(z).halfWide());
    }

    /** What the thread lies on, in the cut. */
    double underThreadCut(double z) {
        return z >= reed.caneEnd() || z > reed.stapleTop() ? caneOutside(z) : reed.outside(z).halfNarrow();
    }

    /** Inner face of the cane in the cut. */
    double caneInside(double z) {
        return z <= reed.stapleTop() ? reed.outside(z).halfNarrow() : sketched(z, Sketch::inside);
    }

    /** Bark side of the cane in the cut. */
    double caneOutside(double z) {
        return z <= reed.stapleTop() ? reed.outside(z).halfNarrow() + reed.middle(z) : sketched(z, Sketch::outside);
    }

    private double sketched(double z, java.util.function.ToDoubleFunction<Sketch> what) {
        try {
            Sketch known = sketches.get(z);
            return known != null ? what.applyAsDouble(known) : reed.covered(z) ? what.applyAsDouble(reed.sketch(z)) : reed.middle(Math.min(z, reed.fold()));
        } catch (GeometryException e) {
            return reed.middle(Math.min(z, reed.fold())); // the cane is too wide for its tube there; the findings say so
        }
    }

    private OptionalDouble caneReach(double z) {
        if (!reed.covered(z)) {
            return OptionalDouble.empty();
        }
        try {
            double top = reed.stapleTop();
            if (z <= top) {
                return OptionalDouble.of(reed.laidReach(z));
            }
            Sketch sketch = reed.sketch(z);
            sketches.put(z, sketch);
            double sketched = sketch.reach();
            double u = (z - top) / JOINED;
            if (u >= 1 || !reed.caneOnStaple(top) || !reed.covered(top)) {
                return OptionalDouble.of(sketched);
            }
            double smooth = u * u * (3 - 2 * u);
            return OptionalDouble.of((1 - smooth) * reed.laidReach(top) + smooth * sketched);
        } catch (GeometryException e) {
            return OptionalDouble.empty();
        }
    }

    /** Heights from a to b, at most half a mm apart, with the staple's top. */
    List<Double> heights(double a, double b) {
        TreeSet<Double> all = new TreeSet<>();
        int n = (int) Math.max(1, Math.ceil((b - a) / STEP));
        for (int i = 0; i <= n && n < 10_000; i++) {
            all.add(a + (b - a) * i / n);
        }
        if (reed.stapleTop() > a && reed.stapleTop() < b) {
            all.add(reed.stapleTop());
            all.add(reed.stapleTop() + 1e-6);
        }
        return new ArrayList<>(all);
    }

    /** Points (z, f(z)). */
    List<double[]> points(double a, double b, DoubleUnaryOperator f) {
        List<double[]> points = new ArrayList<>();
        for (double z : heights(a, b)) {
            points.add(new double[] {z, f.applyAsDouble(z)});
        }
        return points;
    }
}

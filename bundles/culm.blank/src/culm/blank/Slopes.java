package culm.blank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;

import culm.geometry.GeometryException;
import culm.geometry.profile.Quantity;

/**
 * First-order slopes of G at a fixed height, by central differences (one-sided where a side is refused), and what follows for the closing
 * by the implicit function theorem: d z_c / d x = -(dG/dx) / (dG/dz).
 */
final class Slopes {
    private final Optional<Executor> besides;
    private final Blank blank;
    private final double z;
    private final double top;
    private final Seam seam;
    private final double needed;
    private final double given;

    /** @param besides where a part of the inputs is tried at the same time */
    Slopes(Blank blank, double z, Optional<Executor> besides) {
        this.besides = besides;
        this.blank = blank;
        this.z = z;
        this.top = blank.number(Inputs.STAPLE_LENGTH);
        this.seam = new Seam(blank);
        this.needed = seam.needed(z);
        this.given = seam.given(z);
    }

    /** dG/dz at z, mm per mm. */
    double along() {
        double h = 1e-4;
        double a = Math.max(0, z - h);
        double b = Math.min(top, z + h);
        return (seam.open(b) - seam.open(a)) / (b - a);
    }

    /** dG/dx for every input that can matter, by path. */
    Map<String, Double> inputs() {
        List<Input> moving = blank.inputs().stream().filter(i -> !Response.WITHOUT_EFFECT.contains(i.path()) && !i.path().equals(Inputs.DELTA)).toList();
        double[] slopes = new double[moving.size()];
        Together.each(slopes.length, i -> slopes[i] = of(moving.get(i)), besides);
        Map<String, Double> all = new TreeMap<>();
        for (int i = 0; i < slopes.length; i++) {
            all.put(moving.get(i).path(), slopes[i]);
        }
        return all;
    }

    private double of(Input input) {
        double h = input.parameter().quantity() == Quantity.SHARE ? 1e-4 : 1e-3;
        Touched touched = Touched.by(blank, input.path());
        double up = open(input.path(), input.value() + h, touched);
        double down = open(input.path(), input.value() - h, touched);
        if (Double.isNaN(up) && Double.isNaN(down)) {
            return 0;
        }
        if (Double.isNaN(up) || Double.isNaN(down)) {
            double here = 2 * (needed - given);
            return Double.isNaN(up) ? (here - down) / h : (up - here) / h;
        }
        return (up - down) / (2 * h);
    }

    /** NaN where the moved input is refused: a place that is fixed by definition, or the end of its range. */
    private double open(String path, double value, Touched touched) {
        try {
            Blank moved = blank.with(path, value);
            Seam seam = new Seam(moved);
            double at = Math.min(z, moved.number(Inputs.STAPLE_LENGTH));
            return 2 * ((touched.needed() ? seam.needed(at) : needed) - (touched.given() ? seam.given(at) : given));
        } catch (GeometryException refused) {
            return Double.NaN;
        }
    }

    /** Sensitivities of the closing at z, in the order of the bench. */
    List<Sensitivity> closing() {
        double along = along();
        Map<String, Double> slopes = inputs();
        List<Sensitivity> all = new ArrayList<>();
        for (Input input : blank.inputs()) {
            Double slope = slopes.get(input.path());
            if (slope != null && slope != 0 && along != 0) {
                all.add(new Sensitivity(input, -slope / along, slope));
            }
        }
        return all;
    }
}

package culm.blank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What closing, turns left and opening at the staple's top become when the inputs are moved within their give or take: quick enough for thousands of
 * draws, by the {@link Response} of the seam.
 * <p>With a fit, what the fitted length has absorbed does not count again: an input that is the same in the blank that worked moves both together, an
 * input that was changed moves with its own give or take and with the old one's, and the reading moves by its error.
 */
final class Spread {
    /** The reading of the turns on the blank that worked. */
    private static final String READING = "reading";
    private static final String BEFORE = "worked:";
    /** How nearly zero the seam has to be, mm; the closing is then as near as nothing to where it is. */
    private static final double SHUT = 1e-9;
    private static final int ROUNDS = 30;

    private final Blank blank;
    private final Response response;
    private final int[] places;
    private final List<String> names = new ArrayList<>();
    private final List<Double> reach = new ArrayList<>();
    private final Map<String, Integer> index = new HashMap<>();
    private final double[] open = new double[Response.NODES];
    private final double to;
    private final Worked worked;

    /**
     * @param depth how far below the staple's top the closing is followed, mm, on the overlap
     * @throws culm.geometry.GeometryException when the blank, or the one that worked, cannot be computed there
     */
    Spread(Blank blank, double depth) {
        this.blank = blank;
        this.to = depth;
        this.response = new Response(blank, 0, depth);
        this.places = response.inputs().stream().mapToInt(i -> variable(i.path(), i.tolerance())).toArray();
        for (String path : List.of(Inputs.STAPLE_LENGTH, Inputs.WRAP_TOP, Inputs.THREAD_PITCH, Inputs.CROOKED)) {
            variable(path, blank.tolerance(path));
        }
        this.worked = blank.fit().map(Worked::new).orElse(null);
    }

    private int variable(String name, Tolerance tolerance) {
        return index.computeIfAbsent(name, n -> {
            names.add(n);
            reach.add(tolerance.plusMinus());
            return names.size() - 1;
        });
    }

    /** Names of what moves; they only have to be the same from one edit to the next. */
    List<String> names() {
        return names;
    }

    /** How far each may move to either side. */
    double reach(int k) {
        return reach.get(k);
    }

    /**
     * Closing (positive infinity when the sides never close), turns left (negative infinity then), and opening at the staple's top.
     * @param x how far each of {@link #names()} is moved; not for several threads at once
     */
    void at(double[] x, double[] result) {
        response.open(x, places, open);
        double shift = worked == null ? 0 : 2 * worked.shift(x);
        double crooked = blank.number(Inputs.CROOKED);
        double aside = Math.abs(crooked + moved(x, Inputs.CROOKED));
        for (int j = 0; j < open.length; j++) {
            open[j] += aside - shift;
        }
        result[2] = open[0];
        if (open[0] > 0) {
            result[0] = Double.POSITIVE_INFINITY;
            result[1] = Double.NEGATIVE_INFINITY;
            return;
        }
        double top = blank.number(Inputs.STAPLE_LENGTH) + moved(x, Inputs.STAPLE_LENGTH);
        double end = blank.number(Inputs.TIE_LENGTH) + moved(x, Inputs.TIE_LENGTH) - blank.number(Inputs.FOLDED_LENGTH) - moved(x, Inputs.FOLDED_LENGTH);
        result[0] = Math.max(end, top - deepest());
        result[1] = (blank.number(Inputs.WRAP_TOP) + moved(x, Inputs.WRAP_TOP) - result[0]) / (blank.number(Inputs.THREAD_PITCH) + moved(x, Inputs.THREAD_PITCH));
    }

    private double moved(double[] x, String path) {
        Integer k = index.get(path);
        return k == null ? 0 : x[k];
    }

    /** The first change of sign below the top: between two nodes by the polynomial through all of them. */
    private double deepest() {
        int j = 1;
        while (j < open.length && open[j] <= 0) {
            j++;
        }
        if (j == open.length) {
            return to;
        }
        double a = response.depth(j - 1);
        double b = response.depth(j);
        double fa = open[j - 1];
        double fb = open[j];
        int side = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double x = a - fa * (b - a) / (fb - fa);
            double f = response.through(open, x);
            if (Math.abs(f) < SHUT) {
                return x;
            }
            if (f < 0) {
                a = x;
                fa = f;
                fb = side < 0 ? fb / 2 : fb;
                side = -1;
            } else {
                b = x;
                fb = f;
                fa = side > 0 ? fa / 2 : fa;
                side = 1;
            }
        }
        return a;
    }

    /** The blank that worked: how its fitted length moves with what is not known of it. */
    private final class Worked {
        private final Fit fit;
        private final Response then;
        private final int[] places;
        private final double low;
        private final double high;
        private final double[] open = new double[Response.NODES];
        private final int wrap;
        private final int pitch;
        private final int top;
        private final int reading;

        Worked(Fit fit) {
            this.fit = fit;
            Blank old = fit.worked();
            double seen = old.number(Inputs.STAPLE_LENGTH) - Fit.seen(old, fit.turnsLeft());
            double around = old.number(Inputs.THREAD_PITCH) * fit.readingError() + old.tolerance(Inputs.WRAP_TOP).plusMinus()
                    + old.tolerance(Inputs.STAPLE_LENGTH).plusMinus() + Math.abs(fit.turnsLeft()) * old.tolerance(Inputs.THREAD_PITCH).plusMinus() + 0.1 * old.number(Inputs.THREAD_PITCH);
            double overlap = old.number(Inputs.STAPLE_LENGTH) - old.number(Inputs.TIE_LENGTH) + old.number(Inputs.FOLDED_LENGTH);
            low = Math.max(0, seen - around);
            high = Math.min(overlap, seen + around);
            then = new Response(old, low, high);
            places = then.inputs().stream().mapToInt(i -> shared(old, i.path())).toArray();
            wrap = shared(old, Inputs.WRAP_TOP);
            pitch = shared(old, Inputs.THREAD_PITCH);
            top = shared(old, Inputs.STAPLE_LENGTH);
            reading = variable(READING, new Tolerance(fit.readingError(), true));
        }

        private int shared(Blank old, String path) {
            return fit.same(blank, path) ? variable(path, blank.tolerance(path)) : variable(BEFORE + path, old.tolerance(path));
        }

        /** How far the fitted length moves. */
        double shift(double[] x) {
            Blank old = fit.worked();
            then.open(x, places, open);
            double turns = fit.turnsLeft() + x[reading];
            double seen = old.number(Inputs.WRAP_TOP) + x[wrap] - turns * (old.number(Inputs.THREAD_PITCH) + x[pitch]);
            double depth = old.number(Inputs.STAPLE_LENGTH) + x[top] - seen;
            return then.through(open, Math.min(high, Math.max(low, depth))) / 2 - fit.delta();
        }
    }
}

package culm.blank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;

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
    private static final double SHUT = 1e-7;
    private static final int ROUNDS = 30;

    private final Blank blank;
    private final Response response;
    private final int[] places;
    private final List<String> names = new ArrayList<>();
    private final List<Double> reach = new ArrayList<>();
    private final Map<String, Integer> index = new HashMap<>();
    private final double to;
    private final double crooked;
    private final double tie;
    private final double folded;
    private final double top;
    private final double wrapTop;
    private final double pitch;
    private final Worked worked;

    /**
     * @param depth how far below the staple's top the closing is followed, mm, on the overlap
     * @param besides where a part is computed at the same time
     * @throws culm.geometry.GeometryException when the blank, or the one that worked, cannot be computed there
     */
    Spread(Blank blank, double depth, Optional<Executor> besides) {
        this.blank = blank;
        this.to = depth;
        this.response = new Response(blank, 0, depth, besides);
        this.places = response.inputs().stream().mapToInt(i -> variable(i.path(), i.tolerance())).toArray();
        for (String path : List.of(Inputs.STAPLE_LENGTH, Inputs.WRAP_TOP, Inputs.THREAD_PITCH, Inputs.CROOKED)) {
            variable(path, blank.tolerance(path));
        }
        this.crooked = blank.number(Inputs.CROOKED);
        this.tie = blank.number(Inputs.TIE_LENGTH);
        this.folded = blank.number(Inputs.FOLDED_LENGTH);
        this.top = blank.number(Inputs.STAPLE_LENGTH);
        this.wrapTop = blank.number(Inputs.WRAP_TOP);
        this.pitch = blank.number(Inputs.THREAD_PITCH);
        this.worked = blank.fit().map(f -> new Worked(f, besides)).orElse(null);
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
     * Closing (positive infinity when the sides never close), turns left (negative infinity then), and opening at the staple's top, for many moves at once.
     * @param x how far each of {@link #names()} is moved, [name][move], mm or a share; @return [result][move]
     */
    double[][] at(double[][] x) {
        int moves = x[0].length;
        double[][] result = new double[3][moves];
        double[][] open = new double[Response.NODES][moves];
        response.open(x, places, open);
        double[] shift = worked == null ? new double[moves] : worked.shift(x);
        double[] aside = moved(x, Inputs.CROOKED);
        double[] tied = moved(x, Inputs.TIE_LENGTH);
        double[] halved = moved(x, Inputs.FOLDED_LENGTH);
        double[] longer = moved(x, Inputs.STAPLE_LENGTH);
        double[] higher = moved(x, Inputs.WRAP_TOP);
        double[] wider = moved(x, Inputs.THREAD_PITCH);
        double[] one = new double[Response.NODES];
        for (int i = 0; i < moves; i++) {
            double extra = Math.abs(crooked + aside[i]) - 2 * shift[i];
            for (int j = 0; j < one.length; j++) {
                one[j] = open[j][i] + extra;
            }
            result[2][i] = one[0];
            boolean never = one[0] > 0;
            result[0][i] = never ? Double.POSITIVE_INFINITY
                    : Math.max(tie + tied[i] - folded - halved[i], top + longer[i] - deepest(one));
            result[1][i] = never ? Double.NEGATIVE_INFINITY : (wrapTop + higher[i] - result[0][i]) / (pitch + wider[i]);
        }
        return result;
    }

    /** How far one input is moved in each move; not at all when it does not move. */
    private double[] moved(double[][] x, String path) {
        Integer k = index.get(path);
        return k == null ? new double[x[0].length] : x[k];
    }

    /** The first change of sign below the top: between two nodes by the polynomial through all of them. */
    private double deepest(double[] open) {
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
        private final int wrap;
        private final int pitch;
        private final int top;
        private final int reading;

        Worked(Fit fit, Optional<Executor> besides) {
            this.fit = fit;
            Blank old = fit.worked();
            double seen = old.number(Inputs.STAPLE_LENGTH) - Fit.seen(old, fit.turnsLeft());
            double around = old.number(Inputs.THREAD_PITCH) * fit.readingError() + old.tolerance(Inputs.WRAP_TOP).plusMinus()
                    + old.tolerance(Inputs.STAPLE_LENGTH).plusMinus() + Math.abs(fit.turnsLeft()) * old.tolerance(Inputs.THREAD_PITCH).plusMinus() + 0.1 * old.number(Inputs.THREAD_PITCH);
            double overlap = old.number(Inputs.STAPLE_LENGTH) - old.number(Inputs.TIE_LENGTH) + old.number(Inputs.FOLDED_LENGTH);
            low = Math.max(0, seen - around);
            high = Math.min(overlap, seen + around);
            then = old.response(low, high, besides);
            places = then.inputs().stream().mapToInt(i -> shared(old, i.path())).toArray();
            wrap = shared(old, Inputs.WRAP_TOP);
            pitch = shared(old, Inputs.THREAD_PITCH);
            top = shared(old, Inputs.STAPLE_LENGTH);
            reading = variable(READING, new Tolerance(fit.readingError(), true));
        }

        private int shared(Blank old, String path) {
            return fit.same(blank, path) ? variable(path, blank.tolerance(path)) : variable(BEFORE + path, old.tolerance(path));
        }

        /** How far the fitted length moves, for each move. */
        double[] shift(double[][] x) {
            Blank old = fit.worked();
            double wrapTop = old.number(Inputs.WRAP_TOP);
            double turn = old.number(Inputs.THREAD_PITCH);
            double length = old.number(Inputs.STAPLE_LENGTH);
            double[] shift = new double[x[0].length];
            double[][] open = new double[Response.NODES][shift.length];
            then.open(x, places, open);
            double[] one = new double[Response.NODES];
            for (int i = 0; i < shift.length; i++) {
                for (int j = 0; j < one.length; j++) {
                    one[j] = open[j][i];
                }
                double turns = fit.turnsLeft() + x[reading][i];
                double seen = wrapTop + x[wrap][i] - turns * (turn + x[pitch][i]);
                double depth = length + x[top][i] - seen;
                shift[i] = then.through(one, Math.min(high, Math.max(low, depth))) / 2 - fit.delta();
            }
            return shift;
        }
    }
}

package culm.explore.internal.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.blank.Blank;
import culm.blank.Input;
import culm.explore.Spread;
import culm.explore.Varied;
import culm.explore.internal.fast.Columns;
import culm.explore.internal.fast.Range;

/** Draws blanks into columns, by {@link Uniforms}: input by input, any block by any thread. */
public final class Draws {
    private static final double SNAP = 1e-9;

    private final List<Varied> varied = new ArrayList<>();
    private final List<double[]> u = new ArrayList<>();
    private final List<double[]> columns = new ArrayList<>();
    private final List<List<double[]>> also = new ArrayList<>();
    private final double[] base;
    private final double[][] alsoBase;
    private final double[] low;
    private final double[] high;
    private final List<Uniforms> uniforms = new ArrayList<>();
    private final long[] bits = new long[Columns.SIZE];

    public Draws(List<Varied> all, Columns columns, long seed) {
        Blank blank = columns.base();
        Map<String, Range> ranges = ranges(blank, all);
        all.stream().filter(v -> v.spread().moves()).forEach(varied::add);
        int k = varied.size();
        base = new double[k];
        alsoBase = new double[k][];
        low = new double[k];
        high = new double[k];
        for (int i = 0; i < k; i++) {
            Varied v = varied.get(i);
            Range range = ranges.get(v.path());
            base[i] = Varied.value(blank, v.path());
            alsoBase[i] = v.also().stream().mapToDouble(p -> Varied.value(blank, p)).toArray();
            low[i] = range.low();
            high[i] = range.high();
            uniforms.add(new Uniforms(seed, v.spread() instanceof Spread.Measured m && !m.group().isEmpty() ? "group " + m.group() : v.path()));
            u.add(new double[Columns.SIZE]);
            this.columns.add(columns.of(v.path()));
            also.add(v.also().stream().map(columns::of).toList());
        }
    }

    /**
     * What the varied inputs can hold. A spread that ends within rounding of an end of the input's own range ends there.
     */
    public static Map<String, Range> ranges(Blank blank, List<Varied> all) {
        Map<String, Range> ranges = new LinkedHashMap<>();
        Map<String, Input> inputs = new LinkedHashMap<>();
        blank.inputs().forEach(i -> inputs.put(i.path(), i));
        for (Varied v : all) {
            if (!v.spread().moves()) {
                continue;
            }
            double value = Varied.value(blank, v.path());
            double from = v.spread().low(value);
            double to = v.spread().high(value);
            Input input = inputs.get(v.path());
            if (input != null) {
                from = Math.abs(from - input.parameter().min()) < SNAP ? input.parameter().min() : from;
                to = Math.abs(to - input.parameter().max()) < SNAP ? input.parameter().max() : to;
            }
            ranges.put(v.path(), new Range(from, to));
            for (String path : v.also()) {
                double other = Varied.value(blank, path);
                ranges.put(path, new Range(other + from - value, other + to - value));
            }
        }
        return ranges;
    }

    /** Fills lanes 0 to n - 1 with the draws from a number on. */
    public void fill(long first, int n) {
        for (int i = 0; i < varied.size(); i++) {
            uniforms.get(i).fill(first, bits, u.get(i), n);
            double[] column = columns.get(i);
            varied.get(i).spread().fill(u.get(i), base[i], column, n);
            clip(column, low[i], high[i], n);
            for (int a = 0; a < alsoBase[i].length; a++) {
                shift(column, alsoBase[i][a] - base[i], also.get(i).get(a), n);
            }
        }
    }

    private static void clip(double[] column, double low, double high, int n) {
        for (int l = 0; l < n; l++) {
            column[l] = Math.min(high, Math.max(low, column[l]));
        }
    }

    private static void shift(double[] from, double by, double[] to, int n) {
        for (int l = 0; l < n; l++) {
            to[l] = from[l] + by;
        }
    }

    /** The inputs that move, in their order. */
    public List<Varied> moving() {
        return varied;
    }

    /** u of one moving input in the block last filled. */
    public double[] u(int input) {
        return u.get(input);
    }
}

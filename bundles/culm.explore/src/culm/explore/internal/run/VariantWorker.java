package culm.explore.internal.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.rules.Rule;
import culm.explore.Axis;
import culm.explore.Study;
import culm.explore.VariantBlock;
import culm.explore.VariantPlan;
import culm.explore.Varied;
import culm.explore.internal.fast.BlockCloser;
import culm.explore.internal.fast.Closers;
import culm.explore.internal.fast.Columns;
import culm.explore.internal.fast.Range;

/** One thread's tools for variants: for every combination of parts its columns, closer and judge. */
public final class VariantWorker {
    private static final int KEPT = 32;
    private final Study study;
    private final List<Axis> axes;
    private final VariantPlan.Reader reader;
    /** The combinations last used; a grid changes its parts slowly. */
    private final Map<Long, Tools> combinations = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, Tools> eldest) {
            return size() > KEPT;
        }
    };

    private final class Tools {
        private final Columns columns;
        private final BlockCloser closer;
        private final Judge judge;
        private final List<double[]> varied = new ArrayList<>();
        private final double[] own;
        private final double[] wrapTop;
        private final double[] pitch;

        Tools(Blank base) {
            Map<String, Range> ranges = new LinkedHashMap<>();
            for (Axis axis : axes) {
                if (axis instanceof Axis.Numbers numbers) {
                    double value = Varied.value(base, numbers.id());
                    ranges.put(numbers.id(), new Range(Math.min(value, java.util.Arrays.stream(numbers.values()).min().orElseThrow()),
                            Math.max(value, java.util.Arrays.stream(numbers.values()).max().orElseThrow())));
                }
            }
            columns = new Columns(base, ranges);
            closer = Closers.of(columns);
            judge = new Judge(study.rules(), study.limits(), columns, closer);
            axes.forEach(a -> varied.add(a instanceof Axis.Numbers ? columns.of(a.id()) : null));
            own = axes.stream().mapToDouble(a -> a instanceof Axis.Numbers ? Varied.value(base, a.id()) : Double.NaN).toArray();
            wrapTop = columns.of(Inputs.WRAP_TOP);
            pitch = columns.of(Inputs.THREAD_PITCH);
        }
    }

    public VariantWorker(Study study, List<Axis> axes, VariantPlan plan) {
        this.study = study;
        this.axes = axes;
        this.reader = plan.reader(axes);
    }

    /** @throws IllegalArgumentException when a number is not one of the base with each part */
    public void check() {
        tools(key(new double[axes.size()]));
        for (int i = 0; i < axes.size(); i++) {
            if (axes.get(i) instanceof Axis.Parts parts) {
                for (int c = 0; c < parts.size(); c++) {
                    double[] row = new double[axes.size()];
                    row[i] = c;
                    tools(key(row));
                }
            }
        }
        combinations.clear();
    }

    /** The rules that are counted. */
    public List<Rule> rules() {
        return tools(-1).judge.rules();
    }

    /** Makes, closes and judges some rows. */
    public VariantBlock rows(long first, int count) {
        double[][] values = new double[axes.size()][count];
        long[] keys = new long[count];
        double[] row = new double[axes.size()];
        for (int r = 0; r < count; r++) {
            reader.row(first + r, row);
            keys[r] = key(row);
            for (int i = 0; i < row.length; i++) {
                values[i][r] = row[i];
            }
        }
        VariantBlock block = new VariantBlock(first, count, values, new double[count], new double[count], new double[count], new int[count]);
        int[] lanes = new int[Columns.SIZE];
        boolean[] done = new boolean[count];
        for (int start = 0; start < count; start++) {
            if (done[start]) {
                continue;
            }
            int n = 0;
            for (int r = start; r < count && n < Columns.SIZE; r++) {
                if (!done[r] && keys[r] == keys[start]) {
                    done[r] = true;
                    lanes[n++] = r;
                }
            }
            close(tools(keys[start]), block, lanes, n);
        }
        return block;
    }

    private void close(Tools t, VariantBlock block, int[] rows, int n) {
        for (int i = 0; i < t.own.length; i++) {
            double[] column = t.varied.get(i);
            for (int l = 0; l < n && column != null; l++) {
                double value = block.values()[i][rows[l]];
                column[l] = Double.isNaN(value) ? t.own[i] : value;
                block.values()[i][rows[l]] = column[l];
            }
        }
        t.closer.close(n);
        t.judge.judge(n);
        for (int l = 0; l < n; l++) {
            double closes = t.closer.closesAt()[l];
            block.closesAt()[rows[l]] = closes;
            block.turnsLeft()[rows[l]] = (t.wrapTop[l] - closes) / t.pitch[l];
            block.openAtTop()[rows[l]] = t.closer.openAtTop()[l];
            block.failed()[rows[l]] = t.judge.failed()[l];
        }
    }

    /** The combination of parts as one number; a part that a plan leaves out is the base's own. */
    private long key(double[] row) {
        long key = 0;
        for (int i = 0; i < row.length; i++) {
            if (axes.get(i) instanceof Axis.Parts parts) {
                key = key * (parts.size() + 1L) + (Double.isNaN(row[i]) ? 0 : (long) row[i] + 1);
            }
        }
        return key;
    }

    private Tools tools(long key) {
        return combinations.computeIfAbsent(Math.max(0, key), k -> new Tools(base(k)));
    }

    private Blank base(long key) {
        Blank blank = study.base();
        long rest = key;
        for (int i = axes.size() - 1; i >= 0; i--) {
            if (axes.get(i) instanceof Axis.Parts parts) {
                int choice = (int) (rest % (parts.size() + 1L)) - 1;
                rest /= parts.size() + 1L;
                blank = choice < 0 ? blank : parts.choices().get(choice).into().apply(blank);
            }
        }
        return blank;
    }
}

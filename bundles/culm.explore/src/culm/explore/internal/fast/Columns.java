package culm.explore.internal.fast;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Input;
import culm.blank.Widened;
import culm.geometry.profile.Parameter;

/** The numbers of one block of blanks, a column for each input path; a column that nobody varies holds the base's value in every lane. */
public final class Columns {
    /** Blanks in one block. */
    public static final int SIZE = 256;
    private final Blank base;
    private final Map<String, Range> varied;
    private final Map<String, double[]> columns = new LinkedHashMap<>();

    /** @param varied the inputs whose columns somebody fills before each block, with what they can hold */
    public Columns(Blank base, Map<String, Range> varied) {
        this.base = base;
        this.varied = new LinkedHashMap<>(varied);
    }

    /** Whether an input whose path begins so is varied. */
    public boolean varies(String prefix) {
        return varied.keySet().stream().anyMatch(p -> p.startsWith(prefix));
    }

    /** The blank that varies. */
    public Blank base() {
        return base;
    }

    /** The column of an input; NaN where the base leaves it out. @throws IllegalArgumentException when the path is not known */
    public double[] of(String path) {
        return columns.computeIfAbsent(path, p -> {
            double[] column = new double[SIZE];
            Arrays.fill(column, Widened.PATH.equals(p) ? Widened.by(base) : base.value(p).orElse(Double.NaN));
            return column;
        });
    }

    /** What an input can hold: its range where it is varied, else the base's value. */
    Range range(String path) {
        double value = of(path)[0];
        return varied.getOrDefault(path, new Range(value, value));
    }

    /** The descriptions of those varied inputs that can leave their range; the one length added to all widths has none. */
    Map<String, Parameter> escaping() {
        Map<String, Parameter> all = new LinkedHashMap<>();
        for (Input input : base.inputs()) {
            Range range = varied.get(input.path());
            if (range != null && !(range.low() >= input.parameter().min() && range.high() <= input.parameter().max())) {
                all.put(input.path(), input.parameter());
            }
        }
        return all;
    }

    /** Columns for the same base and inputs, to be filled from one lane of these. */
    Columns empty() {
        return new Columns(base, varied);
    }

    /** Takes one lane of other columns into all lanes. */
    void fill(Columns other, int lane) {
        for (String path : varied.keySet()) {
            Arrays.fill(of(path), other.of(path)[lane]);
        }
    }

    /** The blank that stands in one lane. */
    public Blank blank(int lane) {
        BlankBuilder edit = base.edit();
        double wider = Widened.by(base);
        for (String path : varied.keySet()) {
            if (Widened.PATH.equals(path)) {
                wider = of(path)[lane];
            } else {
                edit.set(path, of(path)[lane]);
            }
        }
        return Widened.of(edit.build(), wider);
    }
}

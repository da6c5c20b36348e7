package culm.bench.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.IntStream;

import culm.blank.Blank;
import culm.explore.Axis;
import culm.explore.VariantTable;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.ParallelAxes;

/** Variants as lines through parallel axes: what varies, and turns left at the right. Those that work lie on top. */
public final class VariantPlot {
    /** Most lines; of more rows, some are drawn. */
    public static final int MOST_LINES = 600;
    private static final int MOST_TRIED = 40;
    private static final int MOST_DIGITS = 3;
    private static final double ROUND = 1e-5;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private VariantPlot() {
    }

    /**
     * Draws rows of a table.
     * @param base   the blank that was varied
     * @param rows   numbers of the rows
     * @param chosen the row that is drawn strong; -1 for none
     * @param unit   in what lengths are written
     */
    public static ChartDrawing parallel(Blank base, VariantTable table, int[] rows, int chosen, double width, double height, TextMeasure measure, Lengths unit) {
        List<Axis> axes = table.head().axes();
        List<ParallelAxes.Upright> upright = new ArrayList<>();
        int[] drawn = some(rows);
        boolean[] lengths = new boolean[axes.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = PlotWords.lengths(base, axes.get(i));
            upright.add(new ParallelAxes.Upright(PlotWords.label(base, axes.get(i), unit).text(),
                    axes.get(i) instanceof Axis.Parts parts ? parts.choices().stream().map(Axis.Choice::name).toList() : List.of(), tried(table, drawn, i, lengths[i] ? unit : null)));
        }
        upright.add(new ParallelAxes.Upright("turns left", List.of()));
        List<ParallelAxes.Line> lines = new ArrayList<>();
        for (boolean works : new boolean[] {false, true}) {
            for (int row : drawn) {
                if (table.works(row) == works && row != chosen) {
                    lines.add(line(table, row, lengths, unit, works ? Role.FITS : Role.RULE, works ? 1 : 0.7));
                }
            }
        }
        if (chosen >= 0) {
            lines.add(line(table, chosen, lengths, unit, Role.THREAD, 3));
        }
        String caption = (drawn.length == rows.length ? "Every variant shown" : drawn.length + " of " + rows.length + " variants shown") + "; green passes every rule" + (chosen >= 0 ? ", the thick line is the chosen one" : "");
        return new ParallelAxes(caption, upright, lines).draw(width, height, measure);
    }

    /** Some rows, spread by the golden section, so that no regularity of a grid or of a sample favours some. */
    private static int[] some(int[] rows) {
        if (rows.length <= MOST_LINES) {
            return rows;
        }
        return IntStream.range(0, MOST_LINES).map(i -> (int) ((i * GOLDEN) % 1 * rows.length)).distinct().map(i -> rows[i]).toArray();
    }

    /** The few values that an axis has; none where it has many, or such as no bench would set. @param unit of lengths; null for what is none */
    private static List<ParallelAxes.Tried> tried(VariantTable table, int[] rows, int axis, Lengths unit) {
        TreeSet<Double> values = new TreeSet<>();
        for (int i = 0; i < rows.length && values.size() <= MOST_TRIED; i++) {
            values.add(table.value(rows[i], axis));
        }
        OptionalInt digits = IntStream.rangeClosed(0, MOST_DIGITS).filter(d -> values.stream().allMatch(v -> Math.abs(v * Math.pow(10, d) - Math.rint(v * Math.pow(10, d))) < ROUND)).findFirst();
        if (values.size() > MOST_TRIED || digits.isEmpty()) {
            return List.of();
        }
        return values.stream().map(v -> unit == null ? new ParallelAxes.Tried(v, Numbers.fixed(v, digits.getAsInt()))
                : new ParallelAxes.Tried(unit.of(v), unit.fixed(v, digits.getAsInt()))).toList();
    }

    private static ParallelAxes.Line line(VariantTable table, int row, boolean[] lengths, Lengths unit, Role role, double width) {
        double[] values = new double[lengths.length + 1];
        for (int i = 0; i < lengths.length; i++) {
            values[i] = lengths[i] ? unit.of(table.value(row, i)) : table.value(row, i);
        }
        values[lengths.length] = table.result(row, VariantTable.Result.TURNS_LEFT);
        return new ParallelAxes.Line(values, role, width);
    }
}

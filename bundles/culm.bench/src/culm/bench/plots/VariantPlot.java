package culm.bench.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import culm.explore.Axis;
import culm.explore.VariantTable;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.ParallelAxes;

/** Variants as lines through parallel axes: what varies, and turns left at the right. Those that work lie on top. */
public final class VariantPlot {
    /** Most lines; of more rows, evenly taken ones are drawn. */
    public static final int MOST_LINES = 600;

    private VariantPlot() {
    }

    /**
     * Draws rows of a table.
     * @param rows   numbers of the rows
     * @param chosen the row that is drawn strong; -1 for none
     */
    public static ChartDrawing parallel(VariantTable table, int[] rows, int chosen, double width, double height, TextMeasure measure) {
        List<Axis> axes = table.head().axes();
        List<ParallelAxes.Upright> upright = new ArrayList<>();
        axes.forEach(a -> upright.add(new ParallelAxes.Upright(a.label(), a instanceof Axis.Parts parts ? parts.choices().stream().map(Axis.Choice::name).toList() : List.of())));
        upright.add(new ParallelAxes.Upright("turns left", List.of()));
        int step = Math.max(1, (rows.length + MOST_LINES - 1) / MOST_LINES);
        List<ParallelAxes.Line> lines = new ArrayList<>();
        for (boolean works : new boolean[] {false, true}) {
            for (int i = 0; i < rows.length; i += step) {
                if (table.works(rows[i]) == works && rows[i] != chosen) {
                    lines.add(line(table, rows[i], axes.size(), works ? Role.FITS : Role.RULE, works ? 1 : 0.7));
                }
            }
        }
        if (chosen >= 0) {
            lines.add(line(table, chosen, axes.size(), Role.THREAD, 3));
        }
        String caption = step == 1 ? "Every variant shown; green works" : "One variant of " + step + " shown; green works";
        return new ParallelAxes(caption, upright, lines).draw(width, height, measure);
    }

    private static ParallelAxes.Line line(VariantTable table, int row, int axes, Role role, double width) {
        double[] values = IntStream.range(0, axes + 1).mapToDouble(i -> i < axes ? table.value(row, i) : table.result(row, VariantTable.Result.TURNS_LEFT)).toArray();
        return new ParallelAxes.Line(values, role, width);
    }
}

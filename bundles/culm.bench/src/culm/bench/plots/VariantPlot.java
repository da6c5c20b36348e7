package culm.bench.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import culm.blank.Blank;
import culm.explore.Axis;
import culm.explore.VariantTable;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.AxisLabel;
import culm.figures.chart.ChartDrawing;
import culm.figures.chart.ParallelAxes;

/** Variants as lines through parallel axes: what varies, and turns left at the right. Those that work lie on top. */
public final class VariantPlot {
    /** Most lines; of more rows, some are drawn. */
    public static final int MOST_LINES = 600;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private VariantPlot() {
    }

    /**
     * Draws rows of a table.
     * @param base   the blank that was varied
     * @param rows   numbers of the rows
     * @param chosen the row that is drawn strong; -1 for none
     */
    public static ChartDrawing parallel(Blank base, VariantTable table, int[] rows, int chosen, double width, double height, TextMeasure measure) {
        List<Axis> axes = table.head().axes();
        List<ParallelAxes.Upright> upright = new ArrayList<>();
        axes.forEach(a -> upright.add(new ParallelAxes.Upright(new AxisLabel(a.label(), PlotWords.unit(base, a)).text(), a instanceof Axis.Parts parts ? parts.choices().stream().map(Axis.Choice::name).toList() : List.of())));
        upright.add(new ParallelAxes.Upright("turns left", List.of()));
        int[] drawn = some(rows);
        List<ParallelAxes.Line> lines = new ArrayList<>();
        for (boolean works : new boolean[] {false, true}) {
            for (int row : drawn) {
                if (table.works(row) == works && row != chosen) {
                    lines.add(line(table, row, axes.size(), works ? Role.FITS : Role.RULE, works ? 1 : 0.7));
                }
            }
        }
        if (chosen >= 0) {
            lines.add(line(table, chosen, axes.size(), Role.THREAD, 3));
        }
        String caption = (drawn.length == rows.length ? "Every variant shown" : drawn.length + " of " + rows.length + " variants shown") + "; green works";
        return new ParallelAxes(caption, upright, lines).draw(width, height, measure);
    }

    /** Some rows, spread by the golden section, so that no regularity of a grid or of a sample favours some. */
    private static int[] some(int[] rows) {
        if (rows.length <= MOST_LINES) {
            return rows;
        }
        return IntStream.range(0, MOST_LINES).map(i -> (int) ((i * GOLDEN) % 1 * rows.length)).distinct().map(i -> rows[i]).toArray();
    }

    private static ParallelAxes.Line line(VariantTable table, int row, int axes, Role role, double width) {
        double[] values = IntStream.range(0, axes + 1).mapToDouble(i -> i < axes ? table.value(row, i) : table.result(row, VariantTable.Result.TURNS_LEFT)).toArray();
        return new ParallelAxes.Line(values, role, width);
    }
}

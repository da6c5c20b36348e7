package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;

import culm.bench.plots.VariantPlot;
import culm.explore.Axis;
import culm.explore.VariantTable.Result;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.TextMeasure;
import culm.workbench.internal.graphs.Figure;

/**
 * Variants as lines.
 *
 * @param found the variants
 * @param rows those that are drawn
 * @param chosen the one that is drawn strong; -1 for none
 */
record ParallelContent(VariantsFound found, int[] rows, int chosen) implements ChartCanvas.Content {
    @Override
    public Drawing draw(double width, double height, TextMeasure measure, Lengths unit) {
        return VariantPlot.parallel(found.base(), found.table(), rows, chosen, width, height, measure, unit).drawing();
    }

    @Override
    public Figure.Table table() {
        List<String> heads = new ArrayList<>(found.axes().stream().map(Axis::label).toList());
        heads.addAll(List.of("turns left", "sides close at mm", "open at the staple's top mm"));
        List<double[]> all = new ArrayList<>();
        int axes = found.axes().size();
        for (int row : rows) {
            double[] numbers = new double[axes + 3];
            for (int i = 0; i < axes; i++) {
                numbers[i] = found.table().value(row, i);
            }
            numbers[axes] = found.table().result(row, Result.TURNS_LEFT);
            numbers[axes + 1] = found.table().result(row, Result.CLOSES_AT);
            numbers[axes + 2] = found.table().result(row, Result.OPEN_AT_TOP);
            all.add(numbers);
        }
        return new Figure.Table(heads, all);
    }
}

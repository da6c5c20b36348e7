package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import culm.bench.plots.PlotWords;
import culm.explore.Axis;
import culm.figures.Size;
import culm.figures.TextMeasure;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/** The columns of a table of variants: their heads, widths and texts. */
final class RowsColumns {
    private static final int LEAST = 66;
    private static final int MOST_PART = 170;
    private static final int GAP = 14;
    private final VariantsFound found;
    private final LengthUnit unit;
    private final List<String> heads = new ArrayList<>();
    private final List<Integer> widths = new ArrayList<>();
    private final int axes;

    RowsColumns(VariantsFound found, LengthUnit unit, TextMeasure measure) {
        this.found = found;
        this.unit = unit;
        this.axes = found.axes().size();
        for (Axis axis : found.axes()) {
            heads.add(axis.label());
            double widest = measure.width(axis.label(), Size.SMALL, false) + 12;
            if (axis instanceof Axis.Parts parts) {
                widest = Math.max(widest, Math.min(MOST_PART, parts.choices().stream().mapToDouble(c -> measure.width(c.name(), Size.BODY, false)).max().orElse(0)));
            }
            widths.add((int) Math.max(LEAST, Math.min(MOST_PART, widest)) + GAP);
        }
        for (String head : List.of("turns left", "differs by", "sides close at", "open at the top")) {
            heads.add(head);
            widths.add((int) Math.max(LEAST, measure.width(head, Size.SMALL, false) + 12) + GAP);
        }
        heads.add("");
        widths.add(0);
    }

    int count() {
        return heads.size();
    }

    /** {@return whether texts stand at the left} */
    boolean leftwards(int column) {
        return column == count() - 1 || column < axes && found.axes().get(column) instanceof Axis.Parts;
    }

    String head(int column) {
        return column == count() - 1 ? "what is wrong" : heads.get(column);
    }

    /** Width in points; the last takes what is left. */
    int width(int column) {
        return widths.get(column);
    }

    /** By what a click on a head sorts; -1 for nothing. */
    int sortsBy(int column) {
        return column < axes ? column : column == axes || column == axes + 1 ? axes : column == axes + 2 ? axes + 1 : column == axes + 3 ? axes + 2 : -1;
    }

    /** The head under which a sort is shown. */
    int shows(int sortedBy) {
        return sortedBy <= axes ? sortedBy : sortedBy + 1;
    }

    /** A cell. @param pinned the line that others are compared with */
    String text(VariantsFound.Line line, VariantsFound.Line pinned, int column) {
        if (column < axes) {
            return value(found.axes().get(column), line.values()[column]);
        }
        return switch (column - axes) {
            case 0 -> turns(line.turns());
            case 1 -> line == pinned ? "" : difference(line.turns() - pinned.turns());
            case 2 -> Double.isNaN(line.closes()) ? "never" : new NumberForm(culm.geometry.profile.Quantity.LENGTH, unit, 1).text(round(line.closes(), 1));
            case 3 -> Double.isNaN(line.open()) ? "–" : new NumberForm(culm.geometry.profile.Quantity.LENGTH, unit, 2).text(round(line.open(), 2));
            default -> line.failed().isEmpty() ? "works" : PlotWords.rules(line.failed());
        };
    }

    private static double round(double value, int digits) {
        double ten = Math.pow(10, digits);
        return Math.rint(value * ten) / ten + 0.0;
    }

    private static String turns(double turns) {
        return Double.isNaN(turns) ? "never" : String.format(Locale.ROOT, "%.1f", turns + 0.0).replace('-', '−').replace("−0.0", "0.0");
    }

    private static String difference(double turns) {
        return Double.isNaN(turns) ? "" : String.format(Locale.ROOT, "%+.1f", turns).replace('-', '−').replaceAll("[+−]0\\.0", "0.0");
    }

    private String value(Axis axis, double value) {
        if (axis instanceof Axis.Parts) {
            return Double.isNaN(value) ? "as it is" : axis.text((int) value);
        }
        return found.base().inputs().stream().filter(i -> i.path().equals(axis.id())).findFirst().map(i -> NumberForm.of(i.parameter().quantity(), unit, i.tolerance().plusMinus()))
                .orElse(new NumberForm(culm.geometry.profile.Quantity.LENGTH, unit, 2)).text(round(value, 3));
    }
}

package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import culm.blank.rules.Say;
import culm.explore.Axis;
import culm.figures.Size;
import culm.figures.TextMeasure;
import culm.geometry.profile.Quantity;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/** The columns of a table of variants: their heads, widths and texts. */
final class RowsColumns {
    private static final int LEAST = 52;
    private static final int MOST_HEAD = 110;
    private static final int MOST_PART = 130;
    private static final int WRONG = 190;
    static final int GAP = 9;
    private static final int SAMPLED = 400;
    private final VariantsFound found;
    private final LengthUnit unit;
    private final List<String> heads = new ArrayList<>();
    private final List<Integer> widths = new ArrayList<>();
    private final List<Integer> wanted = new ArrayList<>();
    private final List<Integer> more = new ArrayList<>();
    private final int axes;
    private boolean shown = true;

    RowsColumns(VariantsFound found, LengthUnit unit, TextMeasure measure) {
        this.found = found;
        this.unit = unit;
        this.axes = found.axes().size();
        for (int i = 0; i < axes; i++) {
            Axis axis = found.axes().get(i);
            boolean parts = axis instanceof Axis.Parts;
            String sign = parts ? "" : found.form(i, unit).sign();
            head(sign.isEmpty() ? axis.label() : axis.label() + ", " + sign, Math.min(parts ? MOST_PART : MOST_HEAD, widest(i, measure)), measure);
        }
        head("turns left", 0, measure);
        head("differs by", 0, measure);
        head("closes at, " + unit.sign(), 0, measure);
        head("open at the top, " + unit.sign(), 0, measure);
        heads.add("");
        widths.add(0);
        wanted.add(0);
        heads.forEach(h -> more.add(0));
    }

    private void head(String words, double least, TextMeasure measure) {
        heads.add(words);
        double whole = measure.width(words, Size.SMALL, false) + 14;
        widths.add((int) Math.max(Math.max(LEAST, least), Math.min(MOST_HEAD, whole)) + GAP);
        wanted.add((int) Math.ceil(whole) + GAP);
    }

    private double widest(int axis, TextMeasure measure) {
        double widest = measure.width(value(axis, found.own().values()[axis]), Size.BODY, false);
        int step = Math.max(1, found.table().rows() / SAMPLED);
        for (int row = 0; row < found.table().rows(); row += step) {
            widest = Math.max(widest, measure.width(value(axis, found.table().value(row, axis)), Size.BODY, false));
        }
        return widest + 4;
    }

    /** Leaves out what there is no room for: first how far open at the top, which the rules judge anyway. Where there is room, heads are read in full. */
    void fit(int room) {
        int spare = room - widths.stream().mapToInt(Integer::intValue).sum() - WRONG;
        shown = spare >= 0;
        more.clear();
        for (int i = 0; i < count(); i++) {
            int cut = wanted.get(i) - widths.get(i);
            more.add(cut > 0 && cut <= spare ? cut : 0);
            spare -= more.get(i);
        }
    }

    int count() {
        return heads.size();
    }

    /** {@return whether texts stand at the left} */
    boolean leftwards(int column) {
        return column == count() - 1 || column < axes && found.axes().get(column) instanceof Axis.Parts;
    }

    String head(int column) {
        return column == count() - 1 ? "verdict" : heads.get(column);
    }

    /** Width in points; the last takes what is left. */
    int width(int column) {
        return column == axes + 3 && !shown ? 0 : widths.get(column) + more.get(column);
    }

    /** By what a click on a head sorts; -1 for nothing. */
    int sortsBy(int column) {
        return column < axes ? column : column == axes || column == axes + 1 ? axes : column == axes + 2 ? axes + 1 : column == axes + 3 ? axes + 2 : -1;
    }

    /** The head under which a sort is shown. */
    int shows(int sortedBy) {
        return sortedBy <= axes ? sortedBy : sortedBy + 1;
    }

    /** A cell. @param pinned the line that others are compared with; @param verdict what stands in the last column */
    String text(VariantsFound.Line line, VariantsFound.Line pinned, int column, String verdict) {
        if (column < axes) {
            return value(column, line.values()[column]);
        }
        return switch (column - axes) {
            case 0 -> turns(line.turns());
            case 1 -> line == pinned ? "" : difference(Say.tenths(line.turns()) - Say.tenths(pinned.turns()));
            case 2 -> Double.isNaN(line.closes()) ? "never" : found.form(axes + 1, unit).bare(round(line.closes(), 1));
            case 3 -> Double.isNaN(line.open()) ? "–" : found.form(axes + 2, unit).bare(round(line.open(), 2));
            default -> verdict;
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

    private String value(int column, double value) {
        Axis axis = found.axes().get(column);
        if (axis instanceof Axis.Parts) {
            return Double.isNaN(value) ? "as it is" : axis.text((int) value);
        }
        NumberForm form = found.form(column, unit);
        return form.bare(round(value, form.quantity() == Quantity.LENGTH ? 2 : 4));
    }
}

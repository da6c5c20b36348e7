package culm.workbench.internal.explore;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import culm.bench.plots.PlotWords;
import culm.blank.Blank;
import culm.explore.Axis;
import culm.explore.Study;
import culm.explore.VariantBlock;
import culm.explore.VariantHead;
import culm.explore.VariantPlan;
import culm.explore.VariantSink;
import culm.explore.VariantTable;
import culm.explore.VariantTable.Result;
import culm.explore.Variants;
import culm.explore.Varied;
import culm.explore.Watcher;
import culm.figures.Lengths;
import culm.geometry.profile.Quantity;
import culm.model.studio.Link;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/**
 * Variants of a design, and the design itself beside them.
 *
 * @param base the design's blank
 * @param judging how one of them is judged as a design
 * @param table the variants
 * @param own the design itself
 * @param links the parts that axes of parts choose from, by kind
 * @param planned how many there were to be
 * @param works how many fail no rule
 */
public record VariantsFound(Blank base, Judging judging, VariantTable table, Line own, Map<String, List<Link>> links, long planned, int works) {
    /**
     * One variant.
     *
     * @param values a value for each axis; for parts the choice's number, NaN for the design's own
     * @param closes where the sides close; NaN where they do not
     * @param turns turns left
     * @param open how far open at the staple's top
     * @param failed the rules that fail
     */
    public record Line(double[] values, double closes, double turns, double open, List<String> failed) {
        double result(Result which) {
            return switch (which) {
                case CLOSES_AT -> closes;
                case TURNS_LEFT -> turns;
                case OPEN_AT_TOP -> open;
            };
        }
    }

    static VariantsFound run(Study study, Judging judging, List<Axis> axes, VariantPlan plan, Map<String, List<Link>> links, Watcher<VariantsFound> watcher) throws IOException {
        Line own = own(study, axes);
        VariantTable table = new VariantTable();
        Variants.run(study, axes, plan, RunJob.threads(), table, new Counting(watcher));
        int works = (int) IntStream.range(0, table.rows()).filter(table::works).count();
        return new VariantsFound(study.base(), judging, table, own, links, table.head().rows(), works);
    }

    /** The design itself, judged in the same way. */
    private static Line own(Study study, List<Axis> axes) throws IOException {
        double[] values = axes.stream().mapToDouble(a -> a instanceof Axis.Numbers ? Varied.value(study.base(), a.id()) : Double.NaN).toArray();
        Line[] line = new Line[1];
        VariantSink sink = new VariantSink() {
            private VariantHead head;

            @Override
            public void begin(VariantHead planned) {
                head = planned;
            }

            @Override
            public void rows(VariantBlock block) {
                line[0] = new Line(values, block.closesAt()[0], block.turnsLeft()[0], block.openAtTop()[0], block.failed(0, head.rules()));
            }
        };
        double tie = study.base().number(culm.blank.Inputs.TIE_LENGTH);
        Variants.run(study, List.of(new Axis.Numbers(culm.blank.Inputs.TIE_LENGTH, "", new double[] {tie})), new VariantPlan.Grid(), 1, sink, Watcher.none());
        return line[0];
    }

    /** What differs. */
    public List<Axis> axes() {
        return table.head().axes();
    }

    /** How the numbers of a column are shown and typed: those of the axes, then turns left, sides close at, open at the top; parts are counted. */
    NumberForm form(int column, LengthUnit unit) {
        int result = column - axes().size();
        if (result > 0) {
            return new NumberForm(Quantity.LENGTH, unit, result);
        }
        if (result == 0 || axes().get(column) instanceof Axis.Parts) {
            return new NumberForm(Quantity.COUNT, unit, 1);
        }
        String path = axes().get(column).id();
        return base.inputs().stream().filter(i -> i.path().equals(path)).findFirst().map(i -> NumberForm.of(i.parameter().quantity(), unit, i.tolerance().plusMinus()))
                .orElse(new NumberForm(Quantity.LENGTH, unit, 2));
    }

    /** A variant by its number. */
    public Line line(int row) {
        double[] values = new double[axes().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = table.value(row, i);
        }
        return new Line(values, table.result(row, Result.CLOSES_AT), table.result(row, Result.TURNS_LEFT), table.result(row, Result.OPEN_AT_TOP), table.failed(row));
    }

    /** The verdict that a variant would have as a design. */
    Judging.Judged judged(Line line) {
        double[] values = line.values();
        Blank with = withParts(values);
        for (int i = 0; i < values.length; i++) {
            if (axes().get(i) instanceof Axis.Numbers axis && !Double.isNaN(values[i])) {
                with = Varied.with(with, axis.id(), values[i]);
            }
        }
        return judging.of(with, line.failed());
    }

    /** The design with the parts of a variant. */
    private Blank withParts(double[] values) {
        Blank with = base;
        for (int i = 0; i < values.length; i++) {
            if (axes().get(i) instanceof Axis.Parts axis && !Double.isNaN(values[i])) {
                with = axis.choices().get((int) values[i]).into().apply(with);
            }
        }
        return with;
    }

    /** What a row is, to be made a design. */
    Picked picked(double[] values) {
        Map<String, Link> parts = new TreeMap<>();
        Map<String, Double> numbers = new TreeMap<>();
        List<String> words = new ArrayList<>();
        Blank with = withParts(values);
        for (int i = 0; i < values.length; i++) {
            if (axes().get(i) instanceof Axis.Parts axis && !Double.isNaN(values[i])) {
                parts.put(axis.id(), links.get(axis.id()).get((int) values[i]));
                words.add(axis.label() + " \"" + axis.text((int) values[i]) + "\"");
            }
        }
        for (int i = 0; i < values.length; i++) {
            Axis axis = axes().get(i);
            if (axis instanceof Axis.Numbers && !Double.isNaN(values[i]) && values[i] != Varied.value(with, axis.id())) {
                numbers.put(axis.id(), values[i]);
                words.add(PlotWords.value(base, axis, values[i], Lengths.MM));
            }
        }
        return new Picked(parts, numbers, words.isEmpty() ? "as it is" : String.join(", ", words), base);
    }
}

package culm.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Input;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Verdict;
import culm.geometry.profile.Quantity;
import culm.geometry.words.Told;

/**
 * Two designs side by side: where their inputs differ, links followed, and every result of both.
 *
 * @param left    the first
 * @param right   the second
 * @param inputs  inputs that differ, in the order of the bench
 * @param results the results, whether they differ or not
 */
public record DesignComparison(Judged left, Judged right, List<InputRow> inputs, List<ResultRow> results) {
    /** One design with what was computed of it. */
    public record Judged(String name, Blank blank, Assessment assessment, List<Finding> findings, Verdict verdict) {
    }

    /**
     * An input that differs; its words hold their lengths as {@link Told} keeps them.
     *
     * @param path      the input
     * @param toldLabel in words
     * @param toldLeft  as it is in the first; empty when it has none
     * @param toldRight as it is in the second; empty when it has none
     */
    public record InputRow(String path, String toldLabel, String toldLeft, String toldRight) {
        /** In words, lengths in mm. */
        public String label() {
            return Told.mm(toldLabel);
        }

        /** As it is in the first, lengths in mm; empty when it has none. */
        public String left() {
            return Told.mm(toldLeft);
        }

        /** As it is in the second, lengths in mm; empty when it has none. */
        public String right() {
            return Told.mm(toldRight);
        }
    }

    /**
     * A result of both.
     *
     * @param name     in machine-readable output
     * @param label    in words
     * @param quantity what it is
     * @param left     of the first; empty when it cannot be computed
     * @param right    of the second; empty when it cannot be computed
     */
    public record ResultRow(String name, String label, Quantity quantity, OptionalDouble left, OptionalDouble right) {
        /** Right less left, when both are there. */
        public OptionalDouble change() {
            return left.isPresent() && right.isPresent() ? OptionalDouble.of(right.getAsDouble() - left.getAsDouble()) : OptionalDouble.empty();
        }
    }

    /** Compares two designs as they were read. */
    public static DesignComparison of(DesignedBlank left, DesignedBlank right, Rules rules) {
        Judged a = judged(left, rules);
        Judged b = judged(right, rules);
        return new DesignComparison(a, b, inputs(a.blank, b.blank), results(a.assessment, b.assessment));
    }

    private static Judged judged(DesignedBlank designed, Rules rules) {
        Assessment assessment = designed.assess();
        List<Finding> findings = designed.judge(assessment, rules);
        return new Judged(designed.name(), designed.blank(), assessment, findings, Verdict.of(assessment, findings));
    }

    private static List<InputRow> inputs(Blank left, Blank right) {
        List<InputRow> rows = new ArrayList<>();
        rows.addAll(words("staple", "kind of staple", left.staple().type().name(), right.staple().type().name()));
        rows.addAll(words("gouge", "kind of gouge", left.gouge().type().name(), right.gouge().type().name()));
        rows.addAll(words("shape", "kind of shape", left.shape().type().name(), right.shape().type().name()));
        rows.addAll(words("shape.edges", "edges", left.cut().edges().label(), right.cut().edges().label()));
        Map<String, Input> ofLeft = byPath(left);
        Map<String, Input> ofRight = byPath(right);
        Map<String, Input> all = new LinkedHashMap<>(ofLeft);
        ofRight.forEach(all::putIfAbsent);
        all.forEach((path, input) -> {
            Input a = ofLeft.get(path);
            Input b = ofRight.get(path);
            if (a == null || b == null || a.value() != b.value() || !a.tolerance().equals(b.tolerance())) {
                rows.add(new InputRow(path, InputWords.of(input, a == null ? right : left), InputWords.value(a), InputWords.value(b)));
            }
        });
        return rows;
    }

    private static List<InputRow> words(String path, String label, String left, String right) {
        return Objects.equals(left, right) ? List.of() : List.of(new InputRow(path, label, left, right));
    }

    private static Map<String, Input> byPath(Blank blank) {
        Map<String, Input> all = new LinkedHashMap<>();
        blank.inputs().forEach(input -> all.put(input.path(), input));
        return all;
    }

    private static List<ResultRow> results(Assessment a, Assessment b) {
        List<ResultRow> rows = new ArrayList<>();
        rows.add(new ResultRow("sidesCloseAt", "sides close at", Quantity.LENGTH, a.sidesCloseAt(), b.sidesCloseAt()));
        rows.add(new ResultRow("turnsLeft", "turns left", Quantity.COUNT, a.turnsLeft(), b.turnsLeft()));
        rows.add(new ResultRow("openAtStapleTop", "sides open at the staple's top", Quantity.LENGTH, a.openAtStapleTop(), b.openAtStapleTop()));
        rows.add(new ResultRow("openAtWrapTop", "sides open at the top of the wrap", Quantity.LENGTH, a.openAtWrapTop(), b.openAtWrapTop()));
        rows.add(new ResultRow("tieLengthPerTurn", "tie length for one turn", Quantity.LENGTH, a.tieLengthPerTurn(), b.tieLengthPerTurn()));
        rows.add(new ResultRow("caneOnStaple", "cane on the staple", Quantity.LENGTH, a.caneOnStaple(), b.caneOnStaple()));
        rows.add(new ResultRow("caneAboveStaple", "cane above the staple", Quantity.LENGTH, OptionalDouble.of(a.caneAboveStaple()), OptionalDouble.of(b.caneAboveStaple())));
        rows.add(new ResultRow("boreVolume", "bore volume", Quantity.COUNT, a.boreVolume(), b.boreVolume()));
        return rows;
    }
}

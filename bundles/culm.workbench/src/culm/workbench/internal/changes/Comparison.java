package culm.workbench.internal.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Input;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Say;
import culm.blank.rules.Severity;
import culm.blank.rules.Verdict;
import culm.figures.Numbers;
import culm.figures.reed.Reed;
import culm.geometry.profile.Quantity;
import culm.workbench.internal.graphs.OverlayCanvas.Two;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;

/**
 * A blank beside others.
 *
 * @param baseName what the first is
 * @param sentence what the difference is, in words
 * @param verdict how what was tried stands, without what stands against it; its sentence is empty when nothing is tried
 * @param against what errors and warnings say of what was tried, worst first
 * @param lines number by number, results first, then the inputs that differ
 * @param tried whether there is a third column
 * @param two the first and the last for drawing; empty when they are the same
 */
record Comparison(String baseName, String sentence, Verdict verdict, List<String> against, List<Line> lines, boolean tried, Optional<Two> two) {
    static final String NOW = "now";
    static final String TRIED = "if";
    static final Comparison NONE = new Comparison("", "", new Verdict(Verdict.Sign.MAY_FIT, ""), List.of(), List.of(), false, Optional.empty());

    /** One number of each. */
    record Line(String words, String base, String now, String tried, boolean input) {
        boolean differs() {
            return !base.equals(now) || !tried.isEmpty() && !now.equals(tried);
        }
    }

    /** @param judge what the rules say of each, worst first */
    static Comparison of(String baseName, Assessment base, Assessment now, Optional<Assessment> tried, Function<Assessment, List<Finding>> judge, Limits limits, LengthUnit unit) {
        return new Maker(base, now, tried, judge, limits, unit).make(baseName);
    }

    private static final class Maker {
        private final Assessment base;
        private final Assessment now;
        private final Optional<Assessment> tried;
        private final Function<Assessment, List<Finding>> judge;
        private final Limits limits;
        private final LengthUnit unit;
        private final List<Line> lines = new ArrayList<>();

        Maker(Assessment base, Assessment now, Optional<Assessment> tried, Function<Assessment, List<Finding>> judge, Limits limits, LengthUnit unit) {
            this.base = base;
            this.now = now;
            this.tried = tried;
            this.judge = judge;
            this.limits = limits;
            this.unit = unit;
        }

        Comparison make(String baseName) {
            List<Finding> findings = tried.map(judge).orElse(List.of());
            Optional<Verdict> verdict = tried.map(t -> unit.told(Verdict.brief(t, findings)));
            lines.add(new Line("verdict", word(base), word(now), verdict.map(v -> v.sign().word()).orElse(""), false));
            result("turns left", Assessment::turnsLeft, new NumberForm(Quantity.COUNT, unit, 1));
            result("give or take, turns", a -> a.turnsBand().map(b -> OptionalDouble.of(b.half())).orElse(OptionalDouble.empty()), new NumberForm(Quantity.COUNT, unit, 1));
            result("sides close at", Assessment::sidesCloseAt, new NumberForm(Quantity.LENGTH, unit, 1));
            result("open at the staple's top", Assessment::openAtStapleTop, new NumberForm(Quantity.LENGTH, unit, 2));
            result("tie, for one turn", Assessment::tieLengthPerTurn, new NumberForm(Quantity.LENGTH, unit, 1));
            result("cane on the staple", Assessment::caneOnStaple, new NumberForm(Quantity.LENGTH, unit, 1));
            texts("thread", a -> a.thread().map(t -> unit.far(t.length())).orElse("none"));
            inputs();
            Assessment last = tried.orElse(now);
            Verdict told = verdict.map(v -> new Verdict(v.sign(), "as tried, it " + v.sign().word() + ": " + v.told())).orElse(NONE.verdict());
            List<String> against = unit.told(findings).stream().filter(f -> f.severity() == Severity.ERROR || f.severity() == Severity.WARNING).map(Finding::text).toList();
            return new Comparison(baseName, sentence(baseName, last), told, against, List.copyOf(lines), tried.isPresent(), two(baseName));
        }

        private Optional<Two> two(String baseName) {
            if (lines.stream().noneMatch(Line::differs)) {
                return Optional.empty();
            }
            Assessment last = tried.orElse(now);
            return Optional.of(new Two(Reed.of(base).ready(), baseName, Reed.of(last).ready(), tried.isPresent() ? TRIED : NOW, limits));
        }

        private String word(Assessment a) {
            return Verdict.of(a, judge.apply(a)).sign().word();
        }

        private void result(String words, Function<Assessment, OptionalDouble> number, NumberForm form) {
            texts(words, a -> text(number.apply(a), form));
        }

        private void texts(String words, Function<Assessment, String> text) {
            lines.add(new Line(words, text.apply(base), text.apply(now), tried.map(text).orElse(""), false));
        }

        private static String text(OptionalDouble value, NumberForm form) {
            return value.isEmpty() ? "none" : form.computed(value.getAsDouble());
        }

        private void inputs() {
            TreeSet<String> seen = new TreeSet<>();
            for (Blank blank : tried.map(t -> List.of(now.blank(), base.blank(), t.blank())).orElse(List.of(now.blank(), base.blank()))) {
                for (Input input : blank.inputs()) {
                    if (seen.add(input.path()) && !input.path().equals("fit.delta")) {
                        input(input);
                    }
                }
            }
        }

        private void input(Input input) {
            NumberForm form = NumberForm.of(input.parameter().quantity(), unit, input.tolerance().plusMinus());
            String cell = input.path().indexOf('[') >= 0 ? " (" + input.path().replaceAll(".*\\[(\\d+)\\].*", "row $1") + ")" : "";
            Line line = new Line(input.parameter().label() + cell, own(base.blank(), input.path(), form), own(now.blank(), input.path(), form),
                    tried.map(t -> own(t.blank(), input.path(), form)).orElse(""), true);
            if (line.differs()) {
                lines.add(line);
            }
        }

        private static String own(Blank blank, String path, NumberForm form) {
            Optional<Input> input = blank.inputs().stream().filter(i -> i.path().equals(path)).findFirst();
            return input.map(i -> form.text(i.value())).orElse("none");
        }

        private String sentence(String baseName, Assessment other) {
            if (base.turnsLeft().isEmpty() || other.turnsLeft().isEmpty()) {
                return other.turnsLeft().isEmpty() ? "The sides do not close any more." : "The sides close now.";
            }
            // Of what stands below: so that the sentence and the numbers add up.
            double turns = Say.tenths(Say.tenths(other.turnsLeft().getAsDouble()) - Say.tenths(base.turnsLeft().getAsDouble()));
            String height = Numbers.difference(unit.drawn().fixed(other.sidesCloseAt().orElse(0), 1), unit.drawn().fixed(base.sidesCloseAt().orElse(0), 1));
            String take = other.turnsBand().map(b -> ", give or take " + Say.tenth(b.half())).orElse("");
            if (Math.abs(turns) < 0.05) {
                return "As many turns left " + (baseName.startsWith("as ") ? "" : "as ") + baseName + take + ".";
            }
            return Say.tenth(Math.abs(turns)) + (turns < 0 ? " fewer" : " more") + " turns left than " + baseName + take + "; the sides close "
                    + (height.matches("[0.]+") ? "at the same height." : height.replace("\u2212", "") + " " + unit.sign() + (height.startsWith("\u2212") ? " lower." : " higher."));
        }
    }
}

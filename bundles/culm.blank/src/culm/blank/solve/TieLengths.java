package culm.blank.solve;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.TieForTurns;
import culm.blank.rules.Say;

/** Tie lengths for the turns wanted, and all that the rules allow. */
public final class TieLengths {
    private static final double STEP = 0.25;
    private static final double JUST_ABOVE = 1e-3;

    private TieLengths() {
    }

    /**
     * Solves for the tie length, everything else as it is; between the house's shortest and longest tie, else between all that the parts allow: from the
     * staple's top on, until the cane has left it.
     */
    public static Answer solve(Blank blank, Judge judge) {
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double shortest = judge.limits().get(Limits.TIE_SHORTEST);
        double longest = judge.limits().get(Limits.TIE_LONGEST);
        double folded = blank.number(Inputs.FOLDED_LENGTH);
        double from = Double.isNaN(shortest) ? Math.max(top, folded) + JUST_ABOVE : shortest;
        double to = Double.isNaN(longest) ? top + folded - JUST_ABOVE : longest;
        Bound low = Double.isNaN(shortest) ? new Bound(Bound.PARTS, "A shorter tie puts the fold below the staple's top or the cane below its bottom.")
                : new Bound(Bound.MY_LIMITS, "The house ties no shorter than " + Say.mm(shortest) + ".");
        Bound high = Double.isNaN(longest) ? new Bound(Bound.PARTS, "With a longer tie the cane does not reach the staple.")
                : new Bound(Bound.MY_LIMITS, "The house ties no longer than " + Say.mm(longest) + ".");
        double wanted = judge.limits().get(Limits.TURNS_WANTED);
        double today = blank.number(Inputs.TIE_LENGTH);
        List<Double> roots = TieForTurns.find(blank, wanted, from, to);
        List<Allowed> allowed = new Stretches(tie -> judge.against(blank.with(Inputs.TIE_LENGTH, tie))).between(from, to, STEP,
                roots.stream().mapToDouble(Double::doubleValue).toArray(), low, high);
        List<Double> exact = roots.stream().filter(r -> allowed.stream().anyMatch(a -> a.holds(r)))
                .sorted(Comparator.comparingDouble(r -> Math.abs(r - today))).toList();
        return new Answer(exact, allowed, exact.isEmpty() ? Optional.of(no(blank, judge, roots, from, to, wanted)) : Optional.empty());
    }

    private static Bound no(Blank blank, Judge judge, List<Double> roots, double from, double to, double wanted) {
        if (!roots.isEmpty()) {
            double tie = roots.get(0);
            Bound stands = judge.against(blank.with(Inputs.TIE_LENGTH, tie)).orElseThrow();
            return new Bound(stands.rule(), "A tie of " + Say.mm(tie) + " would leave " + Say.turns(wanted) + ", but: " + stands.text());
        }
        Assessment shortest = Assessor.outline(blank.with(Inputs.TIE_LENGTH, from));
        Assessment longest = Assessor.outline(blank.with(Inputs.TIE_LENGTH, to));
        Optional<Bound> stands = judge.against(shortest).or(() -> judge.against(longest));
        return new Bound(stands.map(Bound::rule).orElse(Bound.MY_LIMITS), String.format(Locale.ROOT,
                "No tie from %s to %s leaves %s: at %s %s, at %s %s.", Say.mm(from), Say.mm(to), Say.turns(wanted), Say.mm(from), say(shortest), Say.mm(to), say(longest)));
    }

    private static String say(Assessment a) {
        if (a.turnsLeft().isPresent()) {
            double turns = a.turnsLeft().getAsDouble();
            return turns < 0 ? "they close " + Say.turns(-turns) + " above the wrap" : Say.turns(turns) + " are left";
        }
        return a.openAtStapleTop().isPresent() ? "they stay open by " + Say.fine(a.openAtStapleTop().getAsDouble())
                : a.closing().problem().map(p -> "it cannot be told (" + p + ")").orElse("it cannot be told");
    }
}

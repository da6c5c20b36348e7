package culm.blank.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.geometry.staple.StapleType;

/**
 * One staple of a list, tried in a blank.
 *
 * @param candidate the staple
 * @param blank     the blank with it; the wrap stops as far below this staple's top as it did below the other's
 * @param turnsLeft turns left at the blank's own tie length, where the sides close
 * @param against   what stands against it at that tie; empty when nothing does
 * @param tie       the tie length nearest to the blank's that leaves the turns wanted with it, if one is allowed
 * @param no        why no tie length does
 */
public record StapleChoice(Candidate candidate, Blank blank, OptionalDouble turnsLeft, Optional<Bound> against, OptionalDouble tie, Optional<Bound> no) {
    /**
     * A staple to choose from.
     *
     * @param name    its name
     * @param profile its outside
     * @param numbers what else is known of it, by path: {@code staple.length} at least, wall, cork top; others stay as in the blank
     */
    public record Candidate(String name, Profile<StapleType> profile, Map<String, Double> numbers) {
        /** @throws IllegalArgumentException when a number is not one of a staple's */
        public Candidate {
            numbers = Map.copyOf(numbers);
            numbers.keySet().stream().filter(p -> !p.startsWith("staple.")).findFirst().ifPresent(p -> {
                throw new IllegalArgumentException(p + " is not a staple's");
            });
        }
    }

    /**
     * Tries every staple of a list. First come those that work at the blank's own tie, the turns left nearest to those wanted; then those that
     * work with another tie, the smallest change first; then those that do not, with their reason.
     */
    public static List<StapleChoice> rank(Blank blank, List<Candidate> candidates, Judge judge) {
        List<StapleChoice> all = new ArrayList<>();
        for (Candidate candidate : candidates) {
            all.add(tried(blank, candidate, judge));
        }
        double wanted = judge.limits().get(Limits.TURNS_WANTED);
        double today = blank.number(Inputs.TIE_LENGTH);
        all.sort(Comparator.comparingInt(StapleChoice::kind).thenComparingDouble(c -> switch (c.kind()) {
            case 0 -> Math.abs(c.turnsLeft.orElse(Double.MAX_VALUE) - wanted);
            case 1 -> Math.abs(c.tie.getAsDouble() - today);
            default -> 0;
        }));
        return all;
    }

    private int kind() {
        return against.isEmpty() ? 0 : tie.isPresent() ? 1 : 2;
    }

    private static StapleChoice tried(Blank blank, Candidate candidate, Judge judge) {
        double below = blank.number(Inputs.STAPLE_LENGTH) - blank.number(Inputs.WRAP_TOP);
        BlankBuilder edit = blank.edit().staple(candidate.profile());
        candidate.numbers().forEach(edit::set);
        Blank fresh = edit.build();
        Blank with = fresh.with(Inputs.WRAP_TOP, fresh.number(Inputs.STAPLE_LENGTH) - below);
        Assessment outline = Assessor.outline(with);
        Answer ties = TieLengths.solve(with, judge);
        return new StapleChoice(candidate, with, outline.turnsLeft(), judge.against(outline),
                ties.nearest().map(OptionalDouble::of).orElse(OptionalDouble.empty()), ties.no());
    }
}

package culm.bench.wrong;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.bench.log.PlannedSeen;
import culm.bench.log.Tied;
import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Fit;
import culm.blank.Inputs;
import culm.geometry.GeometryException;

/**
 * Finds the causes that would explain a blank, from its design and what was noted on it.
 * <p>Both sides give two equations, with the sides open by G of the model: G(left height) + c + sigma = 0 and G(right height) + c - sigma = 0. Sigma is what a
 * crooked blank does, c everything else. Each input is moved until it makes up for c by itself; the causes are ordered by that change over the
 * input's own give or take. Two causes fit about equally well when one needs at most {@value #ALIKE} times as many units as the other.
 * <p>How well it can be read: half a turn either way on each side, uniform.
 */
public final class WhatWentWrong {
    /** Causes within this factor of the first fit about equally well. */
    public static final double ALIKE = 1.5;
    /** How far a blank is usually crooked without anyone seeing it, mm; assumed, no source. */
    public static final double CROOKED_TOLERANCE = 0.03;
    /** Give or take of a length measured on the blank at the bench, mm; assumed, no source. */
    public static final double AT_THE_BENCH = 0.15;
    /** Turns that nobody can see are not told. */
    private static final double SMALLEST = 0.1;
    private static final double COVERAGE = 1.959963984540054;
    private final Blank design;
    private final Tied tied;
    private final Blank asTied;

    private WhatWentWrong(Blank design, Tied tied) {
        this.design = design;
        this.tied = tied;
        this.asTied = PlannedSeen.asTied(design, tied);
    }

    /** Explains one blank. @param design the blank as it was planned, its own staple included where that is known */
    public static Explanation explain(Blank design, Tied tied) {
        WhatWentWrong asked = new WhatWentWrong(design, tied);
        try {
            return asked.run();
        } catch (GeometryException refused) {
            return cannot(OptionalDouble.empty(), OptionalDouble.empty(), tied.seen().turns(), refused.told());
        }
    }

    private Explanation run() {
        OptionalDouble planned = PlannedSeen.turns(design);
        OptionalDouble expected = PlannedSeen.turns(asTied);
        OptionalDouble seen = tied.seen().turns();
        if (seen.isEmpty()) {
            return cannot(planned, expected, seen, "It was not noted how many turns were left when the sides closed.");
        }
        Optional<String> problem = ClosingFinder.find(asTied).refusal();
        if (problem.isPresent()) {
            return cannot(planned, expected, seen, "With the lengths as noted it cannot be computed: " + problem.get());
        }
        double[] turns = {tied.seen().left().orElse(seen.getAsDouble()), tied.seen().right().orElse(seen.getAsDouble())};
        double one = COVERAGE * Fit.HALF_A_TURN / Math.sqrt(3);
        double reading = one / Math.sqrt(tied.seen().sides());
        double apart = tied.seen().sides() == 2 ? Math.abs(turns[0] - turns[1]) : 0;
        Balance balance = new Balance(asTied, turns);
        Optional<Cause> crooked = apart > one * Math.sqrt(2) ? balance.crooked(CROOKED_TOLERANCE).filter(c -> c.units() > 1) : Optional.empty();
        List<Known> known = planned.isPresent() ? known(planned.getAsDouble()) : List.of();
        double off = planned.isPresent() ? Math.abs(seen.getAsDouble() - planned.getAsDouble()) : Double.POSITIVE_INFINITY;
        double rest = expected.isPresent() ? Math.abs(seen.getAsDouble() - expected.getAsDouble()) : Double.POSITIVE_INFINITY;
        List<Cause> causes = rest > reading ? causes(balance) : List.of();
        double together = 1 / Math.sqrt(causes.stream().mapToDouble(c -> 1 / (c.units() * c.units())).sum());
        Verdict verdict;
        if (crooked.isPresent() && apart / 2 >= off) {
            verdict = Verdict.CROOKED;
        } else if (off <= reading) {
            verdict = Verdict.AS_PLANNED;
        } else if (!known.isEmpty() && expected.isPresent() && Math.abs(expected.getAsDouble() - planned.getAsDouble()) >= rest) {
            verdict = Verdict.EXPLAINED;
        } else if (causes.isEmpty()) {
            verdict = rest > reading ? Verdict.CANNOT_TELL : Verdict.AS_PLANNED;
        } else {
            double spread = Math.hypot(reading, rest * COVERAGE / Math.sqrt(3) / together);
            verdict = rest > spread ? Verdict.SOMETHING_ELSE : Verdict.WITHIN_GIVE_OR_TAKE;
        }
        double first = causes.isEmpty() ? 0 : causes.get(0).units();
        int equal = (int) causes.stream().filter(c -> c.units() <= ALIKE * first).count();
        Explanation found = new Explanation(verdict, planned, expected, seen, reading, known, crooked, causes, equal, causes.isEmpty() ? 0 : together, List.of());
        return new Explanation(verdict, planned, expected, seen, reading, known, crooked, causes, equal, found.together(), Sentences.of(found, tied));
    }

    private static Explanation cannot(OptionalDouble planned, OptionalDouble expected, OptionalDouble seen, String why) {
        return new Explanation(Verdict.CANNOT_TELL, planned, expected, seen, 0, List.of(), Optional.empty(), List.of(), 0, 0, List.of(why));
    }

    /** Each measured length put into the plan alone, if that moves anything to be seen. */
    private List<Known> known(double planned) {
        List<Known> all = new ArrayList<>();
        String[] paths = {Inputs.STAPLE_LENGTH, Inputs.TIE_LENGTH, Inputs.WRAP_TOP};
        for (String path : paths) {
            double was = design.number(path);
            double is = asTied.number(path);
            if (Math.abs(is - was) > 1e-6) {
                OptionalDouble moved = PlannedSeen.turns(design.with(path, is));
                moved.stream().filter(t -> Math.abs(t - planned) >= SMALLEST).forEach(t -> all.add(new Known(Inputs.all().get(path).label(), was, is, t - planned)));
            }
        }
        all.sort(Comparator.comparingDouble((Known k) -> Math.abs(k.turns())).reversed());
        return all;
    }

    private List<Cause> causes(Balance balance) {
        double tie = tied.seen().tie().isPresent() ? AT_THE_BENCH : Math.max(design.tolerance(Inputs.TIE_LENGTH).plusMinus(), AT_THE_BENCH);
        double wrap = tied.seen().wrapTop().isPresent() ? AT_THE_BENCH : Math.max(design.tolerance(Inputs.WRAP_TOP).plusMinus(), AT_THE_BENCH);
        List<Cause> causes = new ArrayList<>();
        for (Candidate candidate : Candidates.of(asTied, tie, wrap)) {
            balance.needed(candidate).ifPresent(off -> causes.add(new Cause(candidate.id(), candidate.words(), off, off > 0 ? candidate.more() : candidate.less(),
                    candidate.unit(), candidate.tolerance(), candidate.check())));
        }
        causes.sort(Comparator.comparingDouble(Cause::units));
        return causes;
    }
}

package culm.bench.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/**
 * The tie lengths that a staple allows within <i>my limits</i>: every multiple of the step is tried, and the ends of each allowed stretch are
 * found to {@value #END} mm. A stretch that holds no multiple of the step is not seen: nobody could set it.
 */
public final class TieFinder {
    private static final double END = 1e-4;
    /** Where the house has no shortest or longest tie, how far from the design's tie is looked, mm. */
    public static final double AROUND = 5;
    private final Blank design;
    private final Limits limits;
    private final double step;
    private final double margin;
    private final double shortest;
    private final double longest;
    private final CaneTable cane;

    /**
     * @param design          everything but the staple
     * @param limits          turns left, pinching, shortest and longest tie
     * @param step            tie lengths are set to multiples of this, mm, positive; 0.1 at a bench
     * @param margin          turns to stay away from both limits, not negative
     * @param longestStaple   the longest staple that will be asked for, mm
     */
    public TieFinder(Blank design, Limits limits, double step, double margin, double longestStaple) {
        if (!(step >= 0.001 && step <= 5) || !(margin >= 0)) {
            throw new IllegalArgumentException("A step of " + step + " mm with a margin of " + margin + " turns is not possible.");
        }
        this.design = design;
        this.limits = limits;
        this.step = step;
        this.margin = margin;
        double tie = design.number(Inputs.TIE_LENGTH);
        double shortest = limits.get(Limits.TIE_SHORTEST);
        double longest = limits.get(Limits.TIE_LONGEST);
        this.shortest = Double.isNaN(shortest) ? tie - AROUND : shortest;
        this.longest = Double.isNaN(longest) ? tie + AROUND : longest;
        this.cane = table(design, this.shortest - longestStaple);
    }

    private static CaneTable table(Blank design, double from) {
        if (design.gougeEnd().isPresent()) {
            return null;
        }
        try {
            return new CaneTable(design, from);
        } catch (GeometryException refused) {
            return null;
        }
    }

    /** Smallest multiple of the step, as a number of steps, that is not shorter than the shortest tie. */
    int first() {
        return (int) Math.ceil(shortest / step - 1e-6);
    }

    /** The last one. */
    int last() {
        return (int) Math.floor(longest / step + 1e-6);
    }

    /** A number of steps as a tie length, without the dust of binary fractions. */
    double tie(int steps) {
        return Math.rint(steps * step * 1e6) / 1e6;
    }

    /** What tie lengths do with this staple. @param blank the design with the staple in it */
    public StapleTies find(Blank blank) {
        TieCourse course;
        try {
            blank.parts();
            course = cane == null ? TieCourse.reference(blank) : new TabledCourse(blank, cane, lowest(blank));
        } catch (GeometryException e) {
            return new StapleTies(List.of(), tie -> Double.NaN, e.told());
        }
        List<Optional<Bound>> tried = new ArrayList<>();
        for (int k = first(); k <= last(); k++) {
            tried.add(fails(blank, course, tie(k)));
        }
        List<TieRange> ranges = new ArrayList<>();
        int since = -1;
        for (int i = 0; i <= tried.size(); i++) {
            boolean fits = i < tried.size() && tried.get(i).isEmpty();
            if (fits && since < 0) {
                since = i;
            } else if (!fits && since >= 0) {
                ranges.add(range(blank, course, tried, since, i - 1));
                since = -1;
            }
        }
        String reason = ranges.isEmpty() ? reason(blank, course, tried) : "";
        return new StapleTies(List.copyOf(ranges), tie -> turns(blank, course.closes(tie)), reason);
    }

    private double lowest(Blank blank) {
        return blank.number(Inputs.WRAP_TOP) - (limits.get(Limits.TURNS_MOST) + 1) * blank.number(Inputs.THREAD_PITCH);
    }

    private static double turns(Blank blank, double closes) {
        return (blank.number(Inputs.WRAP_TOP) - closes) / blank.number(Inputs.THREAD_PITCH);
    }

    private Optional<Bound> fails(Blank blank, TieCourse course, double tie) {
        double end = tie - blank.number(Inputs.FOLDED_LENGTH);
        double cork = blank.number(Inputs.CORK_TOP);
        double bottom = blank.number(Inputs.WRAP_BOTTOM);
        if (end >= blank.number(Inputs.WRAP_TOP) || end < cork || end < bottom || end < 0) {
            return Optional.of(Bound.CANE_ENDS_WRONG);
        }
        if (blank.number(Inputs.FINISHED) >= tie) {
            return Optional.of(Bound.FINISHED_LENGTH);
        }
        double closes = course.closes(tie);
        double openAtTop = course.openAtTop(tie);
        if (Double.isNaN(closes)) {
            return Optional.of(openAtTop > 0 ? Bound.FEWEST_TURNS : Bound.NOT_COMPUTED);
        }
        double turns = turns(blank, closes);
        if (turns < limits.get(Limits.TURNS_FEWEST) + margin) {
            return Optional.of(Bound.FEWEST_TURNS);
        }
        if (turns > limits.get(Limits.TURNS_MOST) - margin) {
            return Optional.of(Bound.MOST_TURNS);
        }
        return -openAtTop > limits.get(Limits.PINCHED_MOST) ? Optional.of(Bound.PINCHED) : Optional.empty();
    }

    private TieRange range(Blank blank, TieCourse course, List<Optional<Bound>> tried, int from, int to) {
        double low = from == 0 ? tie(first()) : end(blank, course, tie(first() + from), tie(first() + from - 1));
        double high = to == tried.size() - 1 ? tie(last()) : end(blank, course, tie(first() + to), tie(first() + to + 1));
        return new TieRange(low, high, from == 0 ? Bound.SHORTEST_TIE : tried.get(from - 1).orElseThrow(),
                to == tried.size() - 1 ? Bound.LONGEST_TIE : tried.get(to + 1).orElseThrow());
    }

    /** Halves between a tie length that fits and one that does not; returns the one that fits. */
    private double end(Blank blank, TieCourse course, double fits, double not) {
        while (Math.abs(fits - not) > END) {
            double mid = 0.5 * (fits + not);
            if (fails(blank, course, mid).isEmpty()) {
                fits = mid;
            } else {
                not = mid;
            }
        }
        return fits;
    }

    private String reason(Blank blank, TieCourse course, List<Optional<Bound>> tried) {
        if (tried.isEmpty()) {
            return "Between the shortest and the longest tie there is no length to set.";
        }
        Map<Bound, Integer> counts = new EnumMap<>(Bound.class);
        tried.forEach(b -> counts.merge(b.orElseThrow(), 1, Integer::sum));
        Bound most = counts.entrySet().stream().max(Comparator.comparingInt(Map.Entry::getValue)).orElseThrow().getKey();
        String tops = "a top of " + Told.number(2 * axis(blank, 0), 2) + " x " + Told.length(2 * axis(blank, Math.PI / 2), 2);
        double low = tie(first());
        double high = tie(last());
        return switch (most) {
            case FEWEST_TURNS -> {
                double open = course.openAtTop(low);
                double turns = turns(blank, course.closes(low));
                String even = "Even tied at " + Told.length(low, 1);
                yield open > 0 ? even + " the sides stay open by " + Told.length(open, 2) + ": " + tops + " is too large for this cane."
                        : String.format(Locale.ROOT, "%s only %.1f turns would be left: %s is too large for this cane.", even, turns, tops);
            }
            case MOST_TURNS -> String.format(Locale.ROOT, "Even tied at %s the sides close too low, with more than %.1f turns left: %s is too small for this cane.",
                    Told.length(high, 1), limits.get(Limits.TURNS_MOST) - margin, tops);
            case NOT_COMPUTED -> "It cannot be computed: " + why(blank);
            default -> "From " + Told.number(low, 1) + " to " + Told.length(high, 1) + " " + most.words() + ".";
        };
    }

    private static String why(Blank blank) {
        return culm.blank.ClosingFinder.find(blank).refusal().orElse("the cane does not cover the staple.");
    }

    private static double axis(Blank blank, double psi) {
        return blank.parts().staple().outside(blank.number(Inputs.STAPLE_LENGTH)).support(psi);
    }

    /** The design that all staples are put into. */
    public Blank design() {
        return design;
    }
}

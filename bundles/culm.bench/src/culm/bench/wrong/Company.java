package culm.bench.wrong;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;

import org.hipparchus.stat.inference.TTest;

import culm.bench.log.GroupBy;
import culm.bench.log.PlannedSeen;
import culm.bench.log.Tied;
import culm.blank.Blank;
import culm.figures.Numbers;

/**
 * What one blank cannot tell and the log can: whether others that share its cane, its staples, its shape or its maker are off the same way, and those that
 * do not share it are not (Welch's test, rarer than one in a hundred by chance).
 *
 * @param by         what they share
 * @param value      its name
 * @param count      how many other blanks share it
 * @param mean       how far those are off, seen less expected with the lengths as measured, turns
 * @param others     how many do not share it
 * @param othersMean how far those are off
 */
public record Company(GroupBy by, String value, int count, double mean, int others, double othersMean) {
    private static final int FEWEST = 3;
    private static final double RARE = 0.01;
    private static final GroupBy[] SHARED = {GroupBy.CANE, GroupBy.STAPLES, GroupBy.SHAPE, GroupBy.PERSON};

    /**
     * The clearest company of a blank; empty when it is alone, or not off itself.
     * @param log     all blanks, this one among them or not
     * @param designs the blank as planned, for each of them
     */
    public static Optional<Company> of(Tied tied, List<Tied> log, Function<Tied, Optional<Blank>> designs) {
        OptionalDouble own = off(tied, designs);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        List<Tied> others = new ArrayList<>();
        List<Double> off = new ArrayList<>();
        for (Tied other : log) {
            OptionalDouble turns = other == tied || other.number().equals(tied.number()) ? OptionalDouble.empty() : off(other, designs);
            if (turns.isPresent()) {
                others.add(other);
                off.add(turns.getAsDouble());
            }
        }
        Company best = null;
        double rarest = RARE;
        for (GroupBy by : SHARED) {
            double[] with = values(others, off, by, tied, true);
            double[] without = values(others, off, by, tied, false);
            if (by.of(tied).isEmpty() || with.length < FEWEST || without.length < FEWEST) {
                continue;
            }
            Company company = new Company(by, by.of(tied), with.length, mean(with), without.length, mean(without));
            double chance = new TTest().tTest(with, without);
            if (chance <= rarest && company.mean * own.getAsDouble() > 0 && Math.abs(company.mean) > Math.abs(company.othersMean)) {
                best = company;
                rarest = chance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static OptionalDouble off(Tied tied, Function<Tied, Optional<Blank>> designs) {
        if (tied.seen().turns().isEmpty()) {
            return OptionalDouble.empty();
        }
        return designs.apply(tied).map(d -> PlannedSeen.of(tied, d).turnsHere()).orElse(OptionalDouble.empty());
    }

    private static double[] values(List<Tied> others, List<Double> off, GroupBy by, Tied tied, boolean sharing) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < others.size(); i++) {
            String value = by.of(others.get(i));
            if (!value.isEmpty() && value.equalsIgnoreCase(by.of(tied)) == sharing) {
                values.add(off.get(i));
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double mean(double[] values) {
        return DoubleStream.of(values).average().orElseThrow();
    }

    /** As it is said, with what to look at first. */
    public String text() {
        String shared = by == GroupBy.PERSON ? "that " + value + " tied" : "with the same " + by.words() + ", " + value + ",";
        String first = switch (by) {
            case PERSON -> "It may be the way of tying: watch one being tied, and let the log teach the model.";
            case CANE -> "Look at that cane first: its width, its thickness, how long it was soaked.";
            case STAPLES -> "Look at those staples first: measure their tops again on the mandrel.";
            default -> "Measure the width of cane cut with that shape first.";
        };
        return "It is not alone: the " + count + " other blanks " + shared + " are off the same way, by " + Numbers.fixed(Math.abs(mean), 1) + " turns on average; the " + others
                + " others by " + Numbers.fixed(othersMean, 1) + ". " + first;
    }
}

package culm.bench.batch;

import java.util.ArrayList;
import java.util.List;

import culm.blank.rules.Say;
import culm.geometry.words.Told;

/**
 * Finds readings that are probably slips: repeats of one staple that differ by more than the caliper can explain, tops entered with the
 * axes changed over, and staples far from the rest of the batch. Marks only; whether a staple is left out is for the maker to say,
 * and of one that was set aside nothing is asked any more.
 * <p>Far is measured by the modified z-score, 0.6745 (x - median) / MAD beyond 3.5 (Iglewicz and Hoaglin 1993, from memory), with a MAD of
 * at least the caliper's largest error, so that a batch of equals does not make an outlier of one hundredth.
 */
public final class Doubts {
    private static final double FAR = 3.5;
    private static final double NORMAL = 0.6745;
    private static final int FEWEST = 5;

    private Doubts() {
    }

    /** Every reading in doubt, in the order of the staples. */
    public static List<Doubt> in(StapleBatch whole) {
        StapleBatch batch = new StapleBatch(whole.name(), whole.staples().stream().filter(s -> s.setAside().isBlank()).toList(), whole.caliper(), whole.wrapBelowTop(), whole.by());
        List<Doubt> found = new ArrayList<>();
        Typical[] typical = new Typical[Dimension.values().length];
        for (Dimension dimension : Dimension.values()) {
            typical[dimension.ordinal()] = Typical.of(batch, dimension);
        }
        for (StapleReadings staple : batch.staples()) {
            if (changedOver(staple)) {
                found.add(new Doubt(staple, Dimension.TOP_WIDE, staple.topWide().getAsDouble(), "Wide " + across(staple.topWide().getAsDouble())
                        + " is smaller than narrow " + across(staple.topNarrow().getAsDouble()) + ": the two are probably changed over."));
            }
            for (Dimension dimension : Dimension.values()) {
                repeats(batch, staple, dimension, found);
                typical[dimension.ordinal()].judge(staple, dimension, found);
            }
        }
        return found;
    }

    private static boolean changedOver(StapleReadings staple) {
        return staple.topWide().isPresent() && staple.topNarrow().isPresent() && staple.topWide().getAsDouble() < staple.topNarrow().getAsDouble();
    }

    /** Two readings of one thing may differ by twice the caliper's largest error. */
    private static void repeats(StapleBatch batch, StapleReadings staple, Dimension dimension, List<Doubt> found) {
        List<Double> readings = staple.readings(dimension);
        if (readings.size() < 2) {
            return;
        }
        double low = readings.stream().mapToDouble(Double::doubleValue).min().getAsDouble();
        double high = readings.stream().mapToDouble(Double::doubleValue).max().getAsDouble();
        double most = 2 * batch.caliper().largestError();
        if (high - low > most + 1e-9) {
            double middle = staple.middle(dimension).getAsDouble();
            found.add(new Doubt(staple, dimension, middle - low > high - middle ? low : high, "Repeated readings of " + dimension.label() + " differ by "
                    + Say.across(high - low) + "; this caliper explains " + Say.across(most) + ". Read it again."));
        }
    }

    private record Typical(int count, double middle, double spread) {
        static Typical of(StapleBatch batch, Dimension dimension) {
            List<Double> all = batch.staples().stream().map(s -> s.middle(dimension)).filter(java.util.OptionalDouble::isPresent)
                    .map(java.util.OptionalDouble::getAsDouble).toList();
            if (all.isEmpty()) {
                return new Typical(0, Double.NaN, Double.NaN);
            }
            double middle = StapleReadings.middle(all).getAsDouble();
            double mad = StapleReadings.middle(all.stream().map(x -> Math.abs(x - middle)).toList()).getAsDouble();
            return new Typical(all.size(), middle, Math.max(mad, Math.max(batch.caliper().largestError(), 0.005)));
        }

        void judge(StapleReadings staple, Dimension dimension, List<Doubt> found) {
            if (count < FEWEST || staple.middle(dimension).isEmpty()) {
                return;
            }
            double value = staple.middle(dimension).getAsDouble();
            if (NORMAL * Math.abs(value - middle) / spread > FAR) {
                found.add(new Doubt(staple, dimension, value, capital(dimension.label()) + " " + Say.across(value) + " is " + Say.across(Math.abs(value - middle))
                        + (value > middle ? " more" : " less") + " than the middle of the batch, " + Say.across(middle) + "; most lie within " + Say.across(spread / NORMAL) + " of that. " + slip(value)));
            }
        }

        /** A whole number of millimetres off, or a factor of ten, looks like a key that slipped. */
        private String slip(double value) {
            double off = Math.abs(value - middle);
            boolean factor = Math.abs(value * 10 - middle) < FAR * spread || Math.abs(value / 10 - middle) < FAR * spread;
            boolean whole = Math.rint(off) >= 1 && Math.abs(off - Math.rint(off)) < spread;
            return factor ? "A point in the wrong place? Read it again." : whole ? "A slip of the pen by whole millimetres? Read it again." : "Read it again, or keep it out of the batch.";
        }
    }

    /** A reading without its unit, beside another one. */
    private static String across(double reading) {
        return Told.number(reading, 2);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

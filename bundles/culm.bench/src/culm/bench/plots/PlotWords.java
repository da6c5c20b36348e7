package culm.bench.plots;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import culm.blank.Blank;
import culm.explore.Axis;
import culm.explore.Share;
import culm.explore.Varied;
import culm.figures.Lengths;
import culm.figures.chart.AxisLabel;
import culm.geometry.profile.Quantity;
import culm.geometry.words.LengthText;
import culm.model.text.Numbers;

/** Words that plots and tables share. */
public final class PlotWords {
    private static final double ROUND = 1e4;

    private PlotWords() {
    }

    /** Ids of rules as words: sidesOpen is "sides open". */
    public static String rules(List<String> ids) {
        return String.join(", ", ids).replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }

    /** Whether an axis of numbers holds lengths. @param base has the axis's number */
    public static boolean lengths(Blank base, Axis axis) {
        return quantity(base, axis).filter(Quantity.LENGTH::equals).isPresent();
    }

    /** An axis of numbers in words, with what it counts in; nothing behind shares, counts and parts. @param lengths in what lengths are written */
    public static AxisLabel label(Blank base, Axis axis, Lengths lengths) {
        return new AxisLabel(axis.label(), quantity(base, axis).map(q -> q == Quantity.LENGTH ? lengths.sign() : q.unit()).orElse(""));
    }

    /** One value of an axis of numbers behind the axis's words; lengths with their unit. @param lengths in what lengths are written */
    public static String value(Blank base, Axis axis, double value, Lengths lengths) {
        double round = Math.rint(value * ROUND) / ROUND;
        String more = axis.id().equals(Varied.WIDTH) && round > 0 ? "+" : ""; // it is a change
        return axis.label() + " " + more + (lengths(base, axis) ? lengths.number(round, LengthText.AS_GIVEN) + " " + lengths.sign() : Numbers.format(round));
    }

    private static Optional<Quantity> quantity(Blank base, Axis axis) {
        return axis.id().equals(Varied.WIDTH) ? Optional.of(Quantity.LENGTH)
                : base.inputs().stream().filter(i -> i.path().equals(axis.id())).findFirst().map(i -> i.parameter().quantity());
    }

    /** A share in percent with one decimal. */
    public static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }

    /** A share with its 95 % interval. */
    public static String share(Share s) {
        return percent(s.value()) + " (" + interval(s) + ")";
    }

    /** The ends of a share's 95 % interval, in percent. */
    public static String interval(Share s) {
        return number(s.low()) + " to " + number(s.high());
    }

    private static String number(double share) {
        return String.format(Locale.ROOT, "%.1f", 100 * share);
    }
}

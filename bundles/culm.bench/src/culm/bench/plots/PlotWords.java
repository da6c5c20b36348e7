package culm.bench.plots;

import java.util.List;
import java.util.Locale;

import culm.blank.Blank;
import culm.explore.Axis;
import culm.explore.Share;
import culm.explore.Varied;
import culm.geometry.profile.Quantity;

/** Words that plots and tables share. */
public final class PlotWords {
    private PlotWords() {
    }

    /** Ids of rules as words: sidesOpen is "sides open". */
    public static String rules(List<String> ids) {
        return String.join(", ", ids).replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }

    /** The unit in which an axis of numbers counts; empty for shares and counts. @param base has the axis's number */
    public static String unit(Blank base, Axis axis) {
        return axis.id().equals(Varied.WIDTH) ? Quantity.LENGTH.unit()
                : base.inputs().stream().filter(i -> i.path().equals(axis.id())).findFirst().map(i -> i.parameter().quantity().unit()).orElse("");
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

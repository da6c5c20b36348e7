package culm.bench.plots;

import java.util.List;
import java.util.Locale;

import culm.explore.Share;

/** Words that plots and tables share. */
public final class PlotWords {
    private PlotWords() {
    }

    /** Ids of rules as words: sidesOpen is "sides open". */
    public static String rules(List<String> ids) {
        return String.join(", ", ids).replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
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

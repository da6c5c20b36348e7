package culm.blank;

import java.util.Locale;
import java.util.OptionalDouble;

import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/**
 * A fit to a blank that worked: the one length delta, added to half of the blade's width, with which the model meets the turns left that
 * were seen. It stands for all that was not measured (swelling, compression, a bias of the widths) together; it cannot tell them apart.
 *
 * @param worked       the blank as tied, without a fit of its own
 * @param turnsLeft    turns left that were seen when the sides closed
 * @param readingError give or take of that reading, turns (half a turn unless said otherwise)
 * @param delta        the fitted length, mm
 * @param learned      where it was learned from many blanks, from which, to stand after "was "; empty where it is from one blank
 */
public record Fit(Blank worked, double turnsLeft, double readingError, double delta, String learned) {
    /** Usual give or take of a count of turns. */
    public static final double HALF_A_TURN = 0.5;

    /** From one blank that worked. */
    public Fit(Blank worked, double turnsLeft, double readingError, double delta) {
        this(worked, turnsLeft, readingError, delta, "");
    }

    /**
     * Fits delta: at the height seen, z = top of the wrap - turns times pitch, half of what the model leaves open there.
     * @throws GeometryException when that height is not on the overlap, or the model would close elsewhere with this delta
     */
    public static Fit to(Blank worked, double turnsLeft, double readingError) {
        Blank bare = worked.edit().fit(null).clear(Inputs.DELTA).build();
        double seen = seen(bare, turnsLeft);
        Closing before = ClosingFinder.find(bare);
        if (before.problem().isPresent()) {
            throw new GeometryException(before.path(), before.refusal().get());
        }
        double end = before.course().get(0).z();
        if (!(seen > end && seen <= bare.number(Inputs.STAPLE_LENGTH))) {
            throw notOnTheCane(turnsLeft, seen, end);
        }
        double delta = new Seam(bare).open(seen) / 2;
        OptionalDouble reached = ClosingFinder.find(bare.with(Inputs.DELTA, delta - 1e-13)).at();
        OptionalDouble also = ClosingFinder.find(bare.with(Inputs.DELTA, delta + 1e-13)).at();
        if (!near(reached, seen) && !near(also, seen)) {
            throw new GeometryException("shape", "With these parts the sides cannot close at " + Told.length(seen, 1) + " and stay closed to the staple's top.");
        }
        return new Fit(bare, turnsLeft, readingError, delta);
    }

    /** Why turns that were seen cannot be met. @param at the height that they mean, mm; @param end where the cane ends, mm */
    public static GeometryException notOnTheCane(double turnsLeft, double at, double end) {
        return new GeometryException(Inputs.WRAP_TOP, String.format(Locale.ROOT, "%.1f turns left put the closing at %s, which is not on the cane between %s and the staple's top.",
                turnsLeft, Told.length(at, 1), Told.length(end, 1)));
    }

    /** Whether an input is the same in a blank as in the one that worked: its give or take moves both together then, and the fitted length takes most of it in. */
    public boolean same(Blank blank, String path) {
        try {
            return blank.value(path).equals(worked.value(path)) && kind(blank, path).equals(kind(worked, path));
        } catch (IllegalArgumentException gone) {
            return false;
        }
    }

    private static String kind(Blank blank, String path) {
        return switch (path.substring(0, path.indexOf('.'))) {
            case "staple" -> blank.staple().type().id();
            case "gouge" -> blank.gouge().type().id();
            case "gougeEnd" -> blank.gougeEnd().map(e -> e.type().id()).orElse("");
            case "shape" -> blank.shape().type().id();
            default -> "";
        };
    }

    private static boolean near(OptionalDouble at, double seen) {
        return at.isPresent() && Math.abs(at.getAsDouble() - seen) < 1e-6;
    }

    /** Height at which the sides were seen to close. */
    static double seen(Blank worked, double turnsLeft) {
        return worked.number(Inputs.WRAP_TOP) - turnsLeft * worked.number(Inputs.THREAD_PITCH);
    }
}

package culm.geometry.staple;

import culm.geometry.numeric.Minimum;
import culm.geometry.section.Section;

/**
 * How far a mandrel goes into a staple: the deepest position of its tip where the mandrel's support function is nowhere above the bore's, at every
 * height and in every direction, and was not on the way there; it enters from the bottom.
 *
 * @param tip       height of the mandrel's tip above the bottom of the staple, mm; above the staple's length when it sticks out of the top
 * @param stops     false when it goes in over its whole length without touching
 * @param touchesAt height where it touches, mm; NaN when it does not
 * @param direction normal direction of the touch, radians from the wide axis (0 wide, pi/2 narrow); NaN when it does not touch
 */
public record MandrelFit(double tip, boolean stops, double touchesAt, double direction) {
    /** Accuracy of {@link #tip()}, mm. */
    public static final double TOLERANCE = 1e-6;
    private static final int HEIGHTS = 48;
    private static final int DIRECTIONS = 16;
    private static final double FIRST_STEP = 0.25;

    /**
     * Pushes a mandrel in until it touches.
     * @param staple  the staple, its wall within its outside at every height
     * @param mandrel the mandrel's outside: height 0 is its thick end, {@code mandrel.length()} its tip; described like a staple's outside
     * @throws culm.geometry.GeometryException when the wall does not fit inside the staple
     */
    public static MandrelFit of(Staple staple, StapleOutside mandrel) {
        double whole = mandrel.length();
        double free = 0;
        double step = Math.min(FIRST_STEP, whole);
        while (free < whole) {
            double next = Math.min(whole, free + step);
            if (room(staple, mandrel, next).value < 0) {
                return touch(staple, mandrel, free, next);
            }
            free = next;
        }
        return new MandrelFit(whole, false, Double.NaN, Double.NaN);
    }

    private static MandrelFit touch(Staple staple, StapleOutside mandrel, double free, double stuck) {
        double lo = free;
        double hi = stuck;
        while (hi - lo > TOLERANCE / 4) {
            double mid = 0.5 * (lo + hi);
            if (room(staple, mandrel, mid).value < 0) {
                hi = mid;
            } else {
                lo = mid;
            }
        }
        Room tightest = room(staple, mandrel, hi);
        return new MandrelFit(lo, true, tightest.z, tightest.psi);
    }

    private record Room(double value, double z, double psi) {
    }

    /** The smallest distance of bore and mandrel over all heights and directions with the tip at a height. */
    private static Room room(Staple staple, StapleOutside mandrel, double tip) {
        double top = Math.min(tip, staple.length());
        if (top <= 0) {
            return new Room(Double.POSITIVE_INFINITY, 0, 0);
        }
        double bottom = Math.max(0, tip - mandrel.length());
        double z = Minimum.between(h -> around(staple, mandrel, tip, h).value(), bottom, top, HEIGHTS).at();
        for (double cut : staple.shape().breaks()) {
            if (cut > bottom && cut < top && around(staple, mandrel, tip, cut).value() < around(staple, mandrel, tip, z).value()) {
                z = cut;
            }
        }
        Minimum least = around(staple, mandrel, tip, z);
        return new Room(least.value(), z, least.at());
    }

    private static Minimum around(Staple staple, StapleOutside mandrel, double tip, double z) {
        Section bore = staple.bore(z);
        Section inside = mandrel.section(Math.min(mandrel.length(), Math.max(0, mandrel.length() - tip + z)));
        return Minimum.between(psi -> bore.support(psi) - inside.support(psi), 0, Math.PI / 2, DIRECTIONS);
    }
}

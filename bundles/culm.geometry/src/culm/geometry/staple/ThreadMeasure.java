package culm.geometry.staple;

import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/**
 * The perimeter of a section measured with thin thread: n turns laid side by side and unwound. One turn lies d/2 outside the surface and rises
 * by d, so its length is hypot(P + pi d, d), hence P = sqrt((l/n)^2 - d^2) - pi d.
 */
public final class ThreadMeasure {
    private ThreadMeasure() {
    }

    /**
     * Perimeter of the section, mm.
     * @param turns    number of turns n, positive
     * @param diameter of the thread d, mm, positive
     * @param unwound  length l of those turns, mm
     * @throws GeometryException when the length is too short for that thread
     */
    public static double perimeter(double turns, double diameter, double unwound) {
        double turn = unwound / turns;
        double perimeter = turn > diameter ? Math.sqrt((turn - diameter) * (turn + diameter)) - Math.PI * diameter : -1;
        if (!(turns > 0 && diameter > 0 && perimeter > 0 && Double.isFinite(perimeter))) {
            throw new GeometryException("checkLength", Told.given(unwound) + " " + Told.UNIT + " is too short for " + turns + " turns of a thread of " + Told.given(diameter) + " " + Told.UNIT + ".");
        }
        return perimeter;
    }

    /** Unwound length of n turns around a perimeter, mm: the inverse of {@link #perimeter(double, double, double)}. */
    public static double unwound(double turns, double diameter, double perimeter) {
        return turns * Math.hypot(perimeter + Math.PI * diameter, diameter);
    }
}

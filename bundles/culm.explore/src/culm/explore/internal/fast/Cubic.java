package culm.explore.internal.fast;

/** The cubic value + c1 u + c2 u^2 + c3 u^3 on 0 &lt;= u &lt;= h. */
final class Cubic {
    private Cubic() {
    }

    /** Largest slope on the piece: at an end, or where the slope's own parabola turns inside. */
    static double steepest(double c1, double c2, double c3, double h) {
        double most = Math.max(c1, c1 + h * (2 * c2 + 3 * c3 * h));
        double turn = -c2 / (3 * c3);
        return turn > 0 && turn < h ? Math.max(most, c1 + turn * (2 * c2 + 3 * c3 * turn)) : most;
    }
}

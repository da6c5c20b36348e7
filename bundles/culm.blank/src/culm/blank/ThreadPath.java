package culm.blank;

import culm.geometry.numeric.Gauss;

/**
 * The thread's way: k turns up from below the top of the wrap, cross over, down over those turns, on over the cane and the bare staple to
 * the bottom of the wrap. Knots and tails are not in it.
 *
 * @param turnsUp   turns wound upwards, k
 * @param turnsDown turns wound downwards, from the top of the wrap to its bottom
 * @param lengthUp   thread in the turns upwards, mm
 * @param lengthDown thread in the turns downwards, mm
 */
public record ThreadPath(double turnsUp, double turnsDown, double lengthUp, double lengthDown) {
    private static final double QUADRATURE = 1e-10;

    /** All the thread without knots and tails, mm. */
    public double length() {
        return lengthUp + lengthDown;
    }

    /**
     * Integrates turn by turn: one turn is sqrt(Q^2 + p^2), Q the outer perimeter + pi d for the layer that lies on it, + 3 pi d for the
     * layer on top; error of the quadrature below 1e-9 mm.
     *
     * @param bottom where the thread ends below, mm, below {@code top}
     * @param top    top of the wrap, mm, at most the staple's top
     */
    static ThreadPath along(Seam seam, double bottom, double top, double diameter, double pitch, double startTurns) {
        double start = top - startTurns * pitch;
        double cane = seam.tieLength() - seam.parts().foldedLength();
        double up = layer(seam, start, top, cane, diameter, pitch, 1);
        double over = layer(seam, Math.max(start, bottom), top, cane, diameter, pitch, 3);
        double down = start > bottom ? layer(seam, bottom, start, cane, diameter, pitch, 1) : 0;
        return new ThreadPath(startTurns, (top - bottom) / pitch, up, over + down);
    }

    private static double layer(Seam seam, double from, double to, double cane, double diameter, double pitch, int around) {
        double a = Math.max(0, from);
        if (a >= to) {
            return 0;
        }
        double[] cuts = java.util.stream.DoubleStream.concat(java.util.stream.DoubleStream.of(cane),
                java.util.stream.DoubleStream.of(seam.parts().staple().shape().breaks())).sorted().toArray();
        return Gauss.integrate(z -> Math.hypot(seam.outerPerimeter(z) + around * Math.PI * diameter, pitch) / pitch, a, to, cuts, QUADRATURE);
    }
}

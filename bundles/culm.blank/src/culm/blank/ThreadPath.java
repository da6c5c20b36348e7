package culm.blank;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

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
        double[] cuts = DoubleStream.concat(DoubleStream.of(cane), DoubleStream.of(seam.parts().staple().shape().breaks())).sorted().toArray();
        Map<Double, Double> known = new HashMap<>(); // the turns up and those over them lie on the same places
        DoubleUnaryOperator around = z -> known.computeIfAbsent(z, seam::outerPerimeter);
        double up = layer(around, start, top, cuts, diameter, pitch, 1);
        double over = layer(around, Math.max(start, bottom), top, cuts, diameter, pitch, 3);
        double down = start > bottom ? layer(around, bottom, start, cuts, diameter, pitch, 1) : 0;
        return new ThreadPath(startTurns, (top - bottom) / pitch, up, over + down);
    }

    private static double layer(DoubleUnaryOperator perimeter, double from, double to, double[] cuts, double diameter, double pitch, int around) {
        double a = Math.max(0, from);
        if (a >= to) {
            return 0;
        }
        return Gauss.integrate(z -> Math.hypot(perimeter.applyAsDouble(z) + around * Math.PI * diameter, pitch) / pitch, a, to, cuts, QUADRATURE);
    }
}

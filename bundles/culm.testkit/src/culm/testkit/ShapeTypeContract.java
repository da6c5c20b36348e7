package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;

import culm.geometry.profile.Values;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;

/**
 * What a kind of shape promises. Beside {@link ProfileTypeContract}: a positive width at every place it covers, smooth between its breaks,
 * and nothing beyond: it does not extrapolate.
 */
public abstract class ShapeTypeContract extends ProfileTypeContract<ShapeType> {
    private static final int PLACES = 60;

    /** Folded length to try, mm; override where 37 is not usual. */
    protected double foldedLength() {
        return 37;
    }

    @Override
    final String part() {
        return "shape";
    }

    @Override
    final double[] checked(ShapeType type, Values values) {
        ShapeWidth width = type.width(values, foldedLength());
        assertNotNull(width, "no width was given");
        double from = finite("first place", width.from());
        double to = finite("last place", width.to());
        assertTrue(from >= 0 && from < to, "widths from " + from + " to " + to);
        double[] breaks = places("places", width.breaks(), from, to);
        DoubleStream.Builder told = DoubleStream.builder();
        for (double s : DoubleStream.concat(DoubleStream.of(from, to), DoubleStream.of(between(from, to, PLACES, breaks))).toArray()) {
            double w = finite("width at " + s, width.at(s));
            assertTrue(w > 0, "a width of " + w + " at " + s);
            told.add(w);
        }
        noJump("the width", width::at, from, to, breaks);
        assertThrows(IllegalArgumentException.class, () -> width.at(to + 0.5), "nothing is extrapolated beyond the end");
        assertThrows(IllegalArgumentException.class, () -> width.at(from - 0.5), "nothing is extrapolated before the beginning");
        return told.build().toArray();
    }
}

package culm.geometry.guard;

import java.util.Locale;

import culm.geometry.profile.Values;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;

/** A plug-in's kind of shape behind its guard. */
public final class GuardedShapeType extends GuardedType<ShapeType> implements ShapeType {
    /** @param type a type whose {@link Description} has no problem */
    public GuardedShapeType(ShapeType type, Guard guard) {
        super(type, guard);
    }

    @Override
    public ShapeWidth width(Values values, double foldedLength) {
        ShapeWidth made = guard().call(() -> type().width(values, foldedLength));
        double from = guard().number(made::from, () -> "where the widths begin");
        double to = guard().number(made::to, () -> "where the widths end");
        if (!(from >= 0 && from < to)) {
            throw guard().failed("gives widths from " + from + " to " + to + " mm from the fold");
        }
        return new Width(guard(), made, from, to, breaks(guard(), made::breaks));
    }

    private record Width(Guard guard, ShapeWidth width, double from, double to, double[] breaks) implements ShapeWidth {
        @Override
        public double at(double s) {
            if (s < from || s > to) {
                throw new IllegalArgumentException(s + " mm from the fold lies outside the widths, " + from + " to " + to + " mm");
            }
            double value = guard.number(() -> width.at(s), () -> String.format(Locale.ROOT, "the width %.1f mm from the fold", s));
            if (value <= 0) {
                throw guard.failed(String.format(Locale.ROOT, "gives a width of %.2f mm, %.1f mm from the fold", value, s));
            }
            return value;
        }

        @Override
        public double[] breaks() {
            return breaks.clone();
        }
    }
}

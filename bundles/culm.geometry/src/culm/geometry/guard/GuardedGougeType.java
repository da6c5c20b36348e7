package culm.geometry.guard;

import java.util.Locale;

import culm.geometry.gouge.GougeSection;
import culm.geometry.gouge.GougeType;
import culm.geometry.profile.Values;

/** A plug-in's kind of gouge behind its guard. */
public final class GuardedGougeType extends GuardedType<GougeType> implements GougeType {
    /** @param type a type whose {@link Description} has no problem */
    public GuardedGougeType(GougeType type, Guard guard) {
        super(type, guard);
    }

    @Override
    public GougeSection section(Values values, double tubeRadius) {
        GougeSection made = guard().call(() -> type().section(values, tubeRadius));
        return new Thickness(guard(), made, breaks(guard(), made::breaks));
    }

    private record Thickness(Guard guard, GougeSection section, double[] breaks) implements GougeSection {
        @Override
        public double thickness(double phi) {
            return guard.number(() -> section.thickness(phi), () -> String.format(Locale.ROOT, "the thickness %.0f degrees from the middle", Math.toDegrees(phi)));
        }

        @Override
        public double[] breaks() {
            return breaks.clone();
        }

        @Override
        public double integral(double phi) {
            return guard.number(() -> section.integral(phi), () -> "the thickness from the middle to the side");
        }
    }
}

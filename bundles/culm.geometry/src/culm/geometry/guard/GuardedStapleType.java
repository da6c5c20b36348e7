package culm.geometry.guard;

import java.util.OptionalDouble;

import culm.geometry.profile.Values;
import culm.geometry.section.Ellipse;
import culm.geometry.section.Section;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.StapleType;

/** A plug-in's kind of staple behind its guard. */
public final class GuardedStapleType extends GuardedType<StapleType> implements StapleType {
    /** @param type a type whose {@link Description} has no problem */
    public GuardedStapleType(StapleType type, Guard guard) {
        super(type, guard);
    }

    @Override
    public StapleOutside outside(Values values, double length) {
        StapleOutside made = guard().call(() -> type().outside(values, length));
        double said = guard().number(made::length, () -> "the staple's length");
        if (said != length) {
            throw guard().failed("was asked for a staple of " + length + " mm and made one of " + said + " mm");
        }
        return new Outside(guard(), made, length, breaks(guard(), made::breaks));
    }

    @Override
    public Values topScaled(Values values, double k) {
        return guard().call(() -> type().topScaled(values, k));
    }

    private record Outside(Guard guard, StapleOutside outside, double length, double[] breaks) implements StapleOutside {
        @Override
        public Section section(double z) {
            Section made = guard.call(() -> outside.section(z));
            return made instanceof Ellipse ? made : new GuardedSection(guard, made, z);
        }

        @Override
        public double[] breaks() {
            return breaks.clone();
        }

        @Override
        public OptionalDouble closedVolume() {
            OptionalDouble volume = guard.call(outside::closedVolume);
            if (volume.isPresent() && !(volume.getAsDouble() > 0 && Double.isFinite(volume.getAsDouble()))) {
                throw guard.failed("gives no volume: " + volume.getAsDouble());
            }
            return volume;
        }
    }
}

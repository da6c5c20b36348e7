package culm.geometry.staple;

import java.util.List;
import java.util.OptionalDouble;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.section.Ellipse;
import culm.geometry.section.Section;

/** Round bottom, oval top, both axes straight between them: elliptical sections with semi-axes linear in z. */
public final class StraightSidedOval implements StapleType {
    @Override
    public String id() {
        return "culm.staple.oval";
    }

    @Override
    public String name() {
        return "straight-sided oval";
    }

    @Override
    public String help() {
        return "A round bottom, an oval top, and straight sides between them.";
    }

    @Override
    public List<Parameter> parameters() {
        return OvalTop.PARAMETERS;
    }

    @Override
    public StapleOutside outside(Values values, double length) {
        double r = values.number(OvalTop.BOTTOM) / 2;
        return new Outside(length, r, r, values.number(OvalTop.WIDE) / 2, values.number(OvalTop.NARROW) / 2);
    }

    @Override
    public Values topScaled(Values values, double k) {
        return OvalTop.scaled(values, k);
    }

    /** Semi-axes (a0, b0) at the bottom and (a1, b1) at the top, mm. */
    record Outside(double length, double a0, double b0, double a1, double b1) implements StapleOutside {
        @Override
        public Section section(double z) {
            double u = z / length;
            return new Ellipse(a0 + u * (a1 - a0), b0 + u * (b1 - b0));
        }

        /** Exact: (pi H / 6)(2 a0 b0 + 2 a1 b1 + a0 b1 + a1 b0). */
        @Override
        public OptionalDouble closedVolume() {
            return OptionalDouble.of(Math.PI * length / 6 * (2 * a0 * b0 + 2 * a1 * b1 + a0 * b1 + a1 * b0));
        }
    }
}

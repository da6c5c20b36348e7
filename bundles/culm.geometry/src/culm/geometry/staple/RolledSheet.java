package culm.geometry.staple;

import java.util.List;
import java.util.OptionalDouble;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.section.BlendSection;
import culm.geometry.section.Ellipse;
import culm.geometry.section.Section;

/** Sheet brass rolled between a round bottom and an oval top: a developable surface, support function linear in z. */
public final class RolledSheet implements StapleType {
    @Override
    public String id() {
        return "culm.staple.rolled";
    }

    @Override
    public String name() {
        return "rolled sheet";
    }

    @Override
    public String help() {
        return "Sheet metal rolled from a round bottom to an oval top, as a mandrel shapes it.";
    }

    @Override
    public List<Parameter> parameters() {
        return OvalTop.PARAMETERS;
    }

    @Override
    public StapleOutside outside(Values values, double length) {
        double r = values.number(OvalTop.BOTTOM) / 2;
        return new Outside(length, new Ellipse(r, r), new Ellipse(values.number(OvalTop.WIDE) / 2, values.number(OvalTop.NARROW) / 2));
    }

    @Override
    public Values topScaled(Values values, double k) {
        return OvalTop.scaled(values, k);
    }

    /** A blend from the bottom circle to the top ellipse. */
    record Outside(double length, Ellipse bottom, Ellipse top) implements StapleOutside {
        @Override
        public Section section(double z) {
            return new BlendSection(bottom, top, Math.min(1, Math.max(0, z / length)));
        }

        /** Exact: (H / 3)(pi r^2 + pi a b + r P / 2), P the top's perimeter. */
        @Override
        public OptionalDouble closedVolume() {
            return OptionalDouble.of(length / 3 * (bottom.area() + top.area() + bottom.a() * top.perimeter() / 2));
        }
    }
}

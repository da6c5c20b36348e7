package culm.geometry.staple;

import java.util.OptionalDouble;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Gauss;
import culm.geometry.section.ParallelSection;
import culm.geometry.section.Section;
import culm.geometry.words.Told;

/**
 * A staple: its outside and its wall. The bore is the outside moved inward by the wall.
 * All lengths mm, volumes mm^3; heights z from 0 at the bottom to {@link #length()}.
 *
 * @param shape the outside
 * @param wall  thickness of the metal, mm, positive; whether it fits inside the outside is asked where the bore is
 */
public record Staple(StapleOutside shape, double wall) {
    private static final double STEP = 1e-3;
    private static final int CHECKED = 200;

    /** @throws GeometryException when the wall is not a positive number */
    public Staple {
        if (!(wall > 0 && Double.isFinite(wall))) {
            throw new GeometryException("wall", "A wall of " + Told.given(wall) + " " + Told.UNIT + " is not possible.");
        }
    }

    /** Staple length, mm. */
    public double length() {
        return shape.length();
    }

    /** Outside section at height z, 0 &lt;= z &lt;= length. */
    public Section outside(double z) {
        return shape.section(Math.min(length(), Math.max(0, z)));
    }

    /** Bore at height z. @throws GeometryException when the wall does not fit inside the outside there; its path is {@code wall} */
    public Section bore(double z) {
        return new ParallelSection(outside(z), -wall);
    }

    /**
     * Volume within the outside between two heights, 0 &lt;= from &lt;= to &lt;= length: the closed form where the type has one and the whole staple is
     * asked for, else Gauss quadrature of the area between the rows, to 1e-12 of the value.
     */
    public double outsideVolume(double from, double to) {
        if (from == 0 && to == length() && shape.closedVolume().isPresent()) {
            return shape.closedVolume().getAsDouble();
        }
        return Gauss.integrate(z -> outside(z).area(), from, to, shape.breaks());
    }

    /**
     * Volume of the bore between two heights: V - w times the integral of P + pi w^2 H (Steiner).
     * @throws GeometryException when the wall does not fit at some height
     */
    public double boreVolume(double from, double to) {
        requireWallFits(from, to);
        double sides = Gauss.integrate(z -> outside(z).perimeter(), from, to, shape.breaks());
        return outsideVolume(from, to) - wall * sides + Math.PI * wall * wall * (to - from);
    }

    /** Volume of the whole bore. */
    public double boreVolume() {
        return boreVolume(0, length());
    }

    /** Half-angles end to end: from the bottom to the top. */
    public HalfAngles halfAngles() {
        return halfAngles(0, length());
    }

    /**
     * Half-angles at a height, by a central difference over {@value #STEP} mm (one-sided at the ends), good to 1e-7 rad where the outside is smooth.
     */
    public HalfAngles halfAnglesAt(double z) {
        return halfAngles(Math.max(0, z - STEP), Math.min(length(), z + STEP));
    }

    private HalfAngles halfAngles(double low, double high) {
        double rise = high - low;
        Section a = outside(low);
        Section b = outside(high);
        OptionalDouble bore = OptionalDouble.empty();
        if (wall < a.smallestRadius() && wall < b.smallestRadius()) {
            bore = OptionalDouble.of(Math.atan((equalArea(bore(low)) - equalArea(bore(high))) / rise));
        }
        return new HalfAngles(Math.atan((a.halfWide() - b.halfWide()) / rise), Math.atan((a.halfNarrow() - b.halfNarrow()) / rise), bore);
    }

    private static double equalArea(Section section) {
        return Math.sqrt(section.area() / Math.PI);
    }

    private void requireWallFits(double from, double to) {
        for (int i = 0; i <= CHECKED; i++) {
            requireWallFits(from + (to - from) * i / CHECKED);
        }
        for (double z : shape.breaks()) {
            if (z > from && z < to) {
                requireWallFits(z);
            }
        }
    }

    private void requireWallFits(double z) {
        try {
            bore(z);
        } catch (GeometryException e) {
            throw new GeometryException(e.path(), e.told() + " (at " + Told.length(z, 1) + ")");
        }
    }
}

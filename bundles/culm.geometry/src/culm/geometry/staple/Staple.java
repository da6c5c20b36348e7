package culm.geometry.staple;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Gauss;
import culm.geometry.section.ParallelSection;
import culm.geometry.section.Section;

/**
 * A staple: its outside and its wall. The bore is the outside moved inward by the wall.
 * All lengths mm, volumes mm^3; heights z from 0 at the bottom to {@link #length()}.
 */
public record Staple(StapleOutside shape, double wall) {
    /** @throws GeometryException when the wall is not a positive number */
    public Staple {
        if (!(wall > 0 && Double.isFinite(wall))) {
            throw new GeometryException("wall", "A wall of " + wall + " mm is not possible.");
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

    /** Bore at height z. @throws GeometryException when the wall does not fit inside the outside there */
    public Section bore(double z) {
        return new ParallelSection(outside(z), -wall);
    }

    /** Volume within the outside between two heights, from &lt;= to: closed form where the type has one and the whole staple is asked for. */
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
        requireWallFits();
        double sides = Gauss.integrate(z -> outside(z).perimeter(), from, to, shape.breaks());
        return outsideVolume(from, to) - wall * sides + Math.PI * wall * wall * (to - from);
    }

    /** Volume of the whole bore. */
    public double boreVolume() {
        return boreVolume(0, length());
    }

    private void requireWallFits() {
        int steps = 200;
        for (int i = 0; i <= steps; i++) {
            bore(length() * i / steps);
        }
        for (double z : shape.breaks()) {
            bore(z);
        }
    }
}

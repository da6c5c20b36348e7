package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import culm.geometry.numeric.Gauss;
import culm.geometry.profile.Values;
import culm.geometry.section.Section;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.StapleType;

/**
 * What a kind of staple promises. Beside {@link ProfileTypeContract}: a convex outside, symmetrical about both axes, at every height; a slope,
 * bend, perimeter and area that belong to the same outline; a stated volume that is the integral of the areas; a top that can be scaled.
 */
public abstract class StapleTypeContract extends ProfileTypeContract<StapleType> {
    private static final int HEIGHTS = 9;
    private static final double STEP = 1e-4;

    /** Staple length to try, mm; override where 47 is not usual. */
    protected double length() {
        return 47;
    }

    @Override
    final String part() {
        return "staple";
    }

    @Override
    final double[] checked(StapleType type, Values values) {
        StapleOutside outside = type.outside(values, length());
        assertNotNull(outside, "no outside was given");
        assertEquals(length(), outside.length(), "the staple has the length asked for");
        double[] breaks = places("heights", outside.breaks(), 0, length());
        DoubleStream.Builder told = DoubleStream.builder();
        for (double z : DoubleStream.concat(DoubleStream.of(0, length()), DoubleStream.of(between(0, length(), HEIGHTS, breaks))).toArray()) {
            Section section = outside.section(z);
            section(section, " at " + z + " mm");
            told.add(section.perimeter()).add(section.area());
        }
        noJump("the outside", z -> outside.section(z).perimeter(), 0, length(), breaks);
        outside.closedVolume().ifPresent(stated -> agree("volume", finite("volume", stated),
                Gauss.integrate(z -> outside.section(z).area(), 0, length(), breaks), 1e-6));
        return told.build().toArray();
    }

    @Test
    @DisplayName("the top can be scaled to a measured perimeter")
    final void topIsScaled() {
        StapleType type = type();
        double before = top(type, type.standard());
        for (double k : new double[] {0.95, 1, 1.05}) {
            Values scaled = type.topScaled(type.standard(), k);
            assertTrue(type.problems(scaled).isEmpty(), "scaled values are still good");
            agree("perimeter of a top scaled by " + k, k * before, top(type, scaled), 1e-9);
        }
    }

    private double top(StapleType type, Values values) {
        return type.outside(values, length()).section(length()).perimeter();
    }

    private static void section(Section s, String where) {
        double sharpest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 12; i++) {
            double psi = Math.PI / 2 * i / 12;
            double h = finite("support" + where, s.support(psi));
            assertTrue(h > 0, "the axis lies outside" + where);
            agree("support mirrored about x" + where, h, s.support(-psi), 1e-12);
            agree("support mirrored about y" + where, h, s.support(Math.PI - psi), 1e-12);
            agree("slope" + where, finite("slope" + where, s.supportSlope(psi)), (s.support(psi + STEP) - s.support(psi - STEP)) / (2 * STEP), 1e-5);
            double bend = finite("bend" + where, s.curvatureRadius(psi));
            assertTrue(bend >= -1e-9, "not convex" + where);
            agree("bend" + where, bend, h + (s.supportSlope(psi + STEP) - s.supportSlope(psi - STEP)) / (2 * STEP), 1e-4);
            sharpest = Math.min(sharpest, bend);
        }
        agree("perimeter" + where, finite("perimeter" + where, s.perimeter()), 4 * Gauss.integrate(s::support, 0, Math.PI / 2), 1e-6);
        agree("area" + where, finite("area" + where, s.area()),
                2 * Gauss.integrate(psi -> s.support(psi) * s.support(psi) - s.supportSlope(psi) * s.supportSlope(psi), 0, Math.PI / 2), 1e-6);
        double smallest = finite("sharpest bend" + where, s.smallestRadius());
        assertTrue(smallest <= sharpest + 1e-6, "the sharpest bend" + where + " is stated as " + smallest + ", but " + sharpest + " occurs");
    }
}

package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.DoubleStream;

import culm.geometry.gouge.GougeSection;
import culm.geometry.gouge.GougeType;
import culm.geometry.numeric.Gauss;
import culm.geometry.profile.Values;

/**
 * What a kind of gouge promises. Beside {@link ProfileTypeContract}: a thickness at every angle of the blade, the same on both sides, thinner
 * than the tube's radius in the middle, smooth between its breaks, and an integral that is its own.
 */
public abstract class GougeTypeContract extends ProfileTypeContract<GougeType> {
    private static final int ANGLES = 24;
    /** The widest half of a blade that is used, radians. */
    private static final double BLADE = 1;

    /** Radius of the tube to try, mm; override where 5.25 is not usual. */
    protected double tubeRadius() {
        return 5.25;
    }

    @Override
    final String part() {
        return "gouge";
    }

    @Override
    final double[] checked(GougeType type, Values values) {
        GougeSection section = type.section(values, tubeRadius());
        assertNotNull(section, "no thickness was given");
        double[] breaks = places("angles", section.breaks(), 0, Math.PI / 2);
        double middle = finite("thickness in the middle", section.thickness(0));
        assertTrue(middle < tubeRadius(), "thicker than the tube: " + middle);
        DoubleStream.Builder told = DoubleStream.builder();
        for (double phi : between(0, Math.PI / 2, ANGLES, breaks)) {
            double t = finite("thickness", section.thickness(phi));
            agree("thickness on the other side, at " + phi, t, section.thickness(-phi), 1e-12);
            told.add(t);
        }
        noJump("the thickness", section::thickness, 0, BLADE, breaks);
        for (double phi : between(0.01, BLADE, ANGLES, breaks)) {
            agree("integral to " + phi, finite("integral", section.integral(phi)), Gauss.integrate(section::thickness, 0, phi, breaks), 1e-6);
        }
        return told.build().toArray();
    }
}

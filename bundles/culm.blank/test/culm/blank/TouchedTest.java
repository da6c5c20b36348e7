package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import culm.geometry.GeometryException;
import culm.geometry.profile.Quantity;

/** What is said not to change when an input is moved does not change, and what is computed by the shorter rule is near enough. */
class TouchedTest {
    private static final int BLANKS = 120;
    private static final double BELOW = 0.7;

    @Test
    void whatAnInputIsSaidNotToTouchStaysAsItIs() {
        int untouched = 0;
        int touched = 0;
        for (int i = 0; i < BLANKS; i++) {
            Blank blank = Designs.number(i);
            double top = blank.number(Inputs.STAPLE_LENGTH);
            if (ClosingFinder.find(blank).problem().isPresent()) {
                continue;
            }
            Seam seam = new Seam(blank);
            for (Input input : blank.inputs()) {
                Touched can = Touched.by(blank, input.path());
                double by = input.parameter().quantity() == Quantity.SHARE ? 0.01 : 0.02;
                try {
                    Blank moved = blank.with(input.path(), input.value() + by);
                    Seam other = new Seam(moved);
                    double z = moved.number(Inputs.STAPLE_LENGTH) - BELOW;
                    double needed = other.needed(z) - seam.needed(top - BELOW);
                    double given = other.given(z) - seam.given(top - BELOW);
                    if (!can.needed()) {
                        assertEquals(0, needed, 1e-13, input.path());
                    }
                    if (!can.given()) {
                        assertEquals(0, given, 1e-13, input.path());
                    }
                    untouched += (can.needed() ? 0 : 1) + (can.given() ? 0 : 1);
                    touched += (can.needed() && needed != 0 ? 1 : 0) + (can.given() && given != 0 ? 1 : 0);
                } catch (GeometryException refused) {
                    continue; // out of its range, or a place that is fixed by definition
                }
            }
        }
        assertTrue(untouched > 500 && touched > 500, untouched + " untouched, " + touched + " touched");
    }

    @Test
    void theShorterRuleTellsTheSameDifferences() {
        for (int i = 0; i < BLANKS; i++) {
            Blank blank = Designs.number(i);
            if (ClosingFinder.find(blank).problem().isPresent()) {
                continue;
            }
            Blank thinner = blank.with(Inputs.COMPRESSION, blank.number(Inputs.COMPRESSION) + 0.02);
            double z = blank.number(Inputs.STAPLE_LENGTH) - BELOW;
            double whole = new Seam(thinner).needed(z) - new Seam(blank).needed(z);
            double about = new Seam(thinner).aboutNeeded(z) - new Seam(blank).aboutNeeded(z);
            assertEquals(whole, about, 1e-6, "blank " + i);
        }
    }
}

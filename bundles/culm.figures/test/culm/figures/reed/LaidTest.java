package culm.figures.reed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.figures.Blanks;
import culm.geometry.gouge.Gouge;
import culm.geometry.gouge.GougeSection;
import culm.geometry.section.Ellipse;
import culm.geometry.shape.Edge;

/** The cane as drawn is the cane as computed. */
class LaidTest {
    private final Blank blank = Blanks.example().edit().set(Inputs.SWELL_WIDTH, 0.02).set(Inputs.SWELL_THICKNESS, 0.05).set(Inputs.COMPRESSION, 0.1)
            .set(Inputs.DELTA, 0.01).build();
    private final Reed reed = Reed.of(Blanks.assessed(blank));
    private final Seam seam = new Seam(blank);

    @ParameterizedTest
    @ValueSource(doubles = {35.2, 38, 42, 44, 45.5, 46.4, 47})
    void threeDegreesAStepReachAsFarAsOne(double z) {
        assertEquals(reed.laid(z).reach(reed.edge(z)), reed.laidReach(z), 5e-4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {35.2, 38, 42, 44, 45.5, 46.4, 47})
    void needsAndHasWhatTheSeamSays(double z) {
        Laid laid = reed.laid(z);
        assertEquals(seam.needed(z), laid.needed(), 1e-6);
        assertEquals(seam.given(z), laid.given(reed.edge(z)), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {36, 40, 44})
    void theGapDrawnOnTheMidSurfaceIsTheGapComputed(double z) {
        List<double[]> blade = reed.laid(z).blade(reed.edge(z), 0, 0);
        double meeting = blade.stream().filter(p -> p[0] > 0).mapToDouble(p -> p[1]).min().orElseThrow();
        double staple = reed.outside(z).halfWide();
        double gap = seam.open(z);
        assertTrue(gap > 0);
        // The corner that meets lies on the staple; seen straight, the gap there is a little below the one along the mid-surface.
        assertTrue(2 * meeting < gap && 2 * meeting > 0.6 * gap, "drawn " + 2 * meeting + ", computed " + gap + " on " + staple);
    }

    @Test
    void caneLaidOnItsOwnTubeIsTheCaneAsCut() {
        double r = 5.25;
        double t = 0.58;
        GougeSection concentric = phi -> t;
        Gouge gouge = new Gouge(r, concentric, null, 37);
        Edge edge = Edge.square(Math.asin(3.5 / r), concentric, r);
        Laid laid = new Laid(new Ellipse(r - t, r - t), gouge, concentric, new Laid.Growth(1, 1, 1, 0), Laid.FINE);
        List<double[]> outline = laid.blade(edge, 0, 0);
        for (double[] p : outline) {
            double radius = Math.hypot(p[0], p[1]);
            boolean inside = Math.abs(radius - (r - t)) < 1e-6;
            boolean bark = Math.abs(radius - r) < 1e-6;
            boolean cut = Math.abs(Math.abs(p[0]) - 3.5) < 1e-4;
            assertTrue(inside || bark || cut, "(" + p[0] + ", " + p[1] + ") is on no side of the blade");
        }
        assertEquals(3.5, outline.stream().mapToDouble(p -> p[0]).max().orElseThrow(), 1e-4);
        assertEquals(-3.5, outline.stream().mapToDouble(p -> p[0]).min().orElseThrow(), 1e-4);
        assertEquals(r, outline.stream().mapToDouble(p -> p[1]).max().orElseThrow(), 1e-9);
    }

    @Test
    void pinchedBladesMeetOnTheAxisAndNeverCrossIt() {
        double z = 46.9;
        assertTrue(seam.open(z) < 0);
        List<double[]> blade = reed.laid(z).blade(reed.edge(z), 0, 0);
        double lowest = blade.stream().mapToDouble(p -> p[1]).min().orElseThrow();
        assertEquals(0, lowest, 1e-6);
    }

    @Test
    void theThicknessInTheMiddleIsTrue() {
        List<double[]> bark = reed.laid(44).bark(reed.edge(44), 0, 0);
        double[] middle = bark.get(bark.size() / 2);
        assertEquals(0, middle[0], 1e-9);
        assertEquals(0.60 * 1.05 * 0.9, middle[1] - reed.outside(44).halfNarrow(), 1e-9);
    }

    @Test
    void crookedBladesOpenOneSeamAndCloseTheOther() {
        double z = 42;
        double gap = seam.open(z);
        double shift = 0.15;
        List<double[]> upper = reed.laid(z).blade(reed.edge(z), shift, shift);
        double right = upper.stream().filter(p -> p[0] > 0).mapToDouble(p -> p[1]).min().orElseThrow();
        double left = upper.stream().filter(p -> p[0] < 0).mapToDouble(p -> p[1]).min().orElseThrow();
        assertTrue(left > right, "moved to the right, the left seam opens");
        assertTrue(left - right > 0.6 * 2 * shift && left - right < 2 * shift + 0.01, left + " " + right + " " + gap);
    }

    @ParameterizedTest
    @ValueSource(doubles = {47.5, 55, 65, 71.5})
    void theSketchHasTheQuarterPerimeterTheCaneGives(double z) {
        Sketch sketch = reed.sketch(z);
        assertEquals(seam.given(z), new Ellipse(sketch.wide(), sketch.narrow()).perimeter() / 4, 2e-3 * seam.given(z));
    }

    @Test
    void theSketchMeetsTheStapleAndTheFold() {
        assertEquals(reed.outside(47).halfNarrow(), reed.sketch(47).inside(), 1e-9);
        assertEquals(0, reed.sketch(72).inside(), 1e-9);
        assertEquals(reed.middle(72), reed.sketch(72).outside(), 1e-9);
    }
}

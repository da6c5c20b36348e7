package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.geometry.gouge.Concentric;
import culm.geometry.profile.Values;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.WidthMeasure;

/** Inside widths of edges as they stand, against what follows for them in closed form. */
class InsideWidthsTest {
    private static final double HALF_A_HUNDREDTH = 0.005 + 1e-9;

    private static Blank edges(Blank blank, EdgeKind edges) {
        return blank.edit().cut(new Cut(WidthMeasure.CHORD, edges, true, true)).build();
    }

    /** Cut square to the chord, a blade is as wide inside as outside. */
    @Test
    void squareEdgesAreAsWideInside() {
        Blank blank = edges(Sample.blank(), EdgeKind.SQUARE);
        List<double[]> rows = InsideWidths.of(blank);
        assertEquals(8, rows.size(), "one for each place of the shape");
        for (double[] row : rows) {
            assertEquals(blank.parts().width().at(row[0]), row[1], HALF_A_HUNDREDTH);
        }
    }

    /** Along the radius, and of the same thickness t all over, the inside is narrower by (R - t) / R. */
    @Test
    void radialEdgesAreNarrowerInside() {
        double t = 0.6;
        Blank blank = edges(Sample.blank().edit().shape(Profile.standard(new StraightTaper()))
                .gouge(new Profile<>(new Concentric(), Values.NONE.with("middle", t))).build(), EdgeKind.RADIAL);
        double radius = blank.number(Inputs.TUBE) / 2;
        List<double[]> rows = InsideWidths.of(blank);
        assertEquals(8, rows.size(), "a shape without rows has as many");
        assertEquals(0, rows.get(0)[0]);
        assertEquals(blank.number(Inputs.FOLDED_LENGTH), rows.get(7)[0], HALF_A_HUNDREDTH);
        for (double[] row : rows) {
            assertEquals(blank.parts().width().at(row[0]) * (radius - t) / radius, row[1], 2 * HALF_A_HUNDREDTH);
        }
    }

    @Test
    void whatCannotBeComputedHasNone() {
        assertTrue(InsideWidths.of(Sample.blank().with(Inputs.TUBE, 5)).isEmpty(), "wider than the tube");
    }
}

package culm.geometry.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.geometry.GeometryException;
import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeSection;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.section.Point;

class ShapeValuesTest {
    private static final double R = 5.25;
    private static final ShapeWidth TAPER = new StraightTaper().width(Values.NONE.with("fold", 7.0).with("end", 4.0), 30);

    @Test
    void widths() {
        assertEquals(5.5, TAPER.at(15), 1e-15);
        ShapeWidth waisted = new Waisted().width(Values.NONE.with("fold", 7.0).with("throatAt", 26).with("throat", 4.8).with("end", 5.0), 37);
        assertEquals(4.8, waisted.at(26), 1e-15);
        assertEquals(5.0, waisted.at(37), 1e-15);
        assertTrue(waisted.at(27) < waisted.at(30));
        ShapeWidth measured = new MeasuredShape().width(Values.NONE.with("places", Table.of(new double[] {5, 6.8}, new double[] {30, 4.6})), 37);
        assertEquals(5.7, measured.at(17.5), 1e-14);
        assertThrows(IllegalArgumentException.class, () -> measured.at(4.9));
        assertThrows(GeometryException.class, () -> new Waisted().width(Values.NONE.with("fold", 7.0).with("throatAt", 37).with("throat", 4.8).with("end", 5.0), 37));
    }

    /** Project definition, section 11: the arc of chord 7 on R 5.25 is 7.662140390, its sagitta 1.336881039. */
    @Test
    void chordAndArc() {
        double phi = Edge.barkAngle(7, WidthMeasure.CHORD, R);
        assertEquals(7.662140390, 2 * R * phi, 5e-10);
        assertEquals(1.336881039, R * (1 - Math.cos(phi)), 5e-10);
        assertEquals(phi, Edge.barkAngle(2 * R * phi, WidthMeasure.ARC, R), 1e-15);
        GeometryException wide = assertThrows(GeometryException.class, () -> Edge.barkAngle(10.51, WidthMeasure.CHORD, R));
        assertEquals("A width of 10.51 mm does not fit on a tube of 10.50 mm.", wide.getMessage());
        assertEquals(Math.PI / 2, Edge.barkAngle(10.5, WidthMeasure.CHORD, R), 1e-15);
    }

    @Test
    void edges() {
        GougeSection even = new Concentric().section(Values.NONE.with("middle", 0.6), R);
        double outer = Edge.barkAngle(5, WidthMeasure.CHORD, R);
        Edge square = Edge.square(outer, even, R);
        assertEquals(Math.asin(2.5 / 4.65), square.inner(), 1e-12);
        assertEquals(square.inner(), square.meeting());
        GougeSection thin = new MiddleAndSide().section(Values.NONE.with("middle", 0.6).with("side", 0.45).with("sideAt", 3.5), R);
        Edge two = Edge.twoWidths(outer, 4.4, thin, R);
        assertEquals(2.2, (R - thin.thickness(two.inner())) * Math.sin(two.inner()), 1e-12);
        assertTrue(two.inner() < two.outer());
        assertEquals(two.outer(), two.meeting());
        assertThrows(GeometryException.class, () -> Edge.square(Edge.barkAngle(10, WidthMeasure.CHORD, R), even, R));
    }

    @Test
    void flatOutlineWithEars() {
        Outline outline = new Outline(TAPER, WidthMeasure.CHORD, R, 30, 0.8, 3);
        List<Point> folded = outline.folded(WidthMeasure.CHORD, 0.01);
        assertEquals(area(folded), 30 * 5.5 + 2 * 0.8 * 3, 1e-9);
        List<Point> unfolded = outline.unfolded(WidthMeasure.CHORD, 0.01);
        assertEquals(2 * area(folded), area(unfolded), 1e-9);
        assertTrue(area(folded) > 0, "counterclockwise");
        assertEquals(8.6, outline.widthAt(0, WidthMeasure.CHORD), 1e-15);
        assertEquals(-30, unfolded.stream().mapToDouble(Point::x).min().getAsDouble());
        assertEquals(unfolded.size(), unfolded.stream().distinct().count(), "no point twice");
        assertEquals(folded.size(), folded.stream().distinct().count(), "no point twice");
        for (Point p : folded) {
            assertTrue(folded.contains(new Point(p.x(), -p.y())), "both sides alike");
        }
    }

    /** Flattened, the outline is as wide as the arc; a curved side is met to the tolerance. */
    @Test
    void flattenedOutline() {
        Outline outline = new Outline(TAPER, WidthMeasure.CHORD, R, 30, 0, 0);
        assertEquals(7.662140390, outline.widthAt(0, WidthMeasure.ARC), 5e-10);
        List<Point> fine = outline.folded(WidthMeasure.ARC, 1e-4);
        double exact = culm.geometry.numeric.Gauss.integrate(s -> outline.widthAt(s, WidthMeasure.ARC), 0, 30);
        assertEquals(exact, area(fine), 30 * 1e-4);
        assertTrue(outline.folded(WidthMeasure.ARC, 0.05).size() < fine.size());
        Outline back = new Outline(s30(outline), WidthMeasure.ARC, R, 30, 0, 0);
        assertEquals(TAPER.at(11), back.widthAt(11, WidthMeasure.CHORD), 1e-12);
    }

    private static ShapeWidth s30(Outline outline) {
        return new ShapeWidth() {
            @Override
            public double to() {
                return 30;
            }

            @Override
            public double at(double s) {
                return outline.widthAt(s, WidthMeasure.ARC);
            }
        };
    }

    private static double area(List<Point> polygon) {
        double twice = 0;
        for (int i = 0; i < polygon.size(); i++) {
            Point a = polygon.get(i);
            Point b = polygon.get((i + 1) % polygon.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }
}

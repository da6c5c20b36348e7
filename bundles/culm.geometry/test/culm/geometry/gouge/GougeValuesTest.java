package culm.geometry.gouge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Gauss;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.shape.Edge;
import culm.geometry.shape.WidthMeasure;

class GougeValuesTest {
    private static final double R = 5.25;

    private static GougeSection section(GougeType type, double... numbers) {
        Values values = Values.NONE;
        List<Parameter> parameters = type.parameters();
        for (int i = 0; i < parameters.size(); i++) {
            values = values.with(parameters.get(i).id(), numbers[i]);
        }
        return type.section(values, R);
    }

    private static GougeSection measured() {
        return new MeasuredGouge().section(Values.NONE.with("places", Table.of(new double[] {0, 0.6}, new double[] {2, 0.55}, new double[] {3.5, 0.46})), R);
    }

    @ParameterizedTest
    @CsvFileSource(files = "test/values/gouge-thickness.csv", numLinesToSkip = 1)
    void thickness(String id, double first, Double second, Double third, double tube, double halfChord, double expected, double tolerance, String source) {
        GougeType type = List.of(new Concentric(), new OffsetCircle(), new MiddleAndSide()).stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
        GougeSection gouge = section(type, first, second == null ? 0 : second, third == null ? 0 : third);
        assertEquals(tube, 2 * R);
        assertEquals(expected, gouge.thickness(Math.asin(halfChord / R)), tolerance, source);
    }

    /** Project definition, section 11: middle 0.60, side 0.45 at 3.5 give r 5.310968, e -0.660968. */
    @Test
    void middleAndSideFindTheCuttersCircle() {
        CircularGouge circle = (CircularGouge) section(new MiddleAndSide(), 0.60, 0.45, 3.5);
        assertEquals(5.310968, circle.cuttingRadius(), 5e-7);
        assertEquals(-0.660968, circle.offset(), 5e-7);
    }

    /** Closed integrals and smallest values against quadrature and samples. */
    @Test
    void integralsAndSmallestValues() {
        for (GougeSection gouge : List.of(section(new Concentric(), 0.58), section(new OffsetCircle(), 0.6, 5.5), section(new MiddleAndSide(), 0.6, 0.45, 3.5),
                section(new MiddleAndSide(), 0.5, 0.65, 3.5), section(new OffsetCircle(), 0.6, 9), measured(),
                new BlendedGouge(section(new Concentric(), 0.58), measured(), 0.3))) {
            for (double phi : new double[] {1e-3, 0.2, 0.5, 0.9, 1.5}) {
                assertEquals(Gauss.integrate(gouge::thickness, 0, phi, gouge.breaks()), gouge.integral(phi), 1e-12);
                double least = Double.POSITIVE_INFINITY;
                for (int i = 0; i <= 400; i++) {
                    least = Math.min(least, gouge.thickness(phi * i / 400));
                }
                assertTrue(gouge.smallest(phi) <= least + 1e-15);
                assertTrue(gouge.smallest(phi) > 0 == least > 0);
            }
        }
    }

    @Test
    void twoPlacesAreBlendedAlong() {
        Gouge gouge = new Gouge(R, section(new Concentric(), 0.60), section(new Concentric(), 0.50), 37);
        assertEquals(0.60, gouge.at(0).thickness(0.3), 1e-15);
        assertEquals(0.55, gouge.at(18.5).thickness(0.3), 1e-15);
        assertEquals(0.50, gouge.at(37).thickness(0.3), 1e-15);
        assertTrue(gouge.changesAlong());
    }

    @Test
    void theLastRowHoldsBeyondIt() {
        assertEquals(0.46, measured().thickness(3.5 / R), 1e-15);
        assertEquals(0.46, measured().thickness(1.4), 1e-15);
        assertEquals(0.55, measured().thickness(2 / R), 1e-15);
    }

    @ParameterizedTest
    @CsvFileSource(files = "test/values/area-moments.csv", numLinesToSkip = 1)
    void annularSector(double outer, double inner, double halfAngle, double area, double centroid, double aboutX, double aboutY, double tolerance,
            String source) {
        AreaMoments m = new AnnularSector(outer, inner, halfAngle).moments();
        assertEquals(area, m.area(), tolerance, source);
        assertEquals(centroid, m.centroid(), tolerance, source);
        assertEquals(aboutX, m.aboutX(), tolerance, source);
        assertEquals(aboutY, m.aboutY(), tolerance, source);
    }

    @Test
    void aConcentricBladeCutAlongTheRadiusIsAnAnnularSector() {
        AreaMoments closed = new AnnularSector(R, R - 0.6, 0.45).moments();
        AreaMoments found = new BladeSection(section(new Concentric(), 0.6), R, 0.45, 0.45).moments();
        assertEquals(closed.area(), found.area(), 1e-12);
        assertEquals(closed.centroid(), found.centroid(), 1e-12);
        assertEquals(closed.aboutX(), found.aboutX(), 1e-11);
        assertEquals(closed.aboutY(), found.aboutY(), 1e-11);
    }

    /** Two circles between two upright edges, integrated in x to 30 digits by an arbitrary-precision library; chord 4.83, middle 0.60, side 0.45 at 3.5. */
    @Test
    void aBladeWithSquareEdges() {
        GougeSection gouge = section(new MiddleAndSide(), 0.6, 0.45, 3.5);
        Edge edge = Edge.square(Edge.barkAngle(4.83, WidthMeasure.CHORD, R), gouge, R);
        assertEquals(0.477995198518952, edge.outer(), 1e-14);
        assertEquals(0.535617423684094, edge.inner(), 1e-12);
        AreaMoments m = new BladeSection(gouge, R, edge.outer(), edge.inner()).moments();
        assertEquals(2.88662712636745, m.area(), 1e-12);
        assertEquals(4.76029104384477, m.centroid(), 1e-12);
        assertEquals(0.171872015802718, m.aboutX(), 1e-11);
        assertEquals(5.59333659124475, m.aboutY(), 1e-11);
    }

    @Test
    void numbersThatDoNotGoTogetherAreRefused() {
        assertEquals("sideAt", assertThrows(GeometryException.class, () -> section(new MiddleAndSide(), 0.6, 0.45, 5.3)).path());
        assertThrows(IllegalArgumentException.class, () -> new AnnularSector(1, 2, 0.5));
    }
}

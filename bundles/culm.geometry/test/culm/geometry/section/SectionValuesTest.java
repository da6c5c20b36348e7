package culm.geometry.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Gauss;

class SectionValuesTest {
    @ParameterizedTest
    @CsvFileSource(files = "test/values/ellipse-perimeter.csv", numLinesToSkip = 1)
    void perimeterOfAnEllipse(double a, double b, double expected, double tolerance, String source) {
        assertEquals(expected, new Ellipse(a, b).perimeter(), tolerance, source);
    }

    @ParameterizedTest
    @CsvFileSource(files = "test/values/parallel-curve.csv", numLinesToSkip = 1)
    void parallelCurve(double a, double b, double distance, double perimeter, double area, double tolerance, String source) {
        Section section = new ParallelSection(new Ellipse(a, b), distance);
        assertEquals(perimeter, section.perimeter(), tolerance, source);
        assertEquals(area, section.area(), tolerance, source);
    }

    /** The arithmetic-geometric mean (NIST DLMF 19.8.6), a second way to the perimeter. */
    @Test
    void perimeterAgreesWithTheArithmeticGeometricMean() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 1000; i++) {
            double a = 0.5 + 3 * random.nextDouble();
            double b = a * (0.02 + 0.98 * random.nextDouble());
            double x = 1;
            double y = b / a;
            double sum = 1 - y * y;
            double power = 1;
            for (int k = 0; k < 8; k++) {
                double c = (x - y) / 2;
                double mean = (x + y) / 2;
                y = Math.sqrt(x * y);
                x = mean;
                power *= 2;
                sum += power * c * c;
            }
            double expected = 4 * a * Math.PI / (2 * x) * (1 - sum / 2);
            assertEquals(expected, new Ellipse(a, b).perimeter(), 1e-13 * expected);
        }
    }

    /** Whoever adds a section may leave these to the interface: its quadrature and search against the closed forms. */
    @ParameterizedTest
    @CsvSource({"2.3,1.3", "1,1", "1.3,2.3", "3,0.5"})
    void defaultsAgreeWithClosedForms(double a, double b) {
        Ellipse oval = new Ellipse(a, b);
        Section bare = new Section() {
            @Override
            public double support(double psi) {
                return oval.support(psi);
            }

            @Override
            public double supportSlope(double psi) {
                return oval.supportSlope(psi);
            }

            @Override
            public double curvatureRadius(double psi) {
                return oval.curvatureRadius(psi);
            }
        };
        assertEquals(oval.perimeter(), bare.perimeter(), 1e-12 * oval.perimeter());
        assertEquals(oval.area(), bare.area(), 1e-12 * oval.area());
        assertEquals(oval.smallestRadius(), bare.smallestRadius(), 1e-9);
    }

    /** h' and rho are the derivatives they should be, and the boundary point lies on the ellipse with the normal asked for. */
    @Test
    void slopeRadiusAndBoundary() {
        Ellipse oval = new Ellipse(2.3, 1.3);
        double step = 1e-4;
        for (double psi = 0; psi < 7; psi += 0.37) {
            double before = oval.support(psi - step);
            double after = oval.support(psi + step);
            assertEquals((after - before) / (2 * step), oval.supportSlope(psi), 1e-7);
            assertEquals(oval.support(psi) + (after - 2 * oval.support(psi) + before) / (step * step), oval.curvatureRadius(psi), 1e-6);
            Point p = oval.boundary(psi);
            assertEquals(1, p.x() * p.x() / (2.3 * 2.3) + p.y() * p.y() / (1.3 * 1.3), 1e-14);
            assertEquals(0, p.x() / (2.3 * 2.3) * Math.sin(psi) - p.y() / (1.3 * 1.3) * Math.cos(psi), 1e-14);
        }
    }

    @Test
    void aBlendIsMinkowskisSum() {
        Ellipse circle = new Ellipse(2.4, 2.4);
        Ellipse oval = new Ellipse(1.9, 1.1);
        BlendSection half = new BlendSection(circle, oval, 0.5);
        double mixed = 0.25 * circle.area() + 0.25 * oval.area() + 0.25 * 2.4 * oval.perimeter();
        assertEquals(mixed, half.area(), 1e-12 * mixed);
        assertEquals(0.5 * circle.perimeter() + 0.5 * oval.perimeter(), half.perimeter(), 1e-14);
        assertEquals(0.5 * 2.4 + 0.5 * 1.1 * 1.1 / 1.9, half.smallestRadius(), 1e-14);
        BlendSection crossed = new BlendSection(oval, new Ellipse(1.1, 1.9), 0.5);
        assertTrue(crossed.smallestRadius() > oval.smallestRadius());
        assertEquals(crossed.curvatureRadius(Math.PI / 4), crossed.smallestRadius(), 1e-9);
    }

    @Test
    void aWallThatDoesNotFitIsRefusedWithItsReason() {
        GeometryException refused = assertThrows(GeometryException.class, () -> new ParallelSection(new Ellipse(4, 0.2), -0.25));
        assertEquals("wall", refused.path());
        assertEquals("A wall of 0.25 mm does not fit inside an oval of 8.00 by 0.40 mm: its sharpest bend has a radius of only 0.01 mm.", refused.getMessage());
        assertNotEquals(refused.getMessage(), refused.told(), "its lengths can be told in another unit");
        assertThrows(GeometryException.class, () -> new Ellipse(0, 1));
        assertThrows(GeometryException.class, () -> new Ellipse(1, Double.NaN));
    }

    /** The error that the documentation of the sampled section states. */
    @Test
    void aSampledSectionConverges() {
        Ellipse oval = new Ellipse(2.3, 1.3);
        assertEquals(0, worst(oval, SampledSection.of(oval, 8)), 4e-5);
        assertEquals(0, worst(oval, SampledSection.of(oval, 16)), 1e-8);
        SampledSection fine = SampledSection.of(oval, 32);
        assertEquals(0, worst(oval, fine), 1e-13);
        assertEquals(oval.perimeter(), fine.perimeter(), 1e-12);
        assertEquals(oval.area(), fine.area(), 1e-12);
        assertEquals(oval.smallestRadius(), fine.smallestRadius(), 1e-9);
        assertEquals(oval.supportSlope(0.7), fine.supportSlope(0.7), 1e-11);
        assertEquals(2 * Gauss.integrate(psi -> fine.support(psi) * fine.curvatureRadius(psi), 0, Math.PI / 2), fine.area(), 1e-12);
    }

    private static double worst(Section a, Section b) {
        double worst = 0;
        for (double psi = 0; psi < 1.6; psi += 0.01) {
            worst = Math.max(worst, Math.abs(a.support(psi) - b.support(psi)));
        }
        return worst;
    }

    @Test
    void sampledWidthsOfARoundRodAndOfNoOval() {
        SampledSection rod = SampledSection.ofWidths(5, 5, 5);
        assertEquals(5 * Math.PI, rod.perimeter(), 1e-14);
        assertEquals(2.5, rod.smallestRadius(), 1e-9);
        GeometryException dented = assertThrows(GeometryException.class, () -> SampledSection.ofWidths(5, 3, 5));
        assertTrue(dented.getMessage().startsWith("These widths do not belong to an oval"));
        assertThrows(GeometryException.class, () -> SampledSection.ofWidths(5, -3, 5));
        assertThrows(GeometryException.class, () -> SampledSection.ofWidths(5));
    }
}

package culm.geometry.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class NumericTest {
    private static final Pchip ROWS = new Pchip(new double[] {0, 1, 2, 3}, new double[] {1, 3, 3, 0});

    @ParameterizedTest
    @CsvFileSource(files = "test/values/pchip.csv", numLinesToSkip = 1)
    void monotoneCubic(double x, double expected, double slope, double tolerance, String source) {
        assertEquals(expected, ROWS.value(x), tolerance, source);
        assertEquals(slope, ROWS.slope(x), tolerance, source);
    }

    /** Inner slope for unequal steps: secants 1 and 4 over steps 1 and 2 give 9 / (5/1 + 4/4) = 1.5 (Fritsch and Butland 1984). */
    @Test
    void innerSlopeIsTheWeightedHarmonicMean() {
        Pchip rows = new Pchip(new double[] {0, 1, 3}, new double[] {0, 1, 9});
        assertEquals(1.5, rows.slope(1), 1e-15);
        assertEquals(0, rows.slope(0), 1e-15, "((2 + 2) 1 - 1 * 4) / 3 = 0");
    }

    @Test
    void endSlopeIsAtMostThreeTimesTheSecantWhenTheLastTwoDifferInSign() {
        Pchip rows = new Pchip(new double[] {0, 1, 2}, new double[] {0, 1, -9});
        assertEquals(3, rows.slope(0), 1e-15, "(3 * 1 + 10) / 2 = 6.5 is cut to 3");
        Pchip other = new Pchip(new double[] {0, 1, 2}, new double[] {0, 1, 9});
        assertEquals(0, other.slope(0), 1e-15, "(3 * 1 - 8) / 2 has the other sign");
    }

    @Test
    void staysBetweenItsRowsAndIntegratesExactly() {
        SplittableRandom random = new SplittableRandom(3);
        for (int trial = 0; trial < 200; trial++) {
            double[] x = new double[6];
            double[] y = new double[6];
            for (int i = 0; i < 6; i++) {
                x[i] = i == 0 ? 0 : x[i - 1] + 0.1 + random.nextDouble();
                y[i] = random.nextDouble();
            }
            Pchip rows = new Pchip(x, y);
            for (int i = 0; i < 5; i++) {
                for (double u = 0; u <= 1; u += 0.05) {
                    double value = rows.value(Math.min(x[i + 1], x[i] + u * (x[i + 1] - x[i])));
                    assertTrue(value >= Math.min(y[i], y[i + 1]) - 1e-15 && value <= Math.max(y[i], y[i + 1]) + 1e-15);
                }
            }
            double to = x[0] + random.nextDouble() * (x[5] - x[0]);
            assertEquals(Gauss.integrate(rows::value, 0, to, x), rows.integral(to), 1e-13);
        }
    }

    @Test
    void twoRowsAreAStraightLineAndNothingIsExtrapolated() {
        Pchip line = new Pchip(new double[] {1, 3}, new double[] {5, 9});
        assertEquals(6, line.value(1.5), 1e-15);
        assertThrows(IllegalArgumentException.class, () -> line.value(0.999));
        assertThrows(IllegalArgumentException.class, () -> line.value(3.001));
        assertThrows(IllegalArgumentException.class, () -> new Pchip(new double[] {1, 1}, new double[] {5, 9}));
        assertThrows(IllegalArgumentException.class, () -> new Pchip(new double[] {1, Double.NaN}, new double[] {5, 9}));
    }

    @Test
    void gaussIsExactForPolynomialsAndRefinesWhereNeeded() {
        assertEquals(Math.pow(2, 24) / 24, Gauss.panel(x -> Math.pow(x, 23), 0, 2), 1e-9);
        assertEquals(2.0 / 3, Gauss.integrate(x -> Math.sqrt(Math.abs(x)), 0, 1), 1e-12);
        assertEquals(1, Gauss.integrate(Math::abs, -1, 1, new double[] {0}), 1e-15);
        assertEquals(-Math.sin(1), Gauss.integrate(Math::cos, 1, 0), 1e-15);
        assertEquals(0, Gauss.integrate(Math::cos, 1, 1));
    }

    @Test
    void collocationMeetsPolynomialsAndTellsItsTail() {
        Collocation rule = new Collocation(20);
        double[] slopes = new double[rule.stages()];
        Arrays.setAll(slopes, i -> 7 * Math.pow(rule.node(i), 6));
        assertEquals(1, rule.whole(slopes), 1e-15);
        for (int stages : new int[] {20, 7}) {
            Collocation of = new Collocation(stages);
            double[] come = new double[stages];
            of.advance(IntStream.range(0, stages).mapToDouble(i -> 7 * Math.pow(of.node(i), 6)).toArray(), come);
            for (int i = 0; i < stages; i++) {
                assertEquals(Math.pow(of.node(i), 7), come[i], 1e-14);
            }
        }
        assertEquals(0, rule.tail(slopes), 1e-13);
        Arrays.setAll(slopes, i -> 1 / (1e-4 + Math.pow(rule.node(i) - 0.5, 2)));
        assertTrue(rule.tail(slopes) > 1e-3, "a sharp peak is not accepted");
        assertThrows(IllegalArgumentException.class, () -> new Collocation(2));
    }

    @Test
    void chebyshevStandsForASmoothFunction() {
        Chebyshev sine = Chebyshev.of(Math::sin, -1, 8, 24);
        for (double x = -1; x <= 8; x += 0.1) {
            assertEquals(Math.sin(x), sine.value(x), 1e-12);
            assertEquals(Math.cos(x), sine.slope(x), 1e-10);
        }
        assertTrue(sine.tail() < 1e-10);
        assertClose(List.of(0.0, Math.PI, 2 * Math.PI), sine.roots());
        assertClose(List.of(Math.PI / 2, 1.5 * Math.PI, 2.5 * Math.PI), sine.turns());
        assertEquals(Math.sin(-1), sine.value(-1), 1e-14);
        assertEquals(0, Chebyshev.node(0, 2, 8, 8));
        assertEquals(2, Chebyshev.node(0, 2, 0, 8));
    }

    private static void assertClose(List<Double> expected, List<Double> found) {
        assertEquals(expected.size(), found.size(), () -> "roots " + found);
        for (int i = 0; i < found.size(); i++) {
            assertEquals(expected.get(i), found.get(i), 1e-9);
        }
    }

    @Test
    void rootsAndMinima() {
        assertEquals(Math.sqrt(2), Roots.between(x -> x * x - 2, 0, 2), Roots.TOLERANCE);
        assertEquals(0, Roots.between(x -> x, 0, 2));
        assertEquals(1, Roots.between(x -> x == 1 ? -Double.MIN_VALUE : x - 1, 0, 2), "a value that is all but nothing");
        assertEquals(1, Roots.between(x -> x == 1 ? 1e-200 : 1e-200 * (x - 1), 0, 2), 1, "values whose products vanish");
        Minimum least = Minimum.between(x -> (x - 0.3) * (x - 0.3) + 1, 0, 1, 4);
        assertEquals(0.3, least.at(), 1e-7);
        assertEquals(1, least.value(), 1e-13);
        assertEquals(0, Minimum.between(x -> x, 0, 1, 4).at(), 1e-9);
    }
}

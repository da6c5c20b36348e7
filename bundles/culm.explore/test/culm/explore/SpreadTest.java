package culm.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.junit.jupiter.api.Test;

import culm.explore.internal.run.Uniforms;

class SpreadTest {
    private static final int N = 100_000;

    private static double[] uniforms(String name) {
        double[] u = new double[N];
        new Uniforms(42, name).fill(0, new long[N], u, N);
        return u;
    }

    @Test
    void quantilesAreThoseOfHipparchus() {
        double[] u = uniforms("x");
        u[0] = 1e-12;
        u[1] = 1 - 1e-12;
        u[2] = 0.075;
        u[3] = 0.925;
        u[4] = 0.5;
        double[] out = new double[N];
        NormalDistribution normal = new NormalDistribution(10, 0.1);
        new Spread.Normal(0.1).fill(u, 10, out, N);
        for (int i = 0; i < 2000; i++) {
            assertEquals(normal.inverseCumulativeProbability(u[i]), out[i], 1e-9, "normal at " + u[i]);
        }
        TriangularDistribution triangle = new TriangularDistribution(9.9, 10.1, 10.3);
        Spread.Triangular ours = new Spread.Triangular(-0.1, 0.1, 0.3);
        ours.fill(u, 10, out, N);
        for (int i = 0; i < 2000; i++) {
            assertEquals(triangle.inverseCumulativeProbability(u[i]), out[i], 1e-9, "triangle at " + u[i]);
            assertEquals(out[i], ours.at(u[i], 10));
        }
    }

    @Test
    void drawsAreEvenAndIndependent() {
        double[] x = uniforms("tie.length");
        double[] y = uniforms("gouge.tube");
        int[] cells = new int[100];
        double product = 0;
        double next = 0;
        for (int i = 0; i < N; i++) {
            cells[(int) (10 * x[i]) * 10 + (int) (10 * y[i])]++;
            product += (x[i] - 0.5) * (y[i] - 0.5);
            next += (x[i] - 0.5) * (x[(i + 1) % N] - 0.5);
        }
        double chi = Arrays.stream(cells).mapToDouble(c -> (c - N / 100.0) * (c - N / 100.0) / (N / 100.0)).sum();
        assertTrue(chi > 50 && chi < 160, "chi square of 100 cells: " + chi);
        assertEquals(0, product / N * 12, 5 / Math.sqrt(N));
        assertEquals(0, next / N * 12, 5 / Math.sqrt(N));
    }

    @Test
    void measuredRowsOfOneGroupStayTogether() {
        Spread.Measured a = new Spread.Measured(new double[] {1, 2, 3}, "staples");
        Spread.Measured b = new Spread.Measured(new double[] {10, 20, 30}, "staples");
        for (double u : new double[] {0.01, 0.34, 0.99}) {
            assertEquals(10 * a.at(u, 0), b.at(u, 0));
        }
    }

    @Test
    void wrongSpreadsAreRefused() {
        List<Runnable> wrong = List.of(() -> new Spread.Uniform(-1), () -> new Spread.Normal(0), () -> new Spread.Triangular(1, 0, 2),
                () -> new Spread.Measured(new double[0], ""), () -> new Spread.Measured(new double[] {Double.NaN}, ""));
        wrong.forEach(w -> assertThrows(IllegalArgumentException.class, w::run));
    }

    /** Wilson's interval; 8 of 10 gives 0.4902 to 0.9433, 0 of 10 gives 0 to 0.2775 (computed from the formula by hand). */
    @Test
    void sharesHaveWilsonIntervals() {
        Share eight = new Share(8, 10);
        assertEquals(0.4902, eight.low(), 5e-5);
        assertEquals(0.9433, eight.high(), 5e-5);
        assertEquals(0, new Share(0, 10).low());
        assertEquals(0.2775, new Share(0, 10).high(), 5e-5);
    }
}

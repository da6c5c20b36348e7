package culm.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.junit.jupiter.api.Test;

import culm.blank.chance.Propagation;
import culm.explore.internal.run.Uniforms;

/** The examples of JCGM 101:2008 through the draws and spreads of a tolerance run. */
class JcgmTest {
    private static final int DRAWS = 1_000_000;
    private static final ToDoubleFunction<double[]> SUM = x -> Arrays.stream(x).sum();

    private static List<In> four(Spread last) {
        List<In> in = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            in.add(new In("x" + i, 0, i < 3 ? new Spread.Uniform(Math.sqrt(3)) : last));
        }
        return in;
    }

    /** 9.2.2: four standard normal inputs: u = 2, 95 % half-width 3.92. */
    @Test
    void fourNormals() {
        List<In> in = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            in.add(new In("x" + i, 0, new Spread.Normal(1)));
        }
        Propagation out = run(in, SUM);
        assertEquals(0, out.mean(), 0.01);
        assertEquals(2.0, out.standardUncertainty(), 0.006);
        assertEquals(3.92, out.symmetric(0.95).half(), 0.02);
    }

    /** 9.2.3: four rectangular inputs of u = 1: u = 2, exact 95 % half-width 3.8794067. */
    @Test
    void fourRectangles() {
        Propagation out = run(four(new Spread.Uniform(Math.sqrt(3))), SUM);
        assertEquals(0, out.mean(), 0.01);
        assertEquals(2.0, out.standardUncertainty(), 0.006);
        assertEquals(3.8794067, out.symmetric(0.95).half(), 0.015);
    }

    /** 9.2.4: one of them with u = 10: u = 10.1, 95 % half-width about 17.0. */
    @Test
    void oneWideRectangle() {
        Propagation out = run(four(new Spread.Uniform(10 * Math.sqrt(3))), SUM);
        assertEquals(10.1, out.standardUncertainty(), 0.05);
        assertEquals(17.0, out.symmetric(0.95).half(), 0.05);
    }

    /**
     * 9.3: mass calibration in air, deviation from nominal in mg: mean 1.2340, u 0.0754, shortest 95 % interval 1.0834 to 1.3825 by propagation. Values from
     * 9.3.2: m(R,c) normal 100 000.000 u 0.050; delta m normal 1.234 u 0.020; rho air 1.10 to 1.30; rho W 7 000 to 9 000; rho R 7 950 to 8 050.
     */
    @Test
    void massCalibration() {
        List<In> in = List.of(new In("reference", 100_000.000, new Spread.Normal(0.050)), new In("added", 1.234, new Spread.Normal(0.020)),
                new In("air", 1.20, new Spread.Uniform(0.10)), new In("weight", 8_000, new Spread.Uniform(1_000)),
                new In("referenceDensity", 8_000, new Spread.Uniform(50)));
        ToDoubleFunction<double[]> model = x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
        Propagation out = run(in, model);
        assertEquals(1.2340, out.mean(), 0.0005);
        assertEquals(0.0754, out.standardUncertainty(), 0.0005);
        assertEquals(1.0834, out.quantile(0.025), 0.002);
        assertEquals(1.3825, out.quantile(0.975), 0.002);
    }

    private record In(String name, double value, Spread spread) {
    }

    private static Propagation run(List<In> inputs, ToDoubleFunction<double[]> model) {
        double[][] x = new double[inputs.size()][DRAWS];
        double[] u = new double[DRAWS];
        for (int i = 0; i < x.length; i++) {
            new Uniforms(1, inputs.get(i).name()).fill(0, new long[DRAWS], u, DRAWS);
            inputs.get(i).spread().fill(u, inputs.get(i).value(), x[i], DRAWS);
        }
        double[] y = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            int draw = d;
            y[d] = model.applyAsDouble(java.util.stream.IntStream.range(0, x.length).mapToDouble(i -> x[i][draw]).toArray());
        }
        return Propagation.ofValues(y);
    }
}

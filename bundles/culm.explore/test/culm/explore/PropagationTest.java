package culm.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.junit.jupiter.api.Test;

/** The examples of JCGM 101:2008 through the engine's draws. */
class PropagationTest {
    private static final int DRAWS = 1_000_000;
    private static final ToDoubleFunction<double[]> SUM = x -> Arrays.stream(x).sum();

    private static List<Propagation.In> four(Spread last) {
        List<Propagation.In> in = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            in.add(new Propagation.In("x" + i, 0, i < 3 ? new Spread.Uniform(Math.sqrt(3)) : last));
        }
        return in;
    }

    /** 9.2.2: four standard normal inputs: u = 2, 95 % half-width 3.92. */
    @Test
    void fourNormals() {
        List<Propagation.In> in = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            in.add(new Propagation.In("x" + i, 0, new Spread.Normal(1)));
        }
        Propagation.Out out = Propagation.run(in, SUM, DRAWS, 1, 2);
        assertEquals(0, out.mean(), 0.01);
        assertEquals(2.0, out.deviation(), 0.006);
        assertEquals(3.92, out.halfWidth(0.95), 0.02);
    }

    /** 9.2.3: four rectangular inputs of u = 1: u = 2, exact 95 % half-width 3.8794067. */
    @Test
    void fourRectangles() {
        Propagation.Out out = Propagation.run(four(new Spread.Uniform(Math.sqrt(3))), SUM, DRAWS, 1, 2);
        assertEquals(0, out.mean(), 0.01);
        assertEquals(2.0, out.deviation(), 0.006);
        assertEquals(3.8794067, out.halfWidth(0.95), 0.015);
    }

    /** 9.2.4: one of them with u = 10: u = 10.1, 95 % half-width about 17.0. */
    @Test
    void oneWideRectangle() {
        Propagation.Out out = Propagation.run(four(new Spread.Uniform(10 * Math.sqrt(3))), SUM, DRAWS, 1, 2);
        assertEquals(10.1, out.deviation(), 0.05);
        assertEquals(17.0, out.halfWidth(0.95), 0.05);
    }

    /**
     * 9.3: mass calibration in air, deviation from nominal in mg: mean 1.2340, u 0.0754, shortest 95 % interval 1.0834 to 1.3825 by propagation. Values from
     * 9.3.2: m(R,c) normal 100 000.000 u 0.050; delta m normal 1.234 u 0.020; rho air 1.10 to 1.30; rho W 7 000 to 9 000; rho R 7 950 to 8 050.
     */
    @Test
    void massCalibration() {
        List<Propagation.In> in = List.of(new Propagation.In("reference", 100_000.000, new Spread.Normal(0.050)), new Propagation.In("added", 1.234, new Spread.Normal(0.020)),
                new Propagation.In("air", 1.20, new Spread.Uniform(0.10)), new Propagation.In("weight", 8_000, new Spread.Uniform(1_000)),
                new Propagation.In("referenceDensity", 8_000, new Spread.Uniform(50)));
        ToDoubleFunction<double[]> model = x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
        Propagation.Out out = Propagation.run(in, model, DRAWS, 1, 2);
        assertEquals(1.2340, out.mean(), 0.0005);
        assertEquals(0.0754, out.deviation(), 0.0005);
        assertEquals(1.0834, out.quantile(0.025), 0.002);
        assertEquals(1.3825, out.quantile(0.975), 0.002);
    }

    @Test
    void threadsDoNotShow() {
        Propagation.Out one = Propagation.run(four(new Spread.Normal(2)), SUM, 20_000, 3, 1);
        Propagation.Out many = Propagation.run(four(new Spread.Normal(2)), SUM, 20_000, 3, 8);
        assertEquals(one.mean(), many.mean());
        assertEquals(one.quantile(0.1), many.quantile(0.1));
    }
}

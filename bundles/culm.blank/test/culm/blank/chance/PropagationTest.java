package culm.blank.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Sample;
import culm.blank.chance.Distribution.Fixed;
import culm.blank.chance.Distribution.Measured;
import culm.blank.chance.Distribution.Normal;
import culm.blank.chance.Distribution.Triangular;
import culm.blank.chance.Distribution.Uniform;

class PropagationTest {
    private static final int DRAWS = 400_000;
    private static final long SEED = 20080101;
    private static final Stack STACK = new Stack(List.of(Stack.Term.of("folded length", 1, 36, 0.3), Stack.Term.of("tie length", -1, 72, 0.3),
            Stack.Term.of("staple", 1, 47, 0.1)));

    @ParameterizedTest
    @CsvFileSource(files = "test/values/propagation.csv", numLinesToSkip = 1)
    void examples(String example, String result, double expected, double tolerance, String source) {
        double found = switch (example) {
            case "stack" -> switch (result) {
                case "nominal" -> STACK.nominal();
                case "worstCase" -> STACK.worstCase();
                default -> STACK.rootSumOfSquares();
            };
            case "9.2.3" -> symmetric(result, sum(1));
            case "9.2.4" -> symmetric(result, sum(10));
            default -> mass(result);
        };
        assertEquals(expected, found, tolerance, source);
    }

    private static Propagation sum(double last) {
        Distribution one = new Uniform(0, Math.sqrt(3));
        return Propagation.of(x -> x[0] + x[1] + x[2] + x[3], List.of(one, one, one, new Uniform(0, last * Math.sqrt(3))), DRAWS, SEED);
    }

    private static double symmetric(String result, Propagation p) {
        return result.equals("u") ? p.standardUncertainty() : p.symmetric(0.95).half();
    }

    /** 9.3: (m_Rc + dm_Rc) (1 + (a - 1.2) (1/rho_W - 1/rho_R)) - 100000, mg and kg/m^3. */
    private static double mass(String result) {
        Propagation p = Propagation.of(x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000, List.of(new Normal(100_000, 0.050),
                new Normal(1.234, 0.020), new Uniform(1.2, 0.1), new Uniform(8000, 1000), new Uniform(8000, 50)), DRAWS, SEED);
        return switch (result) {
            case "mean" -> p.mean();
            case "u" -> p.standardUncertainty();
            case "low" -> p.shortest(0.95).low();
            default -> p.shortest(0.95).high();
        };
    }

    /** For the stack all three ways are known: the exact distribution lies between root sum of squares and worst case. */
    @Test
    void aPropagatedStack() {
        Propagation p = STACK.propagated(DRAWS, SEED);
        assertEquals(11, p.mean(), 0.002);
        assertEquals(STACK.standardUncertainty(), p.standardUncertainty(), 0.001);
        double half = p.symmetric(0.95).half();
        assertTrue(half > STACK.rootSumOfSquares() && half < STACK.worstCase());
        assertTrue(p.quantile(0) >= 11 - 0.7 && p.quantile(1) <= 11 + 0.7);
        assertThrows(IllegalArgumentException.class, () -> new Stack(List.of()));
    }

    /** The stacks of a blank are those sums; a mark that is not there leaves its stacks out. */
    @Test
    void theStacksOfABlank() {
        Blank blank = Sample.blank().edit().set(Inputs.FOLDED_LENGTH, 36).tolerance(Inputs.FOLDED_LENGTH, 0.3, true).tolerance(Inputs.TIE_LENGTH, 0.3, true)
                .tolerance(Inputs.STAPLE_LENGTH, 0.1, true).build();
        Map<String, Stack> stacks = Stacks.of(blank);
        assertEquals(11, stacks.get("cane on the staple").nominal(), 1e-12);
        assertEquals(0.7, stacks.get("cane on the staple").worstCase(), 1e-12);
        assertEquals(0.435890, stacks.get("cane on the staple").rootSumOfSquares(), 5e-7);
        assertEquals(11, stacks.get("end of the cane above the cork").nominal(), 1e-12);
        assertEquals(0.5, stacks.get("bare staple above the wrap").nominal(), 1e-12);
        assertTrue(stacks.containsKey("cane above the staple") && !stacks.containsKey("reed above the staple"));
        assertEquals(23, Stacks.of(blank.with(Inputs.FINISHED, 70)).get("reed above the staple").nominal(), 1e-12);
    }

    @Test
    void theSameForAnyNumberOfThreads() throws InterruptedException, ExecutionException {
        double[] results = new double[3];
        int[] threads = {1, 2, 8};
        for (int i = 0; i < 3; i++) {
            ForkJoinPool pool = new ForkJoinPool(threads[i]);
            results[i] = pool.submit(() -> STACK.propagated(20_000, 7).quantile(0.3)).get();
            pool.shutdown();
        }
        assertEquals(results[0], results[1]);
        assertEquals(results[0], results[2]);
        assertTrue(results[0] != STACK.propagated(20_000, 8).quantile(0.3), "another seed, other draws");
    }

    @Test
    void distributionsHaveTheMomentsTheySay() {
        for (Distribution d : List.of(new Fixed(3), new Uniform(2, 0.5), new Triangular(-1, 0.4), new Normal(5, 0.2), new Measured(1, 4, 2, 2))) {
            Propagation p = Propagation.of(x -> x[0], List.of(d), DRAWS, SEED);
            assertEquals(d.mean(), p.mean(), 0.004, d.toString());
            assertEquals(d.standardUncertainty(), p.standardUncertainty(), 0.004, d.toString());
            assertEquals(p.quantile(0.2), d.quantile(0.2), 0.01, d.toString());
        }
        assertEquals(0.3, new Uniform(1, 0.3).reach());
        assertEquals(1.959963984540054, new Normal(0, 1).reach());
        assertEquals(1.75, new Measured(1, 4, 2, 2).reach());
        assertEquals(1.2, new Uniform(1, 0.2).quantile(1), 1e-15);
        assertEquals(1, new Triangular(1, 0.2).quantile(0.5), 1e-15);
        assertEquals(0.9, new Triangular(1, 0.2).quantile(0.125), 1e-15);
        assertThrows(IllegalArgumentException.class, () -> new Uniform(0, -1));
        assertThrows(IllegalArgumentException.class, () -> new Normal(0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Measured());
        assertThrows(IllegalArgumentException.class, () -> new Measured(1, Double.POSITIVE_INFINITY));
    }

    @Test
    void drawsAreEvenAndIndependentOfEachOther() {
        Draws draws = new Draws(42);
        int[] cells = new int[100];
        int n = 1_000_000;
        for (int i = 0; i < n; i++) {
            cells[(int) (10 * draws.uniform(i, 3)) * 10 + (int) (10 * draws.uniform(i, 4))]++;
        }
        double chi = Arrays.stream(cells).mapToDouble(c -> Math.pow(c - n / 100.0, 2) / (n / 100.0)).sum();
        assertTrue(chi < 150, "chi-squared with 99 degrees of freedom: " + chi);
        assertEquals(draws.uniform(17, 2), new Draws(42).uniform(17, 2));
    }

    @Test
    void intervalsAndSharesOfKnownValues() {
        double[] values = new double[1000];
        Arrays.setAll(values, i -> 1000 - i);
        Propagation p = Propagation.ofValues(values);
        assertEquals(1000, p.draws());
        assertEquals(0.95, p.shareUpTo(950));
        assertEquals(0, p.shareUpTo(0.5));
        assertEquals(1, p.shareUpTo(1000));
        assertEquals(500, p.quantile(0.5));
        assertEquals(950, p.symmetric(0.95).high() - p.symmetric(0.95).low());
        assertEquals(25, p.symmetric(0.95).low());
        Propagation never = Propagation.ofValues(1, 2, 3, Double.POSITIVE_INFINITY);
        assertEquals(0.75, never.shareUpTo(1e9));
        assertEquals(Double.POSITIVE_INFINITY, never.quantile(0.9));
        assertThrows(IllegalArgumentException.class, () -> Propagation.ofValues(1, Double.NaN));
    }
}

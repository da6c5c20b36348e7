package culm.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

import org.junit.jupiter.api.Test;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Rules;

class ToleranceRunTest {
    @Test
    void samplesArePercentiles() {
        for (long below : new long[] {0, 7, 300}) {
            Distribution d = new Distribution(-1, 0.1, new long[] {0, 5, 0, 0, 17, 3, 0, 90, 1, 0}, below, 0, 0);
            double[] samples = d.samples(40);
            for (int i = 0; i < samples.length; i++) {
                assertEquals(d.percentile((i + 0.5) * 100 / samples.length), samples[i], 1e-9, below + " below, " + i);
            }
        }
        assertTrue(Double.isNaN(new Distribution(0, 1, new long[3], 4, 0, 0).samples(2)[1]));
    }

    private static final Study NINE = new Study(Designs.example(), Designs.nine(), Limits.STANDARD, Rules.load());

    @Test
    void anyNumberOfThreadsGivesTheSame() {
        ToleranceResult one = ToleranceRun.run(NINE, 50_000, 7, 1, Watcher.none());
        for (int threads : new int[] {2, 8}) {
            ToleranceResult more = ToleranceRun.run(NINE, 50_000, 7, threads, Watcher.none());
            assertEquals(one.rules(), more.rules());
            assertEquals(one.passed(), more.passed());
            assertEquals(one.causes(), more.causes());
            assertEquals(one.turns().mean(), more.turns().mean());
            assertEquals(one.turns().deviation(), more.turns().deviation());
            for (double p : new double[] {0.1, 5, 50, 95, 99.9}) {
                assertEquals(one.turns().percentile(p), more.turns().percentile(p));
                assertEquals(one.closes().percentile(p), more.closes().percentile(p));
            }
        }
        assertTrue(one.passed().hits() != ToleranceRun.run(NINE, 50_000, 8, 1, Watcher.none()).passed().hits(), "another seed draws other blanks");
    }

    @Test
    void cancelledRunsKeepTheFirstBlanks() {
        AtomicLong asked = new AtomicLong();
        ToleranceResult part = ToleranceRun.run(NINE, 10_000_000, 7, 2, new Watcher<>() {
            @Override
            public boolean cancelled() {
                return asked.incrementAndGet() > 10;
            }
        });
        assertTrue(part.partial() && part.blanks() > 0);
        ToleranceResult whole = ToleranceRun.run(NINE, part.blanks(), 7, 1, Watcher.none());
        assertEquals(whole.rules(), part.rules());
        assertEquals(whole.turns().mean(), part.turns().mean());
    }

    @Test
    void resultsSoFarAreThereWhileItRuns() {
        AtomicLong seen = new AtomicLong();
        AtomicLong counted = new AtomicLong();
        ToleranceRun.run(NINE, Long.MAX_VALUE / 8192, 7, 2, new Watcher<>() {
            @Override
            public void progress(long done, long all, Supplier<ToleranceResult> soFar) {
                seen.set(done);
                counted.set(soFar.get().blanks());
            }

            @Override
            public boolean cancelled() {
                return counted.get() > 0;
            }
        });
        assertTrue(seen.get() > 0 && counted.get() >= seen.get());
    }

    @Test
    void failuresPointToTheirInputs() {
        ToleranceResult result = ToleranceRun.run(NINE, 20_000, 3, 2, Watcher.none());
        RuleShare leaks = result.rules().stream().filter(r -> r.id().equals("sidesOpen")).findFirst().orElseThrow();
        assertEquals(Varied.WIDTH, leaks.causes().get(0).path());
        assertEquals("low", leaks.causes().get(0).where());
        assertTrue(leaks.causes().get(0).certain());
        long fails = leaks.passed().of() - leaks.passed().hits();
        for (Cause cause : leaks.causes()) {
            assertEquals(fails, cause.low().hits() + cause.middle().hits() + cause.high().hits());
            assertEquals(20_000, cause.low().of() + cause.middle().of() + cause.high().of());
        }
    }

    /**
     * A cane so wide that it closes from its end on: turns left = (top of the wrap - (tie - folded length)) / pitch, linear. With three equal uniform
     * give or takes t the sum of deviations has the distribution of three uniforms: P(S &lt;= x t) = 1 - (3 - x)^3 / 48 for 1 &lt;= x &lt;= 3.
     */
    @Test
    void aLinearCaseLiesInsideItsInterval() {
        double t = 0.3;
        double x = 1.2;
        Blank wide = Varied.with(Designs.example(), Varied.WIDTH, 2.2).edit().set(Inputs.THREAD_PITCH, 1).set(Inputs.CORK_TOP, 20).build();
        double turns = 46.5 - 35;
        Limits limits = Limits.STANDARD.with(Limits.TURNS_MOST, turns + x * t).with(Limits.TURNS_FEWEST, 0);
        List<Varied> three = List.of(new Varied(Inputs.WRAP_TOP, new Spread.Uniform(t)), new Varied(Inputs.TIE_LENGTH, new Spread.Uniform(t)),
                new Varied(Inputs.FOLDED_LENGTH, new Spread.Uniform(t), List.of("shape.places[7].fromFold")));
        ToleranceResult result = ToleranceRun.run(new Study(wide, three, limits, Rules.load()), 20_000, 11, 2, Watcher.none());
        assertEquals(0, result.reference());
        double exact = 1 - Math.pow(3 - x, 3) / 48;
        Share share = result.rules().stream().filter(r -> r.id().equals("turnsLeft")).findFirst().orElseThrow().passed();
        assertTrue(share.low() <= exact && exact <= share.high(), exact + " in " + share.low() + " to " + share.high());
        assertEquals(turns, result.turns().mean(), 4 * t / Math.sqrt(20_000));
        assertEquals(t, result.turns().deviation(), 0.01);
    }
}

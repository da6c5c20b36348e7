package culm.blank;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Verdict;
import culm.geometry.profile.Parameter;

/** Whatever numbers come in, no exception and no NaN comes out. */
class FuzzTest {
    private static final int TRIALS = Boolean.getBoolean("culm.long") ? 40_000 : 1_000;
    private static final double[] BAD = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 0, 1e-300, 1e300, -0.0, Double.MIN_VALUE};
    private final Rules rules = Rules.load();

    @Test
    void noNaNLeavesTheCore() {
        SplittableRandom random = new SplittableRandom(20240229);
        int computed = 0;
        int refused = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Blank blank = shaken(Designs.number(random.nextInt(100_000)), random);
            Assessment a = Assessor.assess(blank);
            assertClean(a, trial);
            List<Finding> findings = rules.judge(a, Limits.STANDARD);
            assertFalse(findings.stream().anyMatch(f -> f.text().contains("failed and was left out")), () -> findings.toString());
            for (Finding f : findings) {
                assertClean(f, trial);
            }
            Verdict verdict = Verdict.of(a, findings);
            boolean echoed = a.closing().problem().isPresent();
            assertTrue(echoed || !verdict.sentence().contains("NaN") && !verdict.sentence().contains("Infinity"), verdict.sentence());
            if (a.closing().problem().isPresent()) {
                refused++;
                assertTrue(a.closing().problem().get().endsWith(".") || a.closing().problem().get().endsWith(")"), a.closing().problem().get());
                assertFalse(a.closing().problem().get().contains("Exception"), a.closing().problem().get());
                assertTrue(findings.stream().anyMatch(f -> f.rule().equals("notComputed")), "a refusal is told");
            } else {
                computed++;
            }
        }
        assertTrue(computed > TRIALS / 20, "hardly anything could be computed: " + computed);
        assertTrue(refused > TRIALS / 20, "hardly anything was refused: " + refused);
        System.out.printf("%d shaken designs: %d computed, %d refused%n", TRIALS, computed, refused);
    }

    /** A few numbers of a design replaced: within their range, at its ends, or by what is no number at all. */
    private static Blank shaken(Blank blank, SplittableRandom random) {
        List<Input> inputs = blank.inputs();
        BlankBuilder edit = blank.edit();
        int changes = 1 + random.nextInt(4);
        for (int i = 0; i < changes; i++) {
            Input input = inputs.get(random.nextInt(inputs.size()));
            Parameter p = input.parameter();
            double value = switch (random.nextInt(8)) {
                case 0 -> p.min();
                case 1 -> p.max();
                case 2 -> BAD[random.nextInt(BAD.length)];
                case 3, 4 -> p.min() + (p.max() - p.min()) * random.nextDouble();
                default -> input.value() * (0.7 + 0.6 * random.nextDouble());
            };
            edit.set(input.path(), value);
            edit.tolerance(input.path(), random.nextInt(4) == 0 ? 0 : input.tolerance().plusMinus() * 3 * random.nextDouble(), true);
        }
        return edit.build();
    }

    private static void assertClean(Object value, int trial) {
        if (value instanceof Double d) {
            assertTrue(Double.isFinite(d), "trial " + trial + " gave " + d);
        } else if (value instanceof OptionalDouble d) {
            assertTrue(d.isEmpty() || Double.isFinite(d.getAsDouble()), "trial " + trial + " gave " + d);
        } else if (value instanceof Optional<?> o) {
            o.ifPresent(v -> assertClean(v, trial));
        } else if (value instanceof Collection<?> all) {
            all.forEach(v -> assertClean(v, trial));
        } else if (value instanceof Map<?, ?> map) {
            assertClean(map.values(), trial);
        } else if (value instanceof Heights heights && heights.of(Mark.FOLD).isPresent()) {
            assertClean(heights.all(), trial);
        } else if (value instanceof Input input) {
            assertTrue(Double.isFinite(input.value()), input.path());
        } else if (value instanceof Record record) {
            for (RecordComponent part : record.getClass().getRecordComponents()) {
                try {
                    assertClean(part.getAccessor().invoke(record), trial);
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(e);
                }
            }
        }
    }
}

package culm.blank.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.BlankBuilder;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.blank.rules.GuardedRule;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.staple.StraightSidedOval;

/** A plug-in's rule that fails, or says what cannot be shown, is named; the other rules are heard. */
class GuardedRuleTest {
    private static final Assessment ASSESSMENT = Assessor.assess(new BlankBuilder(Profile.standard(new StraightSidedOval()),
            Profile.standard(new MiddleAndSide()), Profile.standard(new MeasuredShape())).build());

    static Stream<Arguments> badRules() {
        Finding sound = Finding.of("bad", Severity.FINE, "All is well.");
        return Stream.of(Arguments.of("failed: IllegalStateException: broken", rule(() -> {
            throw new IllegalStateException("broken");
        })), Arguments.of("failed: StackOverflowError", rule(GuardedRuleTest::endless)),
                Arguments.of("failed: NullPointerException", rule(() -> null)),
                Arguments.of("not filled in", rule(() -> Arrays.asList(sound, null))),
                Arguments.of("not filled in", rule(() -> List.of(Finding.of("bad", null, "No severity.")))),
                Arguments.of("is no number", rule(() -> List.of(sound.measured(Double.NaN)))),
                Arguments.of("is no number", rule(() -> List.of(sound.against(Double.POSITIVE_INFINITY)))),
                Arguments.of("cannot be made", rule(() -> List.of(sound.fix(Optional.of(new Fix("no.such", 1, "x")))))),
                Arguments.of("cannot be made", rule(() -> List.of(sound.fix(Optional.of(new Fix("tie.length", Double.NaN, "x")))))));
    }

    @ParameterizedTest
    @MethodSource("badRules")
    void isNamed(String how, Rule bad) {
        List<Finding> without = Rules.load().judge(ASSESSMENT, Limits.STANDARD);
        List<Rule> all = new java.util.ArrayList<>(Rules.load().all());
        all.add(0, new GuardedRule(bad, "Hostile 1.0"));
        List<Finding> with = new Rules(all).judge(ASSESSMENT, Limits.STANDARD);
        Finding named = with.stream().filter(f -> f.text().contains("Hostile 1.0") && f.severity() == Severity.WARNING).findFirst().orElseThrow();
        assertTrue(named.text().contains(how), named.text());
        assertEquals(without.stream().map(Finding::text).toList(), with.stream().filter(f -> !f.rule().equals("bad")).map(Finding::text).toList());
    }

    private static List<Finding> endless() {
        return endless().subList(0, 1);
    }

    private static Rule rule(java.util.function.Supplier<List<Finding>> says) {
        return new Rule() {
            @Override
            public String id() {
                return "bad";
            }

            @Override
            public String name() {
                return "a bad rule";
            }

            @Override
            public List<Finding> judge(Assessment assessment, Limits limits) {
                return says.get();
            }
        };
    }
}

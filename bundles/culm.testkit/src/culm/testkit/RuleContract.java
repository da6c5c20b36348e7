package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;

/**
 * What a rule promises: it speaks of what it is for, says nothing it cannot know, never throws, and its findings are sentences with finite
 * numbers and fixes that can be made.
 */
public abstract class RuleContract {
    /** The rule, made anew. */
    protected abstract Rule rule();

    /** An assessment of which it has something to say. */
    protected abstract Assessment spoken();

    @Test
    @DisplayName("a public class with a public constructor without arguments, an id and a name")
    final void canBeMade() throws NoSuchMethodException {
        Class<?> type = rule().getClass();
        assertTrue(Modifier.isPublic(type.getModifiers()) && Modifier.isPublic(type.getDeclaredConstructor().getModifiers()));
        assertTrue(rule().id().matches("[a-z][A-Za-z0-9]*(\\.[A-Za-z0-9]+)*"), rule().id());
        assertFalse(rule().name().isBlank() || rule().name().endsWith("."), "a name is a few words, no sentence: " + rule().name());
    }

    @Test
    @DisplayName("speaks of what it is for")
    final void speaks() {
        List<Finding> findings = rule().judge(spoken(), Limits.STANDARD);
        assertFalse(findings.isEmpty());
        findings.forEach(f -> sound(f, spoken()));
    }

    @Test
    @DisplayName("says nothing unsound of any blank, even one that cannot be computed")
    final void neverThrows() {
        Sample.assessments().forEach((name, assessment) -> {
            List<Finding> findings = assertDoesNotThrow(() -> rule().judge(assessment, Limits.STANDARD), name);
            assertNotNull(findings, name);
            findings.forEach(f -> sound(f, assessment));
        });
    }

    @Test
    @DisplayName("has no state, and writes numbers with a point in any locale")
    final void hasNoState() {
        Rule rule = rule();
        List<Finding> first = rule.judge(spoken(), Limits.STANDARD);
        Sample.assessments().values().forEach(a -> rule.judge(a, Limits.STANDARD));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(first, rule.judge(spoken(), Limits.STANDARD));
        } finally {
            Locale.setDefault(before);
        }
    }

    private void sound(Finding f, Assessment about) {
        assertEquals(rule().id(), f.rule(), "a finding names its rule");
        assertNotNull(f.severity(), f.text());
        assertTrue(f.text().length() > 5 && !Character.isLowerCase(f.text().charAt(0)) && f.text().endsWith("."), "a finding is a sentence: " + f.text());
        assertFalse(f.text().matches("(?s).*\\d\\.\\d{3}.*"), "no caliper sees a thousandth: " + f.text());
        finite(f.value(), f);
        finite(f.limit(), f);
        f.fix().ifPresent(fix -> assertDoesNotThrow(() -> about.blank().with(fix.path(), fix.value()), "the fix can be made: " + fix));
    }

    private static void finite(OptionalDouble number, Finding f) {
        assertTrue(number.isEmpty() || Double.isFinite(number.getAsDouble()), () -> "no number in: " + f.text());
    }
}

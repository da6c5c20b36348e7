package culm.blank.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.geometry.guard.Guarded;
import culm.geometry.guard.Health;

/**
 * A profile type of a plug-in that has failed or is slow is named, wherever its failure was hidden: a give or take that rests on fewer inputs
 * than it should looks like a good one.
 */
public final class PlugIns implements Rule {
    private static final long ENOUGH_CALLS = 1000;
    private static final long SLOW_NANOS = 100_000;

    @Override
    public String id() {
        return "plugIns";
    }

    @Override
    public String name() {
        return "the plug-ins in use work";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        Blank blank = a.blank();
        List<Finding> found = new ArrayList<>();
        blank.foreign().map(Guarded::guard).distinct().forEach(guard -> {
                    Health health = guard.health();
                    health.lastFailure().ifPresent(sentence -> found.add(Finding.of(id(), Severity.WARNING, sentence).measured(health.failures())
                            .because("Failures since Culm was started are counted.").remedy("Do not trust these numbers; ask whoever made the plug-in.")));
                    if (health.lastFailure().isEmpty() && health.calls() >= ENOUGH_CALLS && health.mean().toNanos() > SLOW_NANOS) {
                        found.add(Finding.of(id(), Severity.ADVICE, String.format(Locale.ROOT, "%s is slow: %.2f ms a call.", guard.what(), health.mean().toNanos() / 1e6))
                                .measured(health.mean().toNanos() / 1e6).against(SLOW_NANOS / 1e6));
                    }
                });
        return found;
    }
}

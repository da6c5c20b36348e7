package culm.blank.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.geometry.guard.Failure;

/** The rules a program judges by, in order; handed in, never a global. */
public final class Rules {
    private final List<Rule> rules;

    /** @param rules in the order in which equally bad findings are told */
    public Rules(List<Rule> rules) {
        this.rules = List.copyOf(rules);
    }

    /** What {@link ServiceLoader} finds on the class path. */
    public static Rules load() {
        return new Rules(ServiceLoader.load(Rule.class, Rule.class.getClassLoader()).stream().map(ServiceLoader.Provider::get).toList());
    }

    /** All rules. */
    public List<Rule> all() {
        return rules;
    }

    /** All findings, the worst first; among equals in the order of the rules. A rule that fails is itself a finding; rules of plug-ins are {@link GuardedRule}s. */
    public List<Finding> judge(Assessment assessment, Limits limits) {
        List<Finding> all = new ArrayList<>();
        for (Rule rule : rules) {
            all.addAll(rule instanceof GuardedRule ? rule.judge(assessment, limits) : judged(rule, assessment, limits));
        }
        all.sort(Comparator.comparing(Finding::severity));
        return all;
    }

    private static List<Finding> judged(Rule rule, Assessment assessment, Limits limits) {
        try {
            return rule.judge(assessment, limits);
        } catch (RuntimeException e) {
            return List.of(Finding.of(rule.id(), Severity.WARNING, "The rule \"" + rule.name() + "\" failed and was left out: " + Failure.words(e) + "."));
        }
    }
}

package culm.blank.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.geometry.GeometryException;
import culm.geometry.guard.Budget;
import culm.geometry.guard.Guard;
import culm.geometry.guard.Guarded;

/** A plug-in's rule behind its guard: what it throws, a finding that cannot be shown, and its being slow become a finding that names it. */
public final class GuardedRule implements Rule, Guarded {
    private final Rule rule;
    private final Guard guard;
    private final String id;
    private final String name;

    /** @param rule a rule that has told its id and name before */
    public GuardedRule(Rule rule, String plugIn) {
        this.rule = rule;
        this.id = rule.id();
        this.name = rule.name();
        this.guard = Guard.of("rule", name, plugIn, Budget.RULES);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Guard guard() {
        return guard;
    }

    @Override
    public List<Finding> judge(Assessment assessment, Limits limits) {
        List<Finding> sound = new ArrayList<>();
        try {
            for (Finding finding : guard.call(() -> new ArrayList<>(rule.judge(assessment, limits)))) {
                Optional<String> problem = problem(finding, assessment.blank());
                if (problem.isPresent()) {
                    throw guard.failed(problem.get());
                }
                sound.add(finding);
            }
        } catch (GeometryException e) {
            sound.add(Finding.of(id, Severity.WARNING, e.getMessage()).because("What it has to say is missing here.")
                    .remedy("Judge without it, or remove the plug-in."));
        }
        return sound;
    }

    private static Optional<String> problem(Finding f, Blank blank) {
        if (f == null || f.severity() == null || f.toldText() == null || f.toldText().isBlank() || f.value() == null || f.limit() == null || f.toldWhy() == null
                || f.toldRemedy() == null || f.fix() == null || f.path() == null || f.rule() == null) {
            return Optional.of("gives a finding that is not filled in");
        }
        if (notFinite(f.value()) || notFinite(f.limit())) {
            return Optional.of("gives a finding whose value or limit is no number");
        }
        if (f.fix().isPresent() && !possible(f.fix().get(), blank)) {
            return Optional.of("proposes a change that cannot be made: " + f.fix().get().path() + " to " + f.fix().get().value());
        }
        return Optional.empty();
    }

    private static boolean notFinite(OptionalDouble number) {
        return number.isPresent() && !Double.isFinite(number.getAsDouble());
    }

    private static boolean possible(Fix fix, Blank blank) {
        try {
            return fix.told() != null && Double.isFinite(fix.value()) && blank.with(fix.path(), fix.value()) != null;
        } catch (IllegalArgumentException | NullPointerException e) {
            return false;
        }
    }
}

package culm.blank.rules;

import java.util.List;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.TopAxes;

/** A top that is told narrower across its wide axis than across its narrow one: the cane lies parallel to the flat, so the two must not be changed over. */
public final class ChangedOver implements Rule {
    @Override
    public String id() {
        return "changedOver";
    }

    @Override
    public String name() {
        return "the staple's top is wider across its wide axis";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        Optional<TopAxes> top = TopAxes.of(a.blank());
        if (top.isEmpty()) {
            return List.of();
        }
        double wide = a.blank().value(top.get().wide()).orElse(Double.NaN);
        double narrow = a.blank().value(top.get().narrow()).orElse(Double.NaN);
        if (!(narrow > wide)) {
            return List.of();
        }
        return List.of(Finding.of(id(), Severity.WARNING, "The top's wide axis, " + Say.across(wide) + ", is smaller than its narrow one, " + Say.across(narrow)
                + ": the two are probably changed over.").at(top.get().wide()).measuredLength(wide).against(narrow)
                .because("The cane lies parallel to the flat of the oval, so its sides meet over the ends of the wide axis.")
                .remedy("Measure the top across both axes again, and exchange the two numbers."));
    }
}

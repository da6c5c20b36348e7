package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;

/** A crooked blank closes sooner on one side. */
public final class Crooked implements Rule {
    @Override
    public String id() {
        return "crooked";
    }

    @Override
    public String name() {
        return "both sides close alike";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        double sigma = a.blank().number(Inputs.CROOKED);
        if (sigma == 0 || a.left().at().isEmpty() && a.right().at().isEmpty()) {
            return List.of();
        }
        return List.of(Finding.of(id(), Severity.WARNING, "Crooked by " + Say.across(Math.abs(sigma)) + ": the left side closes " + at(a.left()) + ", the right side " + at(a.right()) + ".")
                .at(Inputs.CROOKED).measuredLength(sigma).because("Both blades moved to the same side open one seam and close the other.")
                .remedy("Line the cane up with the oval and look at both sides again."));
    }

    private static String at(culm.blank.Closing side) {
        return side.at().isPresent() ? "at " + Say.along(side.at().getAsDouble()) : "nowhere";
    }
}

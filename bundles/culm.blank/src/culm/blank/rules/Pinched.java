package culm.blank.rules;

import java.util.List;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Inputs;
import culm.blank.Limits;

/** Closed sides pressed together further up than the house allows. */
public final class Pinched implements Rule {
    @Override
    public String id() {
        return "pinched";
    }

    @Override
    public String name() {
        return "pinched at the staple's top";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        if (a.pinchedAtTop().isEmpty() || a.sidesCloseAt().isEmpty()) {
            return List.of();
        }
        double pinched = a.pinchedAtTop().getAsDouble();
        double most = limits.get(Limits.PINCHED_MOST);
        if (pinched <= most) {
            return List.of();
        }
        return List.of(Finding.of(id(), Severity.WARNING, "Pinched by " + Say.across(pinched) + " at the staple's top; the house allows " + Say.across(most) + ".")
                .at(Inputs.TIE_LENGTH).measuredLength(pinched).against(most).because("House limit, in my limits.")
                .remedy("Tie longer, or take a narrower shape.").fix(Remedies.tieLength(a, limits).filter(f -> cures(a, f, most))));
    }

    private static boolean cures(Assessment a, Fix fix, double most) {
        OptionalDouble pinched = Assessor.outline(a.blank().with(fix.path(), fix.value())).pinchedAtTop();
        return pinched.isPresent() && pinched.getAsDouble() <= most;
    }
}

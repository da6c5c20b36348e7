package culm.example.plugin;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;
import culm.blank.rules.Say;
import culm.blank.rules.Severity;

/** Asks for enough cane on the staple to hold the blades straight. The limit is invented for this example. */
public final class EnoughCaneOnStaple implements Rule {
    private static final double FEWEST = 10;

    @Override
    public String id() {
        return "example.rule.caneOnStaple";
    }

    @Override
    public String name() {
        return "enough cane on the staple";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        if (a.caneOnStaple().isEmpty()) {
            return List.of();
        }
        double on = a.caneOnStaple().getAsDouble();
        boolean enough = on >= FEWEST;
        Finding finding = Finding.of(id(), enough ? Severity.FINE : Severity.WARNING, enough ? Say.along(on) + " of cane on the staple hold the blades straight."
                : "Only " + Say.along(on) + " of cane on the staple; " + Say.along(FEWEST) + " hold the blades straight.");
        return List.of(finding.at(Inputs.TIE_LENGTH).measuredLength(on).against(FEWEST).because("Invented for the example plug-in.")
                .remedy(enough ? "" : "Tie shorter, or take longer cane."));
    }
}

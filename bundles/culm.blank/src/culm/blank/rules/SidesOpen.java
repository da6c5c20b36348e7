package culm.blank.rules;

import java.util.List;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;

/** Sides that are not closed under the wrap leak (common practice, no source). */
public final class SidesOpen implements Rule {
    @Override
    public String id() {
        return "sidesOpen";
    }

    @Override
    public String name() {
        return "the sides close under the wrap";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        if (a.sidesCloseAt().isEmpty()) {
            if (a.openAtStapleTop().isEmpty()) {
                return List.of();
            }
            double open = a.openAtStapleTop().getAsDouble();
            Optional<Fix> fix = Remedies.tieLength(a, limits);
            return List.of(Finding.of(id(), Severity.ERROR, "The sides never close: still open by " + Say.across(open) + " at the staple's top.").at(Inputs.TIE_LENGTH)
                    .measuredLength(open).against(0).because("Sides that stay open leak. Common practice, no source.")
                    .remedy(fix.isPresent() ? "Change the tie length." : "No tie length within my limits closes them: take a wider shape, a thinner gouge or a smaller staple.")
                    .fix(fix));
        }
        double closes = a.sidesCloseAt().getAsDouble();
        double wrap = a.blank().number(Inputs.WRAP_TOP);
        if (closes <= wrap) {
            return List.of();
        }
        Optional<Fix> fix = Remedies.tieLength(a, limits);
        return List.of(Finding.of(id(), Severity.ERROR, "The sides close at " + Say.along(closes) + ", above the wrap: the blank leaks.").at(Inputs.TIE_LENGTH)
                .measuredLength(closes).against(wrap).because("The sides have to close under the thread. Common practice, no source.")
                .remedy(fix.isPresent() ? "Tie shorter." : "No tie length within my limits closes them under the wrap: take a wider shape or a thinner gouge.").fix(fix));
    }
}

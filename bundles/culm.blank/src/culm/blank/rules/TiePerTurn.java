package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;

/** How far to change the tie to move the closing by one turn. */
public final class TiePerTurn implements Rule {
    @Override
    public String id() {
        return "tiePerTurn";
    }

    @Override
    public String name() {
        return "tie length for one turn";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        if (a.tieLengthPerTurn().isEmpty()) {
            return List.of();
        }
        double per = a.tieLengthPerTurn().getAsDouble();
        return List.of(Finding.of(id(), Severity.FINE, "To move the closing by one turn, change the tie length by " + Say.along(Math.abs(per)) + ": "
                + (per > 0 ? "shorter closes sooner." : "longer closes sooner.")).at(Inputs.TIE_LENGTH).measuredLength(per));
    }
}

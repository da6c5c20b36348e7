package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Mark;

/** The finished reed is longer than the staple and shorter than the tie. */
public final class FinishedLength implements Rule {
    @Override
    public String id() {
        return "finishedLength";
    }

    @Override
    public String name() {
        return "finished length between staple top and fold";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        double finished = a.heights().of(Mark.FINISHED).orElse(Double.NaN);
        double top = a.heights().of(Mark.STAPLE_TOP).orElse(Double.NaN);
        double tie = a.heights().of(Mark.FOLD).orElse(Double.NaN);
        if (Double.isNaN(finished + top + tie) || finished > top && finished < tie) {
            return List.of();
        }
        boolean low = finished <= top;
        return List.of(Finding.of(id(), Severity.ERROR, "The finished length of " + Say.along(finished) + (low ? " is not above the staple's top at " + Say.along(top)
                : " is not below the fold at " + Say.along(tie)) + ".").at(Inputs.FINISHED).measuredLength(finished).against(low ? top : tie)
                .because("The tip is cut between the staple's top and the fold.").remedy("Give a finished length between " + Say.along(top) + " and " + Say.along(tie) + "."));
    }
}

package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Mark;

/** The end of the cane has to be held by the thread and stay off the cork (common practice, no source). */
public final class EndOfCane implements Rule {
    @Override
    public String id() {
        return "endOfCane";
    }

    @Override
    public String name() {
        return "the end of the cane lies under the wrap and above the cork";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        if (a.heights().of(Mark.CANE_END).isEmpty() || a.heights().of(Mark.WRAP_TOP).isEmpty()) {
            return List.of();
        }
        double end = a.heights().of(Mark.CANE_END).getAsDouble();
        double wrapTop = a.heights().of(Mark.WRAP_TOP).getAsDouble();
        String source = "Common practice, no source.";
        if (end >= wrapTop) {
            return List.of(Finding.of(id(), Severity.ERROR, "The cane ends at " + Say.along(end) + ", not under the wrap, which stops at " + Say.along(wrapTop) + ".")
                    .at(Inputs.FOLDED_LENGTH).measuredLength(end).against(wrapTop).because(source).remedy("Take longer cane or a shorter tie."));
        }
        double cork = a.heights().of(Mark.CORK_TOP).orElse(Double.NEGATIVE_INFINITY);
        if (end < cork) {
            return List.of(Finding.of(id(), Severity.ERROR, "The cane ends at " + Say.along(end) + ", on the cork, which reaches to " + Say.along(cork) + ".")
                    .at(Inputs.FOLDED_LENGTH).measuredLength(end).against(cork).because(source).remedy("Shorten the folded cane by " + Say.along(cork - end) + " or more."));
        }
        double bottom = a.heights().of(Mark.WRAP_BOTTOM).orElse(Double.NEGATIVE_INFINITY);
        if (end < bottom) {
            return List.of(Finding.of(id(), Severity.ERROR, "The cane ends at " + Say.along(end) + ", below the wrap, which ends at " + Say.along(bottom) + ".")
                    .at(Inputs.WRAP_BOTTOM).measuredLength(end).against(bottom).because(source).remedy("Wind on over the end of the cane."));
        }
        return List.of();
    }
}

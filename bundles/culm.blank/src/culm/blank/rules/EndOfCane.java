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
            return List.of(Finding.of(id(), Severity.ERROR, "The cane ends at " + Say.mm(end) + ", not under the wrap, which stops at " + Say.mm(wrapTop) + ".")
                    .at(Inputs.FOLDED_LENGTH).measured(end).against(wrapTop).because(source).remedy("Take longer cane or a shorter tie."));
        }
        double cork = a.heights().of(Mark.CORK_TOP).orElse(Double.NEGATIVE_INFINITY);
        if (end < cork) {
            return List.of(Finding.of(id(), Severity.ERROR, "The cane ends at " + Say.mm(end) + ", on the cork, which reaches to " + Say.mm(cork) + ".")
                    .at(Inputs.FOLDED_LENGTH).measured(end).against(cork).because(source).remedy("Shorten the folded cane by " + Say.mm(cork - end) + " or more."));
        }
        double bottom = a.heights().of(Mark.WRAP_BOTTOM).orElse(Double.NEGATIVE_INFINITY);
        if (end < bottom) {
            return List.of(Finding.of(id(), Severity.ERROR, "The cane ends at " + Say.mm(end) + ", below the wrap, which ends at " + Say.mm(bottom) + ".")
                    .at(Inputs.WRAP_BOTTOM).measured(end).against(bottom).because(source).remedy("Wind on over the end of the cane."));
        }
        return List.of();
    }
}

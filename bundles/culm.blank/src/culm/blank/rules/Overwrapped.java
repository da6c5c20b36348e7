package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Mark;

/** The thread must never pass the staple's top (common practice, no source): above it, it pinches bare cane. */
public final class Overwrapped implements Rule {
    @Override
    public String id() {
        return "overwrapped";
    }

    @Override
    public String name() {
        return "the wrap stops below the staple's top";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        double wrap = a.heights().of(Mark.WRAP_TOP).orElse(Double.NaN);
        double top = a.heights().of(Mark.STAPLE_TOP).orElse(Double.NaN);
        if (Double.isNaN(wrap + top)) {
            return List.of();
        }
        if (wrap > top) {
            return List.of(Finding.of(id(), Severity.ERROR, "Overwrapped: the wrap stops at " + Say.along(wrap) + ", above the staple's top at " + Say.along(top) + ".")
                    .at(Inputs.WRAP_TOP).measuredLength(wrap).against(top).because("The thread must never pass the staple's top. Common practice, no source.")
                    .remedy("Stop the wrap at or below the staple's top.").fix(Remedies.wrapTop(a, limits)));
        }
        double shortest = top - a.blank().tolerance(Inputs.STAPLE_LENGTH).plusMinus();
        double highest = wrap + a.blank().tolerance(Inputs.WRAP_TOP).plusMinus();
        if (highest <= shortest) {
            return List.of();
        }
        return List.of(Finding.of(id(), Severity.ADVICE, "A staple shorter than " + Say.along(wrap) + " would put the wrap above its top.").at(Inputs.STAPLE_LENGTH)
                .measuredLength(wrap).against(top).because("With give or take, the wrap may reach " + Say.along(highest) + " on a staple of " + Say.along(shortest) + ".")
                .remedy("Measure each staple before tying."));
    }
}

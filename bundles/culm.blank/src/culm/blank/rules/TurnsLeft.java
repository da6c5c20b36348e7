package culm.blank.rules;

import java.util.List;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Band;

/** Turns left against <i>my limits</i>, with the give or take. */
public final class TurnsLeft implements Rule {
    @Override
    public String id() {
        return "turnsLeft";
    }

    @Override
    public String name() {
        return "turns left when the sides close";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        if (a.turnsLeft().isEmpty()) {
            return List.of();
        }
        double turns = a.turnsLeft().getAsDouble();
        if (turns < 0) {
            return List.of(); // the sides close above the wrap, which another rule tells
        }
        double fewest = limits.get(Limits.TURNS_FEWEST);
        double most = limits.get(Limits.TURNS_MOST);
        String asked = "Wanted: " + Say.plain(limits.get(Limits.TURNS_WANTED)) + ", allowed " + Say.plain(fewest) + " to " + Say.plain(most) + ".";
        String source = "My limits; the defaults are common practice, no source.";
        Optional<Fix> fix = turns < fewest || turns > most ? Remedies.tieLength(a, limits) : Optional.empty();
        String remedy = fix.isPresent() ? "Change the tie length." : "No tie length within my limits gives the turns wanted: change the shape, the gouge or the staple.";
        if (turns < fewest) {
            return List.of(Finding.of(id(), Severity.ERROR, "The sides close with only " + Say.turns(turns) + " left. " + asked).at(Inputs.TIE_LENGTH)
                    .measured(turns).against(fewest).because(source).remedy(remedy).fix(fix));
        }
        if (turns > most) {
            return List.of(Finding.of(id(), Severity.WARNING, "The sides close too low, with " + Say.turns(turns) + " left. " + asked).at(Inputs.TIE_LENGTH)
                    .measured(turns).against(most).because("More turns crush closed cane and spring the sides open higher up. " + source).remedy(remedy).fix(fix));
        }
        if (a.turnsBand().isEmpty()) {
            return List.of(Finding.of(id(), Severity.FINE, "The sides close with " + Say.turns(turns) + " left. " + asked).at(Inputs.TIE_LENGTH).measured(turns)
                    .against(limits.get(Limits.TURNS_WANTED)).because(source));
        }
        Band band = a.turnsBand().get();
        if (band.low() < fewest || band.high() > most || band.open()) {
            boolean below = band.low() < fewest || band.open();
            return List.of(Finding.of(id(), Severity.WARNING, "The sides close with " + Say.turns(turns) + " left, but the give or take of " + Say.tenth(band.half())
                    + " reaches " + (below ? "below " + Say.plain(fewest) + ": it may leak." : "above " + Say.plain(most) + ": it may close too low."))
                    .at(Inputs.TIE_LENGTH).measured(turns).against(below ? fewest : most).because(asked + " " + source)
                    .remedy(a.fitted() ? "Measure better what was changed, or tie one and look." : "Fit the model to a blank of yours that worked, or measure better what counts most."));
        }
        return List.of(Finding.of(id(), Severity.FINE, "The sides close with " + Say.turns(turns) + " left, give or take " + Say.tenth(band.half()) + ". " + asked)
                .at(Inputs.TIE_LENGTH).measured(turns).against(limits.get(Limits.TURNS_WANTED)).because(source));
    }
}

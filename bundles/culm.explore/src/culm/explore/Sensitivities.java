package culm.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.Input;
import culm.blank.Inputs;
import culm.blank.Sensitivity;

/**
 * Which reading matters most: how far each input moves turns left, first order at the blank's own values. Turns left is
 * (top of the wrap - closing) / pitch, so beside what moves the closing the top of the wrap and the pitch count. With a fit, give or take counts as it does in
 * the verdict: see {@link FittedEffects}.
 *
 * @param effects by the turns of their own give or take, the largest first
 * @param advice  the input to measure better: the largest that was assumed, if any counts; else the largest
 * @param why     why there is none, in one sentence; empty when there are effects
 */
public record Sensitivities(List<Effect> effects, Optional<Effect> advice, String why) {
    static final double HUNDREDTH = 0.01;
    private static final double COUNTS = 0.02;

    /** Of an assessed blank; without effects where the sides do not close inside the overlap. */
    public static Sensitivities of(Assessment assessment) {
        Blank blank = assessment.blank();
        if (assessment.sensitivities().isEmpty()) {
            return new Sensitivities(List.of(), Optional.empty(), assessment.sidesCloseAt().isEmpty() ? "The sides do not close, so nothing moves the closing."
                    : "The sides are closed from the end of the cane on; only the tie length and the folded length move that.");
        }
        double pitch = blank.number(Inputs.THREAD_PITCH);
        double turns = assessment.turnsLeft().orElseThrow();
        List<Effect> found = new ArrayList<>();
        for (Sensitivity s : assessment.sensitivities()) {
            found.add(effect(blank, s.input(), -s.closing() / pitch));
        }
        for (Input input : blank.inputs()) {
            if (input.path().equals(Inputs.WRAP_TOP)) {
                found.add(effect(blank, input, 1 / pitch));
            } else if (input.path().equals(Inputs.THREAD_PITCH)) {
                found.add(effect(blank, input, -turns / pitch));
            }
        }
        List<Effect> effects = blank.fit().map(fit -> new FittedEffects(blank, fit).of(found)).orElse(found);
        double all = effects.stream().mapToDouble(e -> e.perTolerance() * e.perTolerance()).sum();
        List<Effect> ranked = effects.stream().map(e -> new Effect(e.path(), e.label(), e.unit(), e.value(), e.plusMinus(), e.measured(), e.perHundredth(), e.perTolerance(),
                all == 0 ? 0 : e.perTolerance() * e.perTolerance() / all)).sorted(Comparator.comparingDouble((Effect e) -> Math.abs(e.perTolerance())).reversed()).toList();
        Optional<Effect> assumed = ranked.stream().filter(e -> !e.measured() && e.share() > COUNTS).findFirst();
        return new Sensitivities(ranked, assumed.or(() -> ranked.stream().findFirst()), "");
    }

    private static Effect effect(Blank blank, Input input, double perUnit) {
        double t = input.tolerance().plusMinus();
        return new Effect(input.path(), Varied.label(blank, input.path()), input.parameter().quantity().unit(), input.value(), t, input.tolerance().measured(),
                perUnit * HUNDREDTH, perUnit * t, 0);
    }
}

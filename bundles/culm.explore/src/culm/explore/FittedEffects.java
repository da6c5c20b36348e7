package culm.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Fit;
import culm.blank.Input;
import culm.blank.Inputs;
import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;

/**
 * What is left of each give or take once a blank is fitted to one that worked. An input that is the same in both moves both, and the fitted length
 * anew; one that was changed counts with its own give or take, and once more with that of the blank that worked; the reading of the turns counts too.
 * By differences over the whole give or take.
 */
final class FittedEffects {
    private static final String OLD = "worked:";
    private static final double COUNTS = 1e-6;
    private final Blank blank;
    private final Fit fit;

    FittedEffects(Blank blank, Fit fit) {
        this.blank = blank;
        this.fit = fit;
    }

    /** @param bare the effects as they would be without a fit */
    List<Effect> of(List<Effect> bare) {
        List<Effect> found = new ArrayList<>();
        Map<String, Parameter> described = blank.inputs().stream().collect(Collectors.toMap(Input::path, Input::parameter));
        for (Effect e : bare) {
            Optional<Double> left = fit.same(blank, e.path()) ? half(e.value(), e.plusMinus(), described.get(e.path()),
                    x -> turns(moved(fit.worked(), e.path(), x), moved(blank, e.path(), x), fit.turnsLeft())) : Optional.empty();
            found.add(left.map(turns -> with(e, turns)).orElse(e));
        }
        for (Input input : fit.worked().inputs()) {
            if (!fit.same(blank, input.path())) {
                double t = input.tolerance().plusMinus();
                half(input.value(), t, input.parameter(), x -> turns(moved(fit.worked(), input.path(), x), blank, fit.turnsLeft())).filter(turns -> Math.abs(turns) > COUNTS)
                        .ifPresent(turns -> found.add(effect(OLD + input.path(), Varied.label(fit.worked(), input.path()) + ", of the blank that worked",
                                input.parameter().quantity().unit(), input.value(), t, input.tolerance().measured(), turns)));
            }
        }
        slope(-fit.readingError(), fit.readingError(), x -> turns(fit.worked(), blank, fit.turnsLeft() + x)).map(slope -> slope * fit.readingError())
                .ifPresent(turns -> found.add(effect(OLD + "turnsLeft", "turns left, read on the blank that worked", "", fit.turnsLeft(), fit.readingError(), true, turns)));
        return found;
    }

    private static Effect effect(String path, String label, String unit, double value, double t, boolean measured, double turns) {
        return new Effect(path, label, unit, value, t, measured, t == 0 ? 0 : turns / t * Sensitivities.HUNDREDTH, turns, 0);
    }

    private static Effect with(Effect e, double turns) {
        return new Effect(e.path(), e.label(), e.unit(), e.value(), e.plusMinus(), e.measured(), e.perHundredth(), turns, e.share());
    }

    private static Blank moved(Blank blank, String path, double by) {
        return blank.with(path, blank.value(path).orElse(0) + by);
    }

    private double turns(Blank worked, Blank now, double read) {
        Blank fitted = now.edit().fit(Fit.to(worked, read, fit.readingError())).build();
        double at = ClosingFinder.find(fitted).at().orElseThrow(() -> new GeometryException("", "The sides do not close there."));
        return (fitted.number(Inputs.WRAP_TOP) - at) / fitted.number(Inputs.THREAD_PITCH);
    }

    private interface Turns {
        double at(double moved);
    }

    /** Turns for the whole give or take, taken over as much of it as the input's range allows; empty where an end cannot be computed or never closes. */
    private static Optional<Double> half(double value, double t, Parameter range, Turns turns) {
        return slope(Math.max(-t, range.min() - value), Math.min(t, range.max() - value), turns).map(slope -> slope * t);
    }

    private static Optional<Double> slope(double from, double to, Turns turns) {
        if (!(from < to)) {
            return Optional.empty();
        }
        try {
            return Optional.of((turns.at(to) - turns.at(from)) / (to - from));
        } catch (GeometryException e) {
            return Optional.empty();
        }
    }
}

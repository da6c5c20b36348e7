package culm.blank.rules;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.TieForTurns;

/** Remedies found by solving, told in tenths of a millimetre and tried before they are told. */
final class Remedies {
    private static final double STEP = 0.25;

    private Remedies() {
    }

    /** The tie length nearest to today's that leaves the turns wanted, within the house's shortest and longest, where it has them. */
    static Optional<Fix> tieLength(Assessment a, Limits limits) {
        if (a.outline()) {
            return Optional.empty();
        }
        Blank blank = a.blank();
        double wanted = limits.get(Limits.TURNS_WANTED);
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double from = larger(limits.get(Limits.TIE_SHORTEST), top + STEP);
        double to = -larger(-limits.get(Limits.TIE_LONGEST), -(top + blank.number(Inputs.FOLDED_LENGTH)));
        double today = blank.number(Inputs.TIE_LENGTH);
        double best = TieForTurns.find(blank, wanted, from, to).stream().min(Comparator.comparingDouble(t -> Math.abs(t - today))).orElse(Double.NaN);
        if (Double.isNaN(best)) {
            return Optional.empty();
        }
        double told = Say.tenths(best);
        OptionalDouble turns = turns(blank.with(Inputs.TIE_LENGTH, told));
        if (turns.isEmpty() || turns.getAsDouble() < limits.get(Limits.TURNS_FEWEST) || turns.getAsDouble() > limits.get(Limits.TURNS_MOST)) {
            return Optional.empty();
        }
        return Optional.of(new Fix(Inputs.TIE_LENGTH, told, "Tie at " + Say.along(told) + ": " + Say.turns(turns.getAsDouble()) + " left."));
    }

    /** The top of the wrap that leaves the turns wanted with the closing as it is, below the staple's top. */
    static Optional<Fix> wrapTop(Assessment a, Limits limits) {
        Blank blank = a.blank();
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double pitch = blank.number(Inputs.THREAD_PITCH);
        if (a.sidesCloseAt().isEmpty()) {
            return Optional.empty();
        }
        double closes = a.sidesCloseAt().getAsDouble();
        double told = Say.tenths(closes + limits.get(Limits.TURNS_WANTED) * pitch);
        if (told > top) {
            told = Math.floor(top * 10) / 10;
        }
        double turns = (told - closes) / pitch;
        if (turns < limits.get(Limits.TURNS_FEWEST) || turns > limits.get(Limits.TURNS_MOST)) {
            return Optional.empty();
        }
        return Optional.of(new Fix(Inputs.WRAP_TOP, told, "Stop the wrap at " + Say.along(told) + ": " + Say.turns(turns) + " left."));
    }

    /** The larger one; an absent first one does not bound. */
    private static double larger(double given, double bound) {
        return Double.isNaN(given) ? bound : Math.max(given, bound);
    }

    private static OptionalDouble turns(Blank blank) {
        OptionalDouble at = ClosingFinder.find(blank, Math.abs(blank.number(Inputs.CROOKED))).at();
        return at.isEmpty() ? at : OptionalDouble.of((blank.number(Inputs.WRAP_TOP) - at.getAsDouble()) / blank.number(Inputs.THREAD_PITCH));
    }
}

package culm.explore.internal.run;

import java.util.Optional;

import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.TopAxes;
import culm.blank.rules.ChangedOver;
import culm.blank.rules.Crooked;
import culm.blank.rules.EndOfCane;
import culm.blank.rules.FinishedLength;
import culm.blank.rules.NotComputed;
import culm.blank.rules.OpensAgain;
import culm.blank.rules.Overwrapped;
import culm.blank.rules.Pinched;
import culm.blank.rules.Rule;
import culm.blank.rules.SidesOpen;
import culm.blank.rules.TurnsLeft;
import culm.explore.internal.fast.BlockCloser;
import culm.explore.internal.fast.Columns;
import culm.explore.internal.fast.State;

/** The rules that ship, on columns. A test holds each against the rule itself. Comparisons with an absent number (NaN) are false. */
final class QuickRules {
    private final int bit;
    private final Limits limits;
    private final Columns columns;
    private final double[] closes;
    private final double[] open;
    private final byte[] states;
    private final double[] wrapTop;
    private final double[] top;
    private final double[] tie;

    private QuickRules(int bit, Limits limits, Columns columns, BlockCloser closer) {
        this.bit = bit;
        this.limits = limits;
        this.columns = columns;
        closes = closer.closesAt();
        open = closer.openAtTop();
        states = closer.states();
        wrapTop = columns.of(Inputs.WRAP_TOP);
        top = columns.of(Inputs.STAPLE_LENGTH);
        tie = columns.of(Inputs.TIE_LENGTH);
    }

    /** Null for a rule that is not known here. */
    static QuickRule of(Rule rule, int bit, Limits limits, Columns columns, BlockCloser closer) {
        QuickRules on = new QuickRules(bit, limits, columns, closer);
        Class<?> kind = rule.getClass();
        if (kind == Overwrapped.class) {
            return on::overwrapped;
        }
        if (kind == SidesOpen.class) {
            return on::sidesOpen;
        }
        if (kind == TurnsLeft.class) {
            return on.turnsLeft();
        }
        if (kind == Pinched.class) {
            return on.pinched();
        }
        if (kind == EndOfCane.class) {
            return on.endOfCane();
        }
        if (kind == FinishedLength.class) {
            return on.finishedLength();
        }
        if (kind == OpensAgain.class) {
            return on::opensAgain;
        }
        if (kind == Crooked.class) {
            return on.crooked();
        }
        if (kind == ChangedOver.class) {
            return on.changedOver();
        }
        return kind == NotComputed.class ? new QuickComputed(bit, columns, closer) : null;
    }

    private void overwrapped(int[] failed, int n) {
        for (int l = 0; l < n; l++) {
            failed[l] |= wrapTop[l] > top[l] ? bit : 0;
        }
    }

    private void sidesOpen(int[] failed, int n) {
        for (int l = 0; l < n; l++) {
            failed[l] |= closes[l] > wrapTop[l] || open[l] > 0 ? bit : 0;
        }
    }

    private QuickRule turnsLeft() {
        double fewest = limits.get(Limits.TURNS_FEWEST);
        double most = limits.get(Limits.TURNS_MOST);
        double[] pitch = columns.of(Inputs.THREAD_PITCH);
        return (failed, n) -> {
            for (int l = 0; l < n; l++) {
                double turns = (wrapTop[l] - closes[l]) / pitch[l];
                failed[l] |= turns >= 0 && (turns < fewest || turns > most) ? bit : 0;
            }
        };
    }

    private QuickRule pinched() {
        double most = limits.get(Limits.PINCHED_MOST);
        return (failed, n) -> {
            for (int l = 0; l < n; l++) {
                failed[l] |= Math.max(0, -open[l]) > most ? bit : 0;
            }
        };
    }

    private QuickRule endOfCane() {
        double[] folded = columns.of(Inputs.FOLDED_LENGTH);
        double[] cork = columns.of(Inputs.CORK_TOP);
        double[] bottom = columns.of(Inputs.WRAP_BOTTOM);
        return (failed, n) -> {
            for (int l = 0; l < n; l++) {
                double end = tie[l] - folded[l];
                failed[l] |= end >= wrapTop[l] || end < cork[l] || end < bottom[l] ? bit : 0;
            }
        };
    }

    private QuickRule finishedLength() {
        double[] finished = columns.of(Inputs.FINISHED);
        return (failed, n) -> {
            for (int l = 0; l < n; l++) {
                failed[l] |= finished[l] <= top[l] || finished[l] >= tie[l] ? bit : 0;
            }
        };
    }

    private void opensAgain(int[] failed, int n) {
        for (int l = 0; l < n; l++) {
            failed[l] |= states[l] == State.AGAIN || states[l] == State.ONLY_BELOW ? bit : 0;
        }
    }

    private QuickRule changedOver() {
        Optional<TopAxes> axes = TopAxes.of(columns.base());
        if (axes.isEmpty()) {
            return (failed, n) -> { };
        }
        double[] wide = columns.of(axes.get().wide());
        double[] narrow = columns.of(axes.get().narrow());
        return (failed, n) -> {
            for (int l = 0; l < n; l++) {
                failed[l] |= narrow[l] > wide[l] ? bit : 0;
            }
        };
    }

    /** The better side is less open by twice the displacement, and closes somewhere when it is closed at the top. */
    private QuickRule crooked() {
        double[] sigma = columns.of(Inputs.CROOKED);
        return (failed, n) -> {
            for (int l = 0; l < n; l++) {
                failed[l] |= sigma[l] != 0 && open[l] - 2 * Math.abs(sigma[l]) <= 0 ? bit : 0;
            }
        };
    }
}

package culm.bench.wrong;

import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.geometry.GeometryException;
import culm.geometry.numeric.Roots;

/** The two equations of a blank whose sides were seen to close: what a change has to make up for. */
final class Balance {
    private static final int FURTHEST = 64;
    private final Blank blank;
    private final double[] turns;

    /** @param turns turns left seen on the left and on the right */
    Balance(Blank blank, double[] turns) {
        this.blank = blank;
        this.turns = turns;
    }

    /** Mean of how far the model has both sides open where they were seen to close, mm; a right explanation makes it zero. */
    private double open(Candidate candidate, double by) {
        Blank changed = candidate.changed(blank, by);
        Seam seam = new Seam(changed);
        double top = changed.number(Inputs.STAPLE_LENGTH);
        double end = changed.number(Inputs.TIE_LENGTH) - changed.number(Inputs.FOLDED_LENGTH);
        double sum = 0;
        for (double seen : turns) {
            sum += seam.open(Math.max(Math.max(0, end), Math.min(top, candidate.height(blank, seen, by))));
        }
        return sum / turns.length;
    }

    /** How far the candidate has to be off; empty when no change up to {@value #FURTHEST} times its tolerance makes up for it. */
    OptionalDouble needed(Candidate candidate) {
        double here = open(candidate, 0);
        if (here == 0) {
            return OptionalDouble.of(0);
        }
        double best = Double.NaN;
        for (int sign = -1; sign <= 1; sign += 2) {
            double root = along(candidate, here, sign);
            if (!Double.isNaN(root) && !(Math.abs(root) >= Math.abs(best))) {
                best = root;
            }
        }
        return Double.isNaN(best) ? OptionalDouble.empty() : OptionalDouble.of(best);
    }

    private double along(Candidate candidate, double here, int sign) {
        double from = 0;
        for (double units = 0.5; units <= FURTHEST; units *= 2) {
            double to = sign * units * candidate.tolerance();
            double there;
            try {
                there = open(candidate, to);
            } catch (GeometryException refused) {
                return Double.NaN;
            }
            if (there * here <= 0) {
                return Roots.between(x -> open(candidate, x), Math.min(from, to), Math.max(from, to));
            }
            from = to;
        }
        return Double.NaN;
    }

    /** How crooked the blank would have to be: half of what the model's opening differs between the heights of both sides. */
    Optional<Cause> crooked(double tolerance) {
        Seam seam = new Seam(blank);
        double[] open = new double[2];
        for (int i = 0; i < 2; i++) {
            double z = blank.number(Inputs.WRAP_TOP) - turns[i] * blank.number(Inputs.THREAD_PITCH);
            open[i] = seam.open(Math.min(blank.number(Inputs.STAPLE_LENGTH), z));
        }
        double sigma = (open[1] - open[0]) / 2;
        String side = turns[0] < turns[1] ? "open on the left" : "open on the right";
        return Optional.of(new Cause("crooked", "cane crooked by", sigma, side, "mm", tolerance, "Look along both sides; line the cane up with the oval. Do not change the tie for it."));
    }
}

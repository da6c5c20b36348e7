package culm.bench.learn;

import java.util.Optional;

import culm.bench.log.PlannedSeen;
import culm.bench.log.Tied;
import culm.blank.Blank;
import culm.blank.Fit;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.geometry.GeometryException;

/**
 * What one blank teaches: the length that, added to half of the blade's width, makes the model close where its sides were seen to close. The mean over both
 * sides, so that a crooked blank teaches the same.
 *
 * @param tied    the blank
 * @param blank   its parts and lengths as tied, without any fit
 * @param delta   the length, mm
 * @param reading standard uncertainty of delta from reading the turns, half a turn either way on each side, mm
 * @param perTurn how much delta moves the closing by one turn, mm, positive
 */
public record Lesson(Tied tied, Blank blank, double delta, double reading, double perTurn) {
    private static final double STEP = 1e-3;

    /** A lesson, or why there is none. */
    public record Taught(Optional<Lesson> lesson, Tied tied, String why) {
    }

    /** @param design the blank as planned, its own staple included where that is known */
    public static Taught of(Tied tied, Blank design) {
        if (tied.seen().turns().isEmpty()) {
            return new Taught(Optional.empty(), tied, "turns left were not noted");
        }
        try {
            Blank bare = PlannedSeen.asTied(design, tied).edit().fit(null).clear(Inputs.DELTA).build();
            return new Taught(Optional.of(lesson(tied, bare)), tied, "");
        } catch (GeometryException refused) {
            return new Taught(Optional.empty(), tied, refused.getMessage());
        }
    }

    private static Lesson lesson(Tied tied, Blank bare) {
        double pitch = bare.number(Inputs.THREAD_PITCH);
        double mean = tied.seen().turns().getAsDouble();
        double[] turns = {tied.seen().left().orElse(mean), tied.seen().right().orElse(mean)};
        double top = bare.number(Inputs.STAPLE_LENGTH);
        double end = Math.max(0, bare.number(Inputs.TIE_LENGTH) - bare.number(Inputs.FOLDED_LENGTH));
        Seam seam = new Seam(bare);
        double open = 0;
        for (double seen : turns) {
            double z = bare.number(Inputs.WRAP_TOP) - seen * pitch;
            if (!(z > end && z <= top)) {
                throw Fit.notOnTheCane(seen, z, end);
            }
            open += seam.open(z) / turns.length;
        }
        double z = Math.min(top, bare.number(Inputs.WRAP_TOP) - mean * pitch);
        double along = Math.abs(seam.open(z) - seam.open(z - STEP)) / STEP;
        double perTurn = along * pitch / 2;
        return new Lesson(tied, bare, open / 2, perTurn * Fit.HALF_A_TURN / Math.sqrt(3) / Math.sqrt(Math.max(1, tied.seen().sides())), perTurn);
    }
}

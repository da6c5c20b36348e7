package culm.explore.internal.fast;

import java.util.Arrays;

import culm.blank.Inputs;

/**
 * Closes blanks a block at a time: G at the staple's top; from there to a first guess; Newton's steps, each with the true G of its height; then a
 * proof, lane by lane, that G falls all the way from the closing to the top and is positive below. A lane without a proof is scanned, and goes to the reference path where that does not tell.
 */
final class LanesCloser implements BlockCloser {
    private static final int STEPS = 5;
    /** Rounds of laying: from the base's angles at the top; from there at the guess, where little depends on them; from there where it counts. */
    private static final int TOP_ROUNDS = 3;
    private static final int GUESS_ROUNDS = 2;
    private static final int ROUNDS = 2;
    private final Columns columns;
    private final Plan plan;
    private Scan scan;
    private final SeamLanes seam;
    private final Proof proof;
    private final ReferenceCloser reference;
    private final double[] length;
    private final double[] z = new double[Columns.SIZE];
    private final double[] before = new double[Columns.SIZE];
    private final double[] guessed = new double[Columns.SIZE];
    private final double[] topIntegral = new double[Columns.SIZE];
    private final double[] topOpen = new double[Columns.SIZE];
    private final double[] turning = new double[Columns.SIZE];
    private final byte[] states = new byte[Columns.SIZE];

    LanesCloser(Columns columns, Plan plan) {
        this.columns = columns;
        this.plan = plan;
        length = columns.of(Inputs.STAPLE_LENGTH);
        seam = new SeamLanes(columns, plan.rule());
        proof = new Proof(columns, seam, plan.oval());
        reference = new ReferenceCloser(columns);
    }

    @Override
    public void close(int n) {
        Arrays.fill(turning, 0, n, plan.turning());
        seam.prepare(plan.speeds(), n);
        seam.bend(length, TOP_ROUNDS, n);
        for (int more = 0; more < STEPS && !seam.bend.settled(n); more++) {
            seam.bend(length, 1, n);
        }
        seam.meet(length, seam.bend.integral, turning, n);
        System.arraycopy(seam.open, 0, topOpen, 0, n);
        System.arraycopy(seam.bend.integral, 0, topIntegral, 0, n);
        proof.top(n);
        guess(topOpen, seam.slope, length, proof.end(), plan.curvature(), z, n);
        seam.bend(z, GUESS_ROUNDS, n);
        turning(length, topIntegral, z, seam.bend.integral, turning, n);
        seam.meet(z, seam.bend.integral, turning, n);
        quickStep(n);
        for (int step = 0; step < STEPS; step++) {
            seam.bend(z, ROUNDS, n);
            seam.meet(z, seam.bend.integral, turning, n);
            if (near(n)) {
                break;
            }
            if (step + 1 < STEPS) {
                step(seam.open, seam.slope, length, proof.end(), z, n);
            }
        }
        finish(n);
    }

    /** A step from where the seam was laid, and one more with J carried along its slope instead of laid again. */
    private void quickStep(int n) {
        System.arraycopy(z, 0, before, 0, n);
        System.arraycopy(seam.bend.integral, 0, guessed, 0, n);
        step(seam.open, seam.slope, length, proof.end(), z, n);
        for (int l = 0; l < n; l++) {
            guessed[l] += turning[l] * (z[l] - before[l]);
        }
        seam.staple.quarterAt(z, n);
        seam.meet(z, guessed, turning, n);
        step(seam.open, seam.slope, length, proof.end(), z, n);
    }

    /** Root of open + slope d + curvature d^2 below the top, two fixed-point rounds; kept on the overlap. */
    private static void guess(double[] open, double[] slope, double[] top, double[] end, double curvature, double[] z, int n) {
        for (int l = 0; l < n; l++) {
            double d = -open[l] / slope[l];
            d = -open[l] / (slope[l] + curvature * d);
            d = -open[l] / (slope[l] + curvature * d);
            z[l] = Math.min(top[l], Math.max(end[l], top[l] + d));
        }
    }

    private static void step(double[] open, double[] slope, double[] top, double[] end, double[] z, int n) {
        for (int l = 0; l < n; l++) {
            z[l] = Math.min(top[l], Math.max(end[l], z[l] - open[l] / slope[l]));
        }
    }

    /** dJ/dz between the top and z; near the top itself the usual one stays. */
    private static void turning(double[] top, double[] topIntegral, double[] z, double[] integral, double[] turning, int n) {
        for (int l = 0; l < n; l++) {
            double below = top[l] - z[l];
            turning[l] = below > 1e-3 ? (topIntegral[l] - integral[l]) / below : turning[l];
        }
    }

    /** Whether every lane that can close inside the overlap is near enough for its last step. */
    private boolean near(int n) {
        double[] end = proof.end();
        int far = 0;
        for (int l = 0; l < n; l++) {
            far += topOpen[l] < 0 && z[l] > end[l] && !(Math.abs(seam.open[l]) < Proof.LEFT) ? 1 : 0;
        }
        return far == 0 && seam.bend.settled(n);
    }

    private void finish(int n) {
        double[] end = proof.end();
        for (int l = 0; l < n; l++) {
            byte state = proof.state(l, topOpen[l], z[l], seam.open[l], seam.slope[l]);
            states[l] = state;
            if (state == State.UNSURE) {
                unproven(l, end[l]);
            } else if (state == State.CLOSES) {
                z[l] -= seam.open[l] / seam.slope[l];
            } else {
                z[l] = state == State.EVERYWHERE ? end[l] : Double.NaN;
            }
        }
    }

    private void unproven(int l, double end) {
        if (proof.sound(l)) {
            scan = scan == null ? new Scan(columns, plan) : scan;
            states[l] = scan.close(l, end);
            z[l] = scan.at();
        }
        if (states[l] == State.UNSURE) {
            reference.close(l, z, topOpen, states);
        }
    }

    @Override
    public double[] closesAt() {
        return z;
    }

    @Override
    public double[] openAtTop() {
        return topOpen;
    }

    @Override
    public byte[] states() {
        return states;
    }

    @Override
    public long referred() {
        return reference.referred();
    }
}

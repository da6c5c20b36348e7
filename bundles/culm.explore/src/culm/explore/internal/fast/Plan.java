package culm.explore.internal.fast;

import java.util.Map;

import culm.blank.Inputs;
import culm.blank.TopAxes;

/**
 * What the quick way takes from the base once, before any block: where the nodes lie, how the cane turns there on the base, how G bends.
 * All of it only starts or speeds up the search; no result depends on it beyond the stated error.
 *
 * @param rule      nodes
 * @param speeds    d phi / d theta of the cane at each node on the base
 * @param turning   dJ/dz of the base
 * @param curvature half of d^2G/dz^2 between the base's closing and its top
 * @param oval      largest ratio of the axes for which the rule's stated error holds
 */
record Plan(BendRule rule, double[] speeds, double turning, double curvature, double oval) {
    /** Largest ratios of the axes, and the nodes that keep the half-width needed within 5e-9 mm up to there. */
    private static final double[] OVAL = {1.9, 2.4, EllipseLanes.MOST_OVAL};
    private static final int[] NODES = {8, 10, 12};
    private static final int BARE_ROUNDS = 14;

    /** A start from nothing. */
    private static double[] bare(BendRule rule) {
        double[] speeds = new double[rule.nodes];
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = 0.35;
        }
        return speeds;
    }

    /** The plan for a base all of whose parts have lanes. */
    static Plan of(Columns varied) {
        Columns columns = new Columns(varied.base(), Map.of());
        TopAxes axes = TopAxes.of(columns.base()).orElseThrow();
        TopLanes top = new TopLanes(columns, axes.wide(), axes.narrow());
        top.prepare(1);
        double base = Math.max(top.a[0] / top.b[0], top.b[0] / top.a[0]);
        Range wide = varied.range(axes.wide());
        Range narrow = varied.range(axes.narrow());
        double most = Math.max(base, Math.max(wide.high() / narrow.low(), narrow.high() / wide.low()));
        int choice = 0;
        while (choice + 1 < OVAL.length && (OVAL[choice] < 1.05 * base || most < 1e6 && OVAL[choice] < most)) {
            choice++;
        }
        BendRule rule = new BendRule(NODES[choice], Math.sqrt(top.b[0] / top.a[0]));
        double[] bare = bare(rule);
        SeamLanes seam = new SeamLanes(columns, rule);
        seam.prepare(bare, 1);
        double length = columns.of(Inputs.STAPLE_LENGTH)[0];
        double[] z = {length};
        double[] turning = {0};
        seam.bend(z, BARE_ROUNDS, 1);
        double topIntegral = seam.bend.integral[0];
        seam.meet(z, seam.bend.integral, turning, 1);
        double topSlope = seam.slope[0];
        double open = seam.open[0];
        double below = Math.min(-0.25, Math.max(-0.2 * length, open < 0 ? -open / topSlope : -0.25));
        z[0] = length + below;
        seam.bend(z, BARE_ROUNDS, 1);
        turning[0] = (topIntegral - seam.bend.integral[0]) / -below;
        seam.meet(z, seam.bend.integral, turning, 1);
        double curvature = (seam.open[0] - open - topSlope * below) / (below * below);
        double[] speeds = new double[rule.nodes];
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = seam.bend.speed(i, 0);
        }
        return new Plan(rule, speeds, turning[0], curvature, OVAL[choice]);
    }
}

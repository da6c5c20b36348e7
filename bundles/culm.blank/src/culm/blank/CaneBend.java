package culm.blank;

import culm.geometry.gouge.GougeSection;
import culm.geometry.numeric.Collocation;
import culm.geometry.section.Section;

/**
 * Lays a blade around a section: theta turns from the blade's middle (the end of the narrow axis) to the seam, phi is the cane's own
 * angle that comes to lie there. From geometry: d mu / d theta = rho(theta) + q t / 2 with mu = g (R phi - T/2), hence
 * d phi / d theta = (rho + q t(phi) / 2) / (g (R - t(phi) / 2)); g and q are the growth of width and thickness.
 * <p>Solved by Gauss collocation: 20 stages on a quarter, 12 on the shorter pieces between the rows of a gouge, where panels end. A panel is halved until its tail
 * (see {@link Collocation#tail(double[])}) is below {@value #ACCEPT}, which leaves an error of at most its square (seen: a tenth of it). Error of phi
 * below 1e-12 for analytic pieces.
 */
final class CaneBend {
    private static final Collocation LONG = new Collocation(20);
    private static final Collocation SHORT = new Collocation(12);
    private static final Collocation QUICK = new Collocation(12);
    private static final double QUICK_ACCEPT = 1e-3;
    private static final double SHORT_PIECE = 0.6;
    private static final double ACCEPT = 1e-6;
    private static final double SETTLED = 2e-15;
    private static final double QUICK_SETTLED = 1e-10;
    private static final double ROUGH = 1e-3;
    private static final double NEARLY = 0.02;
    private static final double AT_BREAK = 1e-11;
    private static final double NEAR_BREAK = 1e-7;
    private static final int DEEPEST = 34;
    /** Panels that may be halved before it is taken as it is: a gouge that is rough all over must not hold up the program. */
    private static final int MOST = 500;
    private static final int ROUNDS = 40;
    private static final int NEWTON = 12;
    private static final double QUARTER = Math.PI / 2;

    private final Section section;
    private final GougeSection gouge;
    private final double radius;
    private final double width;
    private final double thickness;
    private final double[] breaks;
    private final double[] bend = new double[LONG.stages()];
    private final double[] phi = new double[LONG.stages()];
    private final double[] slope = new double[LONG.stages()];
    private final double[] come = new double[LONG.stages()];
    private int left = MOST;
    private boolean smooth;
    private double tail;

    /** @param width growth g of width; @param thickness growth q of thickness */
    CaneBend(Section section, GougeSection gouge, double radius, double width, double thickness) {
        this.section = section;
        this.gouge = gouge;
        this.radius = radius;
        this.width = width;
        this.thickness = thickness;
        this.breaks = gouge.breaks();
    }

    /** The cane's angle phi at the seam, theta = pi/2; NaN where section or gouge give no number. */
    double seam() {
        if (breaks.length == 0) {
            return smooth(0, QUARTER, 0, DEEPEST);
        }
        double about = panel(LONG, 0, QUARTER, 0);
        double[] onTheWay = phi.clone();
        double unsure = tail > ROUGH ? Double.POSITIVE_INFINITY : NEARLY;
        double from = 0;
        double start = 0;
        for (double cut : breaks) {
            if (cut <= start + AT_BREAK || cut > about + unsure) {
                continue;
            }
            if (cut > about - unsure) {
                double end = smooth(from, QUARTER, start, DEEPEST);
                if (end <= cut + AT_BREAK) {
                    return end;
                }
            }
            from = reach(cut, from, start, guess(onTheWay, cut));
            start = cut;
        }
        return smooth(from, QUARTER, start, DEEPEST);
    }

    /** As {@link #seam()}, but by one panel of 12 stages where its tail is below {@value #QUICK_ACCEPT}, good to the square of that then: for how the seam differs between two blanks. */
    double about() {
        if (breaks.length == 0) {
            double end = panel(QUICK, 0, QUARTER, 0);
            if (tail < QUICK_ACCEPT) {
                return end;
            }
        }
        return seam();
    }

    /** Where a first panel over the whole quarter had phi at a row, roughly. */
    private static double guess(double[] onTheWay, double cut) {
        int i = 0;
        while (i < onTheWay.length && onTheWay[i] < cut) {
            i++;
        }
        double before = i == 0 ? 0 : onTheWay[i - 1];
        double a = i == 0 ? 0 : LONG.node(i - 1);
        double b = i == onTheWay.length ? 1 : LONG.node(i);
        double share = i == onTheWay.length ? 0.5 : (cut - before) / (onTheWay[i] - before);
        return QUARTER * (a + share * (b - a));
    }

    /** Where theta brings phi to a row of the gouge: Newton's steps held within a bracket; the last one is not computed again. */
    private double reach(double cut, double from, double start, double guess) {
        double low = from;
        double high = QUARTER;
        double theta = guess > low && guess < high ? guess : 0.5 * (low + high);
        for (int round = 0; round < NEWTON; round++) {
            double off = smooth(from, theta, start, DEEPEST) - cut;
            double next = theta - off / slope(section.curvatureRadius(QUARTER - theta), gouge.thickness(cut + off));
            if (Math.abs(off) < NEAR_BREAK) {
                return Math.min(next, QUARTER);
            }
            low = off < 0 ? theta : low;
            high = off > 0 ? theta : high;
            theta = next > low && next < high ? next : 0.5 * (low + high);
        }
        return theta;
    }

    private double slope(double rho, double t) {
        return (rho + 0.5 * thickness * t) / (width * (radius - 0.5 * t));
    }

    private double smooth(double from, double to, double start, int depth) {
        double end = panel(to - from > SHORT_PIECE ? LONG : SHORT, from, to, start);
        if (smooth || depth == 0 || --left < 0) {
            return end;
        }
        double mid = 0.5 * (from + to);
        return smooth(mid, to, smooth(from, mid, start, depth - 1), depth - 1);
    }

    private double panel(Collocation rule, double from, double to, double start) {
        int n = rule.stages();
        double h = to - from;
        double t = gouge.thickness(start);
        for (int i = 0; i < n; i++) {
            bend[i] = section.curvatureRadius(QUARTER - from - h * rule.node(i));
            slope[i] = slope(bend[i], t);
        }
        boolean settled = false;
        double before = 0;
        for (int round = 0; round < ROUNDS && !settled; round++) {
            double moved = 0;
            rule.advance(slope, come);
            for (int i = 0; i < n; i++) {
                double next = start + h * come[i];
                moved = Math.max(moved, Math.abs(next - phi[i]));
                phi[i] = next;
            }
            for (int i = 0; i < n; i++) {
                slope[i] = slope(bend[i], gouge.thickness(phi[i]));
            }
            // A round moves by a smaller share of the one before than the last did, so it is known by how much the next would move at most.
            double least = (rule == QUICK ? QUICK_SETTLED : SETTLED) * Math.max(1, Math.abs(phi[n - 1]));
            settled = round > 0 && moved <= least || round > 1 && moved * moved <= least * before;
            before = moved;
        }
        double end = start + h * rule.whole(slope);
        if (!Double.isFinite(end)) {
            smooth = true;
            return Double.NaN;
        }
        tail = rule.tail(slope);
        smooth = settled && tail < ACCEPT;
        return end;
    }
}

package culm.blank;

import culm.geometry.gouge.GougeSection;
import culm.geometry.numeric.Collocation;
import culm.geometry.section.Section;

/**
 * Lays a blade around a section: theta turns from the blade's middle (the end of the narrow axis) to the seam, phi is the cane's own
 * angle that comes to lie there. From geometry: d mu / d theta = rho(theta) + q t / 2 with mu = g (R phi - T/2), hence
 * d phi / d theta = (rho + q t(phi) / 2) / (g (R - t(phi) / 2)); g and q are the growth of width and thickness.
 * <p>Solved by Gauss collocation of {@value Collocation#STAGES} stages. A panel is halved until its tail (see {@link Collocation#tail(double[])})
 * is below {@value #ACCEPT}, which leaves an error of about its square; panels end where the gouge has a row. Error of phi below 1e-12.
 */
final class CaneBend {
    private static final int N = Collocation.STAGES;
    private static final double ACCEPT = 1e-6;
    private static final double SETTLED = 2e-15;
    private static final double ROUGH = 1e-3;
    private static final double NEARLY = 1e-4;
    private static final double AT_BREAK = 1e-11;
    private static final double NEAR_BREAK = 1e-7;
    private static final int DEEPEST = 34;
    private static final int ROUNDS = 40;
    private static final int NEWTON = 12;

    private final Section section;
    private final GougeSection gouge;
    private final double radius;
    private final double width;
    private final double thickness;
    private final double[] breaks;
    private final double[] rho = new double[N];
    private final double[] phi = new double[N];
    private final double[] slope = new double[N];
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

    /**
     * The cane's angle phi at the seam, theta = pi/2; NaN where section or gouge give no number.
     */
    double seam() {
        double from = 0;
        double start = 0;
        for (double cut : breaks) {
            if (cut <= start + AT_BREAK) {
                continue;
            }
            double end = panel(from, Math.PI / 2, start);
            if (!smooth && (tail > ROUGH || Math.abs(end - cut) < NEARLY)) {
                end = smooth(from, Math.PI / 2, start, DEEPEST);
                smooth = true;
            }
            if (end <= cut + AT_BREAK) {
                return smooth ? end : smooth(from, Math.PI / 2, start, DEEPEST);
            }
            from = reach(cut, from, start, end);
            start = cut;
        }
        return smooth(from, Math.PI / 2, start, DEEPEST);
    }

    /** Where theta brings phi to a row of the gouge: Newton's steps held within a bracket; the last one is not computed again. */
    private double reach(double cut, double from, double start, double end) {
        double low = from;
        double high = Math.PI / 2;
        double theta = from + (high - from) * (cut - start) / (end - start);
        for (int round = 0; round < NEWTON; round++) {
            double off = smooth(from, theta, start, DEEPEST) - cut;
            double next = theta - off / slope(section.curvatureRadius(Math.PI / 2 - theta), gouge.thickness(cut + off));
            if (Math.abs(off) < NEAR_BREAK) {
                return Math.min(next, Math.PI / 2);
            }
            low = off < 0 ? theta : low;
            high = off > 0 ? theta : high;
            theta = next > low && next < high ? next : 0.5 * (low + high);
        }
        return theta;
    }

    private double slope(double bend, double t) {
        return (bend + 0.5 * thickness * t) / (width * (radius - 0.5 * t));
    }

    private double smooth(double from, double to, double start, int depth) {
        double end = panel(from, to, start);
        if (smooth || depth == 0) {
            return end;
        }
        double mid = 0.5 * (from + to);
        return smooth(mid, to, smooth(from, mid, start, depth - 1), depth - 1);
    }

    private double panel(double from, double to, double start) {
        double h = to - from;
        double t = gouge.thickness(start);
        for (int i = 0; i < N; i++) {
            rho[i] = section.curvatureRadius(Math.PI / 2 - from - h * Collocation.node(i));
            slope[i] = slope(rho[i], t);
        }
        boolean settled = false;
        for (int round = 0; round < ROUNDS && !settled; round++) {
            double moved = 0;
            for (int i = 0; i < N; i++) {
                double next = start + h * Collocation.advance(i, slope);
                moved = Math.max(moved, Math.abs(next - phi[i]));
                phi[i] = next;
            }
            for (int i = 0; i < N; i++) {
                slope[i] = slope(rho[i], gouge.thickness(phi[i]));
            }
            settled = round > 0 && moved <= SETTLED * Math.max(1, Math.abs(phi[N - 1]));
        }
        double end = start + h * Collocation.whole(slope);
        if (!Double.isFinite(end)) {
            smooth = true;
            return Double.NaN;
        }
        tail = Collocation.tail(slope);
        smooth = settled && tail < ACCEPT;
        return end;
    }
}

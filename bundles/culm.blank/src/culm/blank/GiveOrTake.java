package culm.blank;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Executor;

import org.hipparchus.util.KthSelector;

import culm.geometry.GeometryException;

/**
 * The 95 % give or take of closing, turns left and opening at the staple's top. First order: u^2 is the sum of (slope times u_x)^2 with u_x = t / sqrt 3,
 * and the band is 1.96 u to either side (JCGM 100:2008, 5.1.2). It is checked by {@value LatinDraws#DRAWS} draws propagated through the {@link Spread}
 * (JCGM 101:2008, 7.7.2); where an end is off by more than a tenth of the half-width, the draws are used. The draws are the same every time. Seen
 * against 100,000 draws of the full closing: ends within 4 % of the half-width.
 */
final class GiveOrTake {
    /** Two-sided 95 % point of the normal distribution. */
    static final double COVERAGE = 1.959963984540054;
    private static final double TAIL = 0.025;
    private static final double A_TENTH = 0.1;
    private static final double SMALL = 1e-2;
    private static final double FAR = 5;
    private static final double LEAST_SHARE = 0.04;
    /** So many draws at once stay in the nearest cache. */
    private static final int PART = 256;

    private final Blank blank;
    private final Optional<Executor> besides;
    private final double overlap;
    private Optional<Band> closing = Optional.empty();
    private Optional<Band> turns = Optional.empty();
    private Optional<Band> openAtTop = Optional.empty();

    private GiveOrTake(Blank blank, Optional<Executor> besides) {
        this.blank = blank;
        this.besides = besides;
        this.overlap = blank.number(Inputs.STAPLE_LENGTH) - blank.number(Inputs.TIE_LENGTH) + blank.number(Inputs.FOLDED_LENGTH);
    }

    /**
     * The bands of a blank that lies on its staple.
     * @param depth       distance of the closing below the staple's top, mm; NaN when the sides never close
     * @param uncertainty estimate of the closing's standard uncertainty, mm, to know how far to look; 0 when there is none
     * @param besides     where a part is computed at the same time; the bands are the same
     * @throws GeometryException when the blank, or the one that worked, cannot be computed near the top
     */
    static GiveOrTake of(Blank blank, double depth, double uncertainty, Optional<Executor> besides) {
        GiveOrTake result = new GiveOrTake(blank, besides);
        boolean closes = !Double.isNaN(depth);
        double look = Math.min(result.overlap, closes ? depth + FAR * uncertainty + LEAST_SHARE * result.overlap : LEAST_SHARE * result.overlap);
        if (!result.bands(look, closes) && look < result.overlap) {
            result.bands(result.overlap, closes);
        }
        return result;
    }

    Optional<Band> closing() {
        return closing;
    }

    Optional<Band> turns() {
        return turns;
    }

    Optional<Band> openAtTop() {
        return openAtTop;
    }

    /** False when the draws reached below what was looked at. */
    private boolean bands(double look, boolean closes) {
        Spread spread = new Spread(blank, look, besides);
        double[] middle = column(spread.at(new double[spread.names().size()][1]), 0);
        double[] first = firstOrder(spread);
        double[][] drawn = draws(spread);
        Tails[] tails = new Tails[drawn.length];
        Together.each(tails.length, i -> tails[i] = Tails.of(drawn[i]), besides);
        openAtTop = Optional.of(band(middle[2], first[2], tails[2], Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
        if (!closes) {
            return true;
        }
        double top = blank.number(Inputs.STAPLE_LENGTH);
        double wrap = (blank.number(Inputs.WRAP_TOP) - top) / blank.number(Inputs.THREAD_PITCH);
        closing = Optional.of(band(middle[0], first[0], tails[0], top - overlap, top));
        turns = Optional.of(band(middle[1], first[1], tails[1], wrap, Double.POSITIVE_INFINITY));
        return tails[0].low > top - look;
    }

    /** Where 95 % of the draws end on either side, and the share of those without an end. */
    private record Tails(double low, double high, double never) {
        /** @param drawn in any order; put into another */
        static Tails of(double[] drawn) {
            double never = Arrays.stream(drawn).filter(Double::isInfinite).count() / (double) drawn.length;
            int tail = (int) Math.ceil(TAIL * drawn.length) - 1;
            KthSelector nth = new KthSelector(); // sorting them all took longer than drawing them
            return new Tails(nth.select(drawn, null, tail), nth.select(drawn, null, drawn.length - 1 - tail), never);
        }
    }

    private static double[] column(double[][] rows, int i) {
        return Arrays.stream(rows).mapToDouble(row -> row[i]).toArray();
    }

    /** Half-widths of the first order, for each of the three results: each input moved a little up, then a little down. */
    private static double[] firstOrder(Spread spread) {
        int n = spread.names().size();
        double[][] x = new double[n][2 * n];
        for (int k = 0; k < n; k++) {
            x[k][2 * k] = SMALL * spread.reach(k);
            x[k][2 * k + 1] = -SMALL * spread.reach(k);
        }
        double[][] moved = spread.at(x);
        double[] half = new double[moved.length];
        for (int r = 0; r < half.length; r++) {
            double sum = 0;
            for (int k = 0; k < n; k++) {
                double part = spread.reach(k) == 0 ? 0 : (moved[r][2 * k] - moved[r][2 * k + 1]) / (2 * SMALL) / Math.sqrt(3);
                sum += Double.isFinite(part) ? part * part : 0;
            }
            half[r] = COVERAGE * Math.sqrt(sum);
        }
        return half;
    }

    private double[][] draws(Spread spread) {
        LatinDraws draws = new LatinDraws(spread.names());
        double[][] drawn = new double[3][LatinDraws.DRAWS];
        Together.each(LatinDraws.DRAWS / PART, part -> part(spread, draws, part * PART, drawn), besides);
        return drawn;
    }

    private static void part(Spread spread, LatinDraws draws, int from, double[][] drawn) {
        double[][] x = new double[spread.names().size()][PART];
        for (int k = 0; k < x.length; k++) {
            draws.fill(k, from, spread.reach(k), x[k]);
        }
        double[][] part = spread.at(x);
        for (int r = 0; r < drawn.length; r++) {
            System.arraycopy(part[r], 0, drawn[r], from, PART);
        }
    }

    /** The first order's band, or that of the draws where it is off; ends beyond what can be told are cut off. */
    private static Band band(double value, double firstHalf, Tails drawn, double lowest, double highest) {
        double low = drawn.low;
        double high = drawn.high;
        boolean open = Double.isInfinite(low) || Double.isInfinite(high);
        double half = Double.isInfinite(high) ? value - low : Double.isInfinite(low) ? high - value : (high - low) / 2;
        boolean off = Double.isInfinite(high) ? value + firstHalf < highest : Math.abs(value + firstHalf - high) > A_TENTH * half;
        off |= Double.isInfinite(low) ? value - firstHalf > lowest : Math.abs(value - firstHalf - low) > A_TENTH * half;
        if (off) {
            return new Band(Math.max(lowest, low), Math.min(highest, high), half, open, drawn.never, true);
        }
        return new Band(Math.max(lowest, value - firstHalf), Math.min(highest, value + firstHalf), firstHalf, open, drawn.never, false);
    }
}

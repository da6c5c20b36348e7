package culm.explore.internal.run;

import java.util.Arrays;

import culm.explore.internal.fast.State;

/** What is counted over blanks. Whole numbers only, so that the order in which blocks are added never shows. */
public final class Tally {
    /** Turns left are counted from here, in cells of this width. */
    public static final double TURNS_FROM = -64;
    public static final double TURNS_CELL = 1 / 256.0;
    /** Heights likewise, mm. */
    public static final double HEIGHT_FROM = 0;
    public static final double HEIGHT_CELL = 1 / 256.0;
    /** Parts into which each input's range is split, by share of blanks. */
    public static final int THIRDS = 3;
    private static final double SUM_SCALE = 1 << 24;
    private static final double SQUARE_SCALE = 1 << 18;

    public long blanks;
    public long refused;
    public long never;
    public long passedAll;
    public final long[] failed;
    public final long[] turns = new long[128 * 256];
    public final long[] heights = new long[128 * 256];
    /** Blanks by input and third. */
    public final long[][] thirds;
    /** Failures by rule (the last row: any rule), input and third. */
    public final long[][][] failures;
    private long turnsSum;
    private long turnsSquares;
    private long heightSum;
    private long heightSquares;

    public Tally(int rules, int inputs) {
        failed = new long[rules];
        thirds = new long[inputs][THIRDS];
        failures = new long[rules + 1][inputs][THIRDS];
    }

    /** Counts one block. */
    void count(Draws draws, double[] closes, byte[] states, double[] wrapTop, double[] pitch, int[] fails, int n) {
        blanks += n;
        for (int i = 0; i < thirds.length; i++) {
            thirds(draws.u(i), thirds[i], n);
        }
        for (int l = 0; l < n; l++) {
            if (closes[l] == closes[l]) {
                result(closes[l], (wrapTop[l] - closes[l]) / pitch[l]);
            } else if (states[l] == State.REFUSED) {
                refused++;
            } else {
                never++;
            }
            if (fails[l] == 0) {
                passedAll++;
            } else {
                failure(draws, fails[l], l);
            }
        }
    }

    private void result(double height, double left) {
        turns[cell(left, TURNS_FROM, TURNS_CELL, turns.length)]++;
        heights[cell(height, HEIGHT_FROM, HEIGHT_CELL, heights.length)]++;
        turnsSum += (long) (left * SUM_SCALE);
        turnsSquares += (long) (left * left * SQUARE_SCALE);
        heightSum += (long) (height * SUM_SCALE);
        heightSquares += (long) (height * height * SQUARE_SCALE);
    }

    private static int cell(double value, double from, double cell, int cells) {
        return Math.max(0, Math.min(cells - 1, (int) ((value - from) / cell)));
    }

    private static void thirds(double[] u, long[] counts, int n) {
        int low = 0;
        int high = 0;
        for (int l = 0; l < n; l++) {
            low += u[l] < 1 / 3.0 ? 1 : 0;
            high += u[l] >= 2 / 3.0 ? 1 : 0;
        }
        counts[0] += low;
        counts[1] += n - low - high;
        counts[2] += high;
    }

    private void failure(Draws draws, int fails, int l) {
        for (int i = 0; i < thirds.length; i++) {
            double u = draws.u(i)[l];
            int third = u < 1 / 3.0 ? 0 : u >= 2 / 3.0 ? 2 : 1;
            failures[failed.length][i][third]++;
            for (int rest = fails; rest != 0; rest &= rest - 1) {
                failures[Integer.numberOfTrailingZeros(rest)][i][third]++;
            }
        }
        for (int rest = fails; rest != 0; rest &= rest - 1) {
            failed[Integer.numberOfTrailingZeros(rest)]++;
        }
    }

    /** Adds another tally of the same shape. */
    public void add(Tally other) {
        blanks += other.blanks;
        refused += other.refused;
        never += other.never;
        passedAll += other.passedAll;
        add(failed, other.failed);
        add(turns, other.turns);
        add(heights, other.heights);
        for (int i = 0; i < thirds.length; i++) {
            add(thirds[i], other.thirds[i]);
            for (int r = 0; r < failures.length; r++) {
                add(failures[r][i], other.failures[r][i]);
            }
        }
        turnsSum += other.turnsSum;
        turnsSquares += other.turnsSquares;
        heightSum += other.heightSum;
        heightSquares += other.heightSquares;
    }

    private static void add(long[] to, long[] from) {
        Arrays.setAll(to, i -> to[i] + from[i]);
    }

    /** Mean and standard deviation of turns left. */
    public double turnsMean() {
        return turnsSum / SUM_SCALE / closed();
    }

    public double turnsDeviation() {
        return deviation(turnsMean(), turnsSquares / SQUARE_SCALE);
    }

    public double heightMean() {
        return heightSum / SUM_SCALE / closed();
    }

    public double heightDeviation() {
        return deviation(heightMean(), heightSquares / SQUARE_SCALE);
    }

    private double deviation(double mean, double squares) {
        long n = closed();
        return Math.sqrt(Math.max(0, squares - n * mean * mean) / (n - 1));
    }

    private long closed() {
        return blanks - refused - never;
    }

}

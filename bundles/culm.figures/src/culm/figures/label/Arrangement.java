package culm.figures.label;

import java.util.ArrayList;
import java.util.List;

/** All ways to arrange labels with given texts. */
final class Arrangement {
    static final int TRIED = 10;
    private static final double BESIDE = 5;
    private static final double APART = 8;
    private final List<Label> labels;
    private final String[] texts;
    private final double[] widths;
    private final double left;
    private final double right;
    private final int n;

    Arrangement(List<Label> labels, String[] texts, double[] widths, double left, double right) {
        this.labels = labels;
        this.texts = texts;
        this.widths = widths;
        this.left = left;
        this.right = right;
        this.n = texts.length;
    }

    List<PlacedLabel> best() {
        int[] bestRows = null;
        boolean[] bestSides = null;
        double bestCost = Double.POSITIVE_INFINITY;
        long ways = n <= TRIED ? 1L << n : n + 1L;
        for (long way = 0; way < ways; way++) {
            boolean[] sides = new boolean[n];
            for (int i = 0; i < n; i++) {
                sides[i] = n <= TRIED ? (way >> i & 1) != 0 : i < way;
            }
            int[] rows = rows(sides);
            double cost = rows == null ? Double.POSITIVE_INFINITY : cost(rows, sides);
            if (cost < bestCost) {
                bestCost = cost;
                bestRows = rows;
                bestSides = sides;
            }
        }
        List<PlacedLabel> placed = new ArrayList<>();
        for (int i = 0; bestRows != null && i < n; i++) {
            placed.add(new PlacedLabel(labels.get(i), texts[i], bestSides[i], bestRows[i], from(i, bestSides), from(i, bestSides) + widths[i]));
        }
        return placed;
    }

    private double cost(int[] rows, boolean[] sides) {
        double cost = 0;
        int deepest = 0;
        for (int i = 0; i < n; i++) {
            cost += rows[i] + (sides[i] ? 0 : 0.01);
            deepest = Math.max(deepest, rows[i]);
        }
        return cost + 4 * deepest;
    }

    private double from(int i, boolean[] sides) {
        double x = labels.get(i).x();
        return sides[i] ? x - BESIDE - widths[i] : x + BESIDE;
    }

    /** Rows for a choice of sides, or null when there are none. */
    private int[] rows(boolean[] sides) {
        for (int i = 0; i < n; i++) {
            if (from(i, sides) < left || from(i, sides) + widths[i] > right) {
                return null;
            }
        }
        int[] rows = new int[n];
        boolean[] done = new boolean[n];
        for (int placed = 0; placed < n; placed++) {
            int next = next(sides, done);
            if (next < 0) {
                return null;
            }
            rows[next] = row(next, sides, rows, done);
            done[next] = true;
        }
        return rows;
    }

    /** A label whose text no leader of a label without a row runs through. */
    private int next(boolean[] sides, boolean[] done) {
        for (int i = 0; i < n; i++) {
            boolean free = !done[i];
            for (int j = 0; free && j < n; j++) {
                free = done[j] || j == i || !leaderIn(j, i, sides);
            }
            if (free) {
                return i;
            }
        }
        return -1;
    }

    private int row(int i, boolean[] sides, int[] rows, boolean[] done) {
        int row = 0;
        for (int j = 0; j < n; j++) {
            if (done[j] && leaderIn(j, i, sides)) {
                row = Math.max(row, rows[j] + 1);
            }
        }
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int j = 0; j < n; j++) {
                if (done[j] && rows[j] == row && textsMeet(i, j, sides)) {
                    row++;
                    moved = true;
                }
            }
        }
        return row;
    }

    /** Whether the leader of j would run through the text of i. */
    private boolean leaderIn(int j, int i, boolean[] sides) {
        double x = labels.get(j).x();
        double from = from(i, sides);
        return x > from - BESIDE + 1 && x < from + widths[i] + BESIDE - 1;
    }

    private boolean textsMeet(int i, int j, boolean[] sides) {
        return from(i, sides) < from(j, sides) + widths[j] + APART && from(j, sides) < from(i, sides) + widths[i] + APART;
    }
}

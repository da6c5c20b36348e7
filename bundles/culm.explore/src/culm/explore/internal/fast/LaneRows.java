package culm.explore.internal.fast;

import java.util.Arrays;

/**
 * Rows that differ from lane to lane; monotone cubic with the slopes of {@link culm.geometry.numeric.Pchip}. A lane whose rows are out of order has
 * {@link #from} NaN.
 */
final class LaneRows extends WidthLanes {
    private final double[][] place;
    private final double[][] value;
    private final double[] added;
    private final double less;
    private final double[][] d;
    private final double[] first = new double[Columns.SIZE];

    /** @param place columns of the rows' places, [row][lane]; @param value their widths; @param added one length added to every width, less what they hold of it already */
    LaneRows(double[][] place, double[][] value, double[] added, double less) {
        this.place = place;
        this.value = value;
        this.added = added;
        this.less = less;
        this.d = new double[place.length][Columns.SIZE];
    }

    @Override
    void prepare(int n) {
        int rows = place.length;
        for (int l = 0; l < n; l++) {
            first[l] = place[0][l];
            for (int i = 0; i + 1 < rows; i++) {
                if (!(place[i][l] < place[i + 1][l])) {
                    first[l] = Double.NaN;
                }
            }
        }
        if (rows == 2) {
            for (int l = 0; l < n; l++) {
                d[0][l] = step(0, l);
                d[1][l] = d[0][l];
            }
            return;
        }
        for (int i = 1; i + 1 < rows; i++) {
            inner(i, n);
        }
        for (int l = 0; l < n; l++) {
            d[0][l] = end(0, 1, l);
            d[rows - 1][l] = end(rows - 2, rows - 3, l);
        }
    }

    private double step(int i, int l) {
        return (value[i + 1][l] - value[i][l]) / (place[i + 1][l] - place[i][l]);
    }

    private void inner(int i, int n) {
        for (int l = 0; l < n; l++) {
            double s0 = step(i - 1, l);
            double s1 = step(i, l);
            double h0 = place[i][l] - place[i - 1][l];
            double h1 = place[i + 1][l] - place[i][l];
            double before = h0 + 2 * h1;
            double after = 2 * h0 + h1;
            d[i][l] = s0 * s1 > 0 ? (before + after) / (before / s0 + after / s1) : 0;
        }
    }

    private double end(int outer, int inner, int l) {
        double h0 = place[outer + 1][l] - place[outer][l];
        double h1 = place[inner + 1][l] - place[inner][l];
        double s0 = step(outer, l);
        double s1 = step(inner, l);
        double slope = ((2 * h0 + h1) * s0 - h0 * s1) / (h0 + h1);
        if (Math.signum(slope) != Math.signum(s0)) {
            return 0;
        }
        return Math.signum(s0) != Math.signum(s1) && Math.abs(slope) > 3 * Math.abs(s0) ? 3 * s0 : slope;
    }

    @Override
    void at(double[] s, int n) {
        int i = 0;
        for (int l = 0; l < n; l++) {
            i = piece(s[l], l, i);
            double h = place[i + 1][l] - place[i][l];
            double u = s[l] - place[i][l];
            double c1 = d[i][l];
            double c2 = c2(i, l, h);
            double c3 = c3(i, l, h);
            width[l] = Math.fma(u, Math.fma(u, Math.fma(u, c3, c2), c1), value[i][l]) + added[l] - less;
            slope[l] = Math.fma(u, Math.fma(u, 3 * c3, 2 * c2), c1);
        }
    }

    private double c2(int i, int l, double h) {
        return (3 * step(i, l) - 2 * d[i][l] - d[i + 1][l]) / h;
    }

    private double c3(int i, int l, double h) {
        return (d[i][l] + d[i + 1][l] - 2 * step(i, l)) / (h * h);
    }

    private int piece(double s, int l, int start) {
        int i = start;
        while (i > 0 && s < place[i][l]) {
            i--;
        }
        while (i + 2 < place.length && s >= place[i + 1][l]) {
            i++;
        }
        return i;
    }

    @Override
    double from(int lane) {
        return first[lane];
    }

    @Override
    double to(int lane) {
        return place[place.length - 1][lane];
    }

    @Override
    double end(int lane, double at) {
        int i = piece(at, lane, place.length - 2);
        double h = place[i + 1][lane] - place[i][lane];
        double u = at - place[i][lane];
        return value[i][lane] + u * (d[i][lane] + u * (c2(i, lane, h) + u * c3(i, lane, h))) + added[lane] - less;
    }

    @Override
    double steepest(int lane, double from, double to) {
        double most = Double.NEGATIVE_INFINITY;
        int last = piece(to, lane, 0);
        for (int i = piece(from, lane, last); i <= last; i++) {
            double h = place[i + 1][lane] - place[i][lane];
            most = Math.max(most, Cubic.steepest(d[i][lane], c2(i, lane, h), c3(i, lane, h), h));
        }
        return most;
    }

    @Override
    double widestRow(int lane, double from, double to) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < place.length; i++) {
            if (place[i][lane] > from && place[i][lane] < to) {
                most = Math.max(most, value[i][lane] + added[lane] - less);
            }
        }
        return most;
    }

    /** One column held at a value in every lane. */
    static double[] constant(double value) {
        double[] column = new double[Columns.SIZE];
        Arrays.fill(column, value);
        return column;
    }
}

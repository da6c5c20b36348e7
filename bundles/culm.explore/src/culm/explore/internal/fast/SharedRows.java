package culm.explore.internal.fast;

import culm.geometry.numeric.Pchip;

/** Rows that are the same in every lane, but for one length added to every width. Monotone cubic between rows: no piece turns inside. */
final class SharedRows extends WidthLanes {
    private final double[] added;
    private final double less;
    private final double[] place;
    private final double[] value;
    /** Cubic of each piece in s - place, lowest power first. */
    private final double[] c1;
    private final double[] c2;
    private final double[] c3;

    private final double overall;

    SharedRows(Pchip rows, double[] added, double less) {
        this.added = added;
        this.less = less;
        place = rows.places();
        int pieces = place.length - 1;
        value = new double[place.length];
        c1 = new double[pieces];
        c2 = new double[pieces];
        c3 = new double[pieces];
        for (int i = 0; i <= pieces; i++) {
            value[i] = rows.value(place[i]);
        }
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < pieces; i++) {
            double h = place[i + 1] - place[i];
            double step = (value[i + 1] - value[i]) / h;
            double d0 = rows.slope(place[i]);
            double d1 = rows.slope(place[i + 1]);
            c1[i] = d0;
            c2[i] = (3 * step - 2 * d0 - d1) / h;
            c3[i] = (d0 + d1 - 2 * step) / (h * h);
            most = Math.max(most, Cubic.steepest(c1[i], c2[i], c3[i], h));
        }
        overall = most;
    }

    @Override
    void prepare(int n) {
        // nothing: the rows are shared
    }

    @Override
    void at(double[] s, int n) {
        int i = 0;
        for (int l = 0; l < n; l++) {
            i = piece(s[l], i);
            double u = s[l] - place[i];
            width[l] = Math.fma(u, Math.fma(u, Math.fma(u, c3[i], c2[i]), c1[i]), value[i]) + added[l] - less;
            slope[l] = Math.fma(u, Math.fma(u, 3 * c3[i], 2 * c2[i]), c1[i]);
        }
    }

    private int piece(double s, int start) {
        int i = start;
        while (i > 0 && s < place[i]) {
            i--;
        }
        while (i + 2 < place.length && s >= place[i + 1]) {
            i++;
        }
        return i;
    }

    @Override
    double from(int lane) {
        return place[0];
    }

    @Override
    double to(int lane) {
        return place[place.length - 1];
    }

    @Override
    double end(int lane, double at) {
        int i = piece(at, place.length - 2);
        double u = at - place[i];
        return value[i] + u * (c1[i] + u * (c2[i] + u * c3[i])) + added[lane] - less;
    }

    @Override
    double steepest(int lane, double from, double to) {
        if (overall <= 0) {
            return overall;
        }
        double most = Double.NEGATIVE_INFINITY;
        int last = piece(to, 0);
        for (int i = piece(from, last); i <= last; i++) {
            most = Math.max(most, Cubic.steepest(c1[i], c2[i], c3[i], place[i + 1] - place[i]));
        }
        return most;
    }

    @Override
    double widestRow(int lane, double from, double to) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < place.length; i++) {
            if (place[i] > from && place[i] < to) {
                most = Math.max(most, value[i] + added[lane] - less);
            }
        }
        return most;
    }
}

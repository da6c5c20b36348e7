package culm.figures.chart;

import java.util.ArrayList;
import java.util.List;

/** Lines on which a grid of values has one level: marching squares, straight within a cell; cells with a missing corner have none. */
final class Contour {
    private Contour() {
    }

    /** Pieces as pairs of points, each pair followed by a point that is not a number. @param cells [row of y][column of x] */
    static List<double[]> at(double level, double[] x, double[] y, double[][] cells) {
        List<double[]> line = new ArrayList<>();
        for (int r = 0; r + 1 < y.length; r++) {
            for (int c = 0; c + 1 < x.length; c++) {
                cell(level, new double[] {x[c], x[c + 1]}, new double[] {y[r], y[r + 1]},
                        new double[] {cells[r][c], cells[r][c + 1], cells[r + 1][c + 1], cells[r + 1][c]}, line);
            }
        }
        return line;
    }

    /** Corners in turn: low left, low right, high right, high left. */
    private static void cell(double level, double[] x, double[] y, double[] v, List<double[]> line) {
        double[][] at = {{x[0], y[0]}, {x[1], y[0]}, {x[1], y[1]}, {x[0], y[1]}};
        List<double[]> crossings = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            if (Double.isNaN(v[i]) || v[i] < level == v[j] < level || Double.isNaN(v[j])) {
                continue;
            }
            double u = (level - v[i]) / (v[j] - v[i]);
            crossings.add(new double[] {at[i][0] + u * (at[j][0] - at[i][0]), at[i][1] + u * (at[j][1] - at[i][1])});
        }
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            line.add(crossings.get(i));
            line.add(crossings.get(i + 1));
            line.add(new double[] {Double.NaN, Double.NaN});
        }
    }
}

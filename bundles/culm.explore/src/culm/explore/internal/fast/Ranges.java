package culm.explore.internal.fast;

import java.util.Arrays;
import java.util.ArrayList;
import java.util.List;

import culm.geometry.profile.Parameter;

/** Looks whether every varied number that can leave the range of its description stays within it. */
final class Ranges {
    private final List<double[]> columns = new ArrayList<>();
    private final List<Parameter> described = new ArrayList<>();

    Ranges(Columns columns) {
        columns.escaping().forEach((path, parameter) -> {
            this.columns.add(columns.of(path));
            described.add(parameter);
        });
    }

    /** Sets false where a number is out of range or not a number, else true. */
    void check(boolean[] fine, int n) {
        Arrays.fill(fine, 0, n, true);
        for (int c = 0; c < described.size(); c++) {
            double[] column = columns.get(c);
            double min = described.get(c).min();
            double max = described.get(c).max();
            for (int l = 0; l < n; l++) {
                fine[l] &= column[l] >= min && column[l] <= max;
            }
        }
    }
}

package culm.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import culm.blank.Blank;
import culm.blank.Fit;
import culm.blank.Input;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Rows;

/**
 * What varies in a blank when nothing else is said: every input that counts, uniform within its own give or take. A place that is fixed by definition (the
 * first row, the last one at the folded length) does not vary by itself; the last one moves with the folded length.
 * <p>With a fit to a blank that worked, an input that is the same in both does not vary (the fitted length has taken it in), an input that was changed does, and the
 * fitted length varies by the reading's error; first order.
 */
public final class Usual {
    private static final Set<String> WITHOUT_EFFECT = Set.of(Inputs.WALL, Inputs.EARS_WIDTH, Inputs.EARS_LENGTH, Inputs.SLIPPED, Inputs.THREAD_DIAMETER, Inputs.CHECK_TURNS);
    private static final Set<String> PLACED = Set.of(Inputs.TIE_LENGTH, Inputs.WRAP_TOP, Inputs.WRAP_BOTTOM, Inputs.FINISHED, Inputs.CORK_TOP, Inputs.THREAD_PITCH,
            Inputs.FOLDED_LENGTH);
    private static final double NEAR = 1e-9;

    private Usual() {
    }

    /** What varies in a blank. */
    public static List<Varied> of(Blank blank) {
        List<Varied> all = new ArrayList<>();
        for (Input input : blank.inputs()) {
            double t = input.tolerance().plusMinus();
            if (t > 0 && !WITHOUT_EFFECT.contains(input.path()) && !fixed(blank, input) && !absorbed(blank, input)) {
                all.add(new Varied(input.path(), within(input, t), moved(blank, input)));
            }
        }
        blank.fit().ifPresent(fit -> all.add(new Varied(Inputs.DELTA, new Spread.Uniform(reading(fit)))));
        return all;
    }

    /** Plus or minus the give or take, as far as the input can go. */
    private static Spread within(Input input, double t) {
        return new Spread.Uniform(Math.max(-t, input.parameter().min() - input.value()), Math.min(t, input.parameter().max() - input.value()));
    }

    /** Places of rows: the first at the end of its range, the last where the part ends. */
    private static boolean fixed(Blank blank, Input input) {
        if (!input.path().contains("[")) {
            return false;
        }
        Parameter p = input.parameter();
        boolean first = input.path().contains("[0].") && input.value() == p.min();
        return first || input.path().equals(lastPlace(blank, "shape.places", "fromFold", Inputs.FOLDED_LENGTH))
                || input.path().equals(lastPlace(blank, "inside.places", "fromFold", Inputs.FOLDED_LENGTH))
                || input.path().startsWith("staple.places[") && input.path().endsWith("].height") && !has(blank, next(input.path()));
    }

    private static List<String> moved(Blank blank, Input input) {
        if (!input.path().equals(Inputs.FOLDED_LENGTH)) {
            return List.of();
        }
        List<String> also = new ArrayList<>();
        for (String table : List.of("shape.places", "inside.places")) {
            String last = lastPlace(blank, table, "fromFold", Inputs.FOLDED_LENGTH);
            if (!last.isEmpty()) {
                also.add(last);
            }
        }
        return also;
    }

    /** Path of the last row's place where it equals a length; else empty. */
    private static String lastPlace(Blank blank, String table, String column, String length) {
        int dot = table.indexOf('.');
        int row = 0;
        while (has(blank, table.substring(0, dot + 1) + Rows.path(table.substring(dot + 1), row, column))) {
            row++;
        }
        String path = row == 0 ? "" : table.substring(0, dot + 1) + Rows.path(table.substring(dot + 1), row - 1, column);
        return !path.isEmpty() && Math.abs(blank.value(path).orElse(Double.NaN) - blank.number(length)) < NEAR ? path : "";
    }

    private static String next(String path) {
        int open = path.indexOf('[');
        int close = path.indexOf(']');
        return path.substring(0, open + 1) + (Integer.parseInt(path.substring(open + 1, close)) + 1) + path.substring(close);
    }

    private static boolean has(Blank blank, String path) {
        return blank.inputs().stream().anyMatch(i -> i.path().equals(path));
    }

    private static boolean absorbed(Blank blank, Input input) {
        return !PLACED.contains(input.path()) && blank.fit().filter(fit -> fit.same(blank, input.path())).isPresent();
    }

    /** Give or take of the fitted length from that of the reading: half of |dG/dz| times the height of the reading's error. */
    private static double reading(Fit fit) {
        Blank worked = fit.worked();
        double pitch = worked.number(Inputs.THREAD_PITCH);
        double seen = worked.number(Inputs.WRAP_TOP) - fit.turnsLeft() * pitch;
        double top = worked.number(Inputs.STAPLE_LENGTH);
        double step = 0.01;
        try {
            Seam seam = new Seam(worked);
            double low = Math.min(seen, top - step) - step;
            return Math.max(1e-6, Math.abs(seam.open(low + 2 * step) - seam.open(low)) / (2 * step) * fit.readingError() * pitch / 2);
        } catch (GeometryException e) {
            throw new IllegalArgumentException("The blank that worked cannot be computed: " + e.getMessage(), e);
        }
    }
}

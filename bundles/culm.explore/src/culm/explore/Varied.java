package culm.explore;

import java.util.List;

import culm.blank.Blank;
import culm.blank.Widened;
import culm.geometry.profile.Parameter;

/**
 * One number that varies.
 *
 * @param path   its input path, or {@link #WIDTH}
 * @param spread how it scatters
 * @param also   inputs that move by the same length with it, as the last measured place with the folded length
 */
public record Varied(String path, Spread spread, List<String> also) {
    /** One length added to every width of the shape: a caliper that reads wide, a template that is worn. Its own value is 0 unless it was changed. */
    public static final String WIDTH = Widened.PATH;

    public Varied {
        also = List.copyOf(also);
    }

    public Varied(String path, Spread spread) {
        this(path, spread, List.of());
    }

    /** The value of a path in a blank. @throws IllegalArgumentException when the blank has no such number */
    public static double value(Blank blank, String path) {
        return WIDTH.equals(path) ? Widened.by(blank) : blank.value(path).orElseThrow(() -> new IllegalArgumentException("There is no number at " + path + " in this blank."));
    }

    /** The blank with the number at a path changed; {@link #WIDTH} included. */
    public static Blank with(Blank blank, String path, double value) {
        return WIDTH.equals(path) ? Widened.of(blank, value) : blank.with(path, value);
    }

    /** The bench's word for a path. */
    public static String label(Blank blank, String path) {
        if (WIDTH.equals(path)) {
            return "all widths";
        }
        int row = path.indexOf('[');
        String label = blank.inputs().stream().filter(i -> i.path().equals(path)).map(i -> i.parameter().label()).findFirst().orElse(path);
        return row < 0 ? label : label + ", row " + (Integer.parseInt(path.substring(row + 1, path.indexOf(']'))) + 1);
    }

    /** The description of a path, null for {@link #WIDTH}. */
    static Parameter described(Blank blank, String path) {
        return blank.inputs().stream().filter(i -> i.path().equals(path)).map(i -> i.parameter()).findFirst().orElse(null);
    }
}

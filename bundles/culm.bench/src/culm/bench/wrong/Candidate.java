package culm.bench.wrong;

import java.util.List;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;

/**
 * Something that may have been otherwise than noted.
 *
 * @param id        short name, stable
 * @param words     the bench's words
 * @param more      the word for a positive change, such as "longer"
 * @param less      the word for a negative one
 * @param unit      mm, turns, or empty for shares (then said in percent)
 * @param tolerance its own give or take
 * @param paths     inputs that change together; none where only the reading or the turns are concerned
 * @param check     what to look at next, its lengths as {@link culm.geometry.words.Told} keeps them
 */
record Candidate(String id, String words, String more, String less, String unit, double tolerance, List<String> paths, String check) {
    static final String WRAP_TOP = "wrapTop";
    static final String PITCH = "pitch";
    static final String COUNT = "count";

    /** The blank with this change. */
    Blank changed(Blank blank, double by) {
        if (paths.isEmpty()) {
            return blank;
        }
        BlankBuilder b = blank.edit();
        for (String path : paths) {
            b.set(path, blank.value(path).orElseThrow() + by);
        }
        return b.build();
    }

    /** The height that a count of turns means with this change, mm from the bottom of the staple. */
    double height(Blank blank, double turns, double by) {
        double top = blank.number(Inputs.WRAP_TOP);
        double pitch = blank.number(Inputs.THREAD_PITCH);
        return switch (id) {
            case WRAP_TOP -> top + by - turns * pitch;
            case PITCH -> top - turns * (pitch + by);
            case COUNT -> top - (turns + by) * pitch;
            default -> top - turns * pitch;
        };
    }
}

package culm.blank;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Quantity;
import culm.geometry.words.Told;

/**
 * The numbers every blank has, whatever its profiles: described once, by path. A path is a part's name, a dot, and the id of the
 * number; ranges, defaults and usual give or take stand in {@link #all()}; the profiles' own numbers follow the same pattern ({@code staple.topWide}, {@code shape.places[3].width}).
 */
public final class Inputs {
    /** Path of "staple length", mm */
    public static final String STAPLE_LENGTH = "staple.length";
    /** Path of "wall", mm */
    public static final String WALL = "staple.wall";
    /** Path of "cork top", mm; may be left out. */
    public static final String CORK_TOP = "staple.corkTop";
    /** Path of "turns of thin thread", a count; may be left out. */
    public static final String CHECK_TURNS = "staple.checkTurns";
    /** Path of "thin thread", mm; may be left out. */
    public static final String CHECK_THREAD = "staple.checkThread";
    /** Path of "unwound length", mm; may be left out. */
    public static final String CHECK_LENGTH = "staple.checkLength";
    /** Path of "tube", mm */
    public static final String TUBE = "gouge.tube";
    /** Path of "folded length", mm */
    public static final String FOLDED_LENGTH = "shape.foldedLength";
    /** Path of "ears, extra width", mm; may be left out. */
    public static final String EARS_WIDTH = "shape.earsWidth";
    /** Path of "ears, length", mm; may be left out. */
    public static final String EARS_LENGTH = "shape.earsLength";
    /** Path of "thread", mm */
    public static final String THREAD_DIAMETER = "thread.diameter";
    /** Path of "turn to turn", mm */
    public static final String THREAD_PITCH = "thread.pitch";
    /** Path of "start below the top", a count */
    public static final String START_TURNS = "thread.startTurns";
    /** Path of "tie length", mm */
    public static final String TIE_LENGTH = "tie.length";
    /** Path of "top of the wrap", mm */
    public static final String WRAP_TOP = "tie.wrapTop";
    /** Path of "bottom of the wrap", mm; may be left out. */
    public static final String WRAP_BOTTOM = "tie.wrapBottom";
    /** Path of "finished length", mm; may be left out. */
    public static final String FINISHED = "tie.finished";
    /** Path of "crooked by", mm */
    public static final String CROOKED = "tie.crooked";
    /** Path of "slipped by", mm */
    public static final String SLIPPED = "tie.slipped";
    /** Path of "swelling of width", a share */
    public static final String SWELL_WIDTH = "cane.swellWidth";
    /** Path of "swelling of thickness", a share */
    public static final String SWELL_THICKNESS = "cane.swellThickness";
    /** Path of "thickness lost under the thread", a share */
    public static final String COMPRESSION = "cane.compression";
    /** Path of "fitted length", mm */
    public static final String DELTA = "fit.delta";

    private static final double ABSENT = Double.NaN;
    private static final Map<String, Parameter> ALL = describe();

    private Inputs() {
    }

    /** Every described number by path, in the order of the bench. */
    public static Map<String, Parameter> all() {
        return ALL;
    }

    /** Ids of the numbers that a part has whatever its profile, {@code length} for {@code staple}; none for an unknown part. */
    public static Set<String> of(String part) {
        return ALL.keySet().stream().filter(path -> path.startsWith(part + ".")).map(path -> path.substring(part.length() + 1))
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Map<String, Parameter> describe() {
        Map<String, Parameter> all = new LinkedHashMap<>();
        length(all, STAPLE_LENGTH, "staple length", 5, 100, 47, 0.1, true, "Measured with a caliper, bottom to top; always measure, whatever its kind is said to be.");
        length(all, WALL, "wall", 0.02, 2, 0.25, 0.02, false, "Thickness of the staple's metal.");
        length(all, CORK_TOP, "cork top", 0, 100, ABSENT, 0.3, true, "From the bottom of the staple to the top of the cork; an English horn staple has none.");
        put(all, CHECK_TURNS, "turns of thin thread", Quantity.COUNT, 1, 200, ABSENT, 0, false, "Turns of thin thread wound around the staple's top to measure its perimeter.");
        length(all, CHECK_THREAD, "thin thread", 0.01, 1, ABSENT, 0.01, false, "Diameter of that thin thread.");
        length(all, CHECK_LENGTH, "unwound length", 1, 5000, ABSENT, 0.5, false, "Length of that thread, unwound.");
        length(all, TUBE, "tube", 5, 30, 10.5, 0.2, true, "Diameter of the tube of cane. Common practice for oboe " + span(10, 10.5) + ".");
        length(all, FOLDED_LENGTH, "folded length", 5, 120, 37, 0.2, true, "From the fold to the end of the cane.");
        length(all, EARS_WIDTH, "ears, extra width", 0, 10, ABSENT, 0.1, false, "Extra width left on each side at the fold; clipped after tying.");
        length(all, EARS_LENGTH, "ears, length", 0, 30, ABSENT, 0.2, false, "How far the ears reach from the fold.");
        length(all, TIE_LENGTH, "tie length", 10, 150, 72, 0.3, true, "From the bottom of the staple to the fold, as tied. Common practice for oboe " + span(72) + ", " + span(70, 75) + " occur.");
        length(all, WRAP_TOP, "top of the wrap", 1, 100, 46.5, 0.2, true, "Where the thread stops; never above the staple's top.");
        length(all, WRAP_BOTTOM, "bottom of the wrap", 0, 100, ABSENT, 0.3, false, "Where the thread ends below; left out, it is the cork's top.");
        length(all, FINISHED, "finished length", 5, 150, ABSENT, 0.3, true, "From the bottom of the staple to the tip of the finished reed. Common practice for oboe " + span(70) + ".");
        length(all, THREAD_DIAMETER, "thread", 0.02, 2, 0.41, 0.02, true, "Diameter of the thread. FF is taken as " + span(0.41) + "; measure turns side by side.");
        length(all, THREAD_PITCH, "turn to turn", 0.02, 5, 0.41, 0.02, false, "Height of one turn; with no gaps, the thread's diameter.");
        put(all, START_TURNS, "start below the top", Quantity.COUNT, 0, 60, 5, 0, false, "How many turns below the top of the wrap the thread starts.");
        length(all, CROOKED, "crooked by", -2, 2, 0, 0, false, "Both blades moved to the same side; positive opens the left side.");
        length(all, SLIPPED, "slipped by", -2, 2, 0, 0, false, "Blades moved to opposite sides, signed; drawn, and without effect on where the sides close.");
        put(all, SWELL_WIDTH, "swelling of width", Quantity.SHARE, -0.1, 0.3, 0, 0.02, false, "How much wider soaked cane is than dry cane, as a share.");
        put(all, SWELL_THICKNESS, "swelling of thickness", Quantity.SHARE, -0.1, 0.5, 0, 0, false, "How much thicker soaked cane is than dry cane, as a share.");
        put(all, COMPRESSION, "thickness lost under the thread", Quantity.SHARE, 0, 0.6, 0.05, 0.05, false, "Share of the thickness that the thread presses out along the whole tie.");
        length(all, DELTA, "fitted length", -2, 2, 0, 0, false, "One length added to half of the blade's width, so that a blank that worked is met.");
        return Collections.unmodifiableMap(all);
    }

    private static void length(Map<String, Parameter> all, String path, String label, double min, double max, double standard, double tolerance,
            boolean first, String help) {
        put(all, path, label, Quantity.LENGTH, min, max, standard, tolerance, first, help);
    }

    private static String span(double... mm) {
        return DoubleStream.of(mm).mapToObj(v -> Told.given(v, v == Math.rint(v) ? String.valueOf((long) v) : String.valueOf(v))).collect(Collectors.joining(" to ")) + " " + Told.UNIT;
    }

    private static void put(Map<String, Parameter> all, String path, String label, Quantity quantity, double min, double max, double standard,
            double tolerance, boolean first, String help) {
        all.put(path, new Parameter(path.substring(path.indexOf('.') + 1), label, quantity, min, max, standard, tolerance, first, help));
    }
}

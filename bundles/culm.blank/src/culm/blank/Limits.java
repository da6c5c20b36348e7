package culm.blank;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Quantity;

/** <i>My limits</i>: what a studio asks of a blank. The defaults are common practice, no source. Immutable. */
public final class Limits {
    /** Id of the turns that should be left, a count. */
    public static final String TURNS_WANTED = "turnsWanted";
    /** Id of the fewest turns that may be left, a count. */
    public static final String TURNS_FEWEST = "turnsFewest";
    /** Id of the most turns that may be left, a count. */
    public static final String TURNS_MOST = "turnsMost";
    /** Id of the most that the sides may be pinched at the staple's top, mm. */
    public static final String PINCHED_MOST = "pinchedMost";
    /** Id of the shortest tie, mm; may be left out. */
    public static final String TIE_SHORTEST = "tieShortest";
    /** Id of the longest tie, mm; may be left out. */
    public static final String TIE_LONGEST = "tieLongest";

    private static final Map<String, Parameter> ALL = describe();
    /** The defaults. */
    public static final Limits STANDARD = new Limits(Map.of());
    private final Map<String, Double> given;

    private Limits(Map<String, Double> given) {
        this.given = given;
    }

    /** Every limit with its description, by id. */
    public static Map<String, Parameter> all() {
        return ALL;
    }

    /** One limit; NaN when it is optional and was not given. */
    public double get(String id) {
        Double value = given.get(id);
        return value != null ? value : ALL.get(id).standard();
    }

    /** The same limits with one changed. @throws IllegalArgumentException when there is no such limit or the value is out of its range */
    public Limits with(String id, double value) {
        Parameter described = ALL.get(id);
        if (described == null) {
            throw new IllegalArgumentException("There is no limit called " + id + ".");
        }
        described.refuse(value).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        Map<String, Double> copy = new HashMap<>(given);
        copy.put(id, value);
        return new Limits(copy);
    }

    /** Those that differ from the defaults. */
    public Map<String, Double> changed() {
        return Collections.unmodifiableMap(given);
    }

    private static Map<String, Parameter> describe() {
        Map<String, Parameter> all = new LinkedHashMap<>();
        put(all, new Parameter(TURNS_WANTED, "turns left, wanted", Quantity.COUNT, -20, 40, 1, 0, true, "Turns that should be left when the sides close."));
        put(all, new Parameter(TURNS_FEWEST, "turns left, fewest", Quantity.COUNT, -20, 40, 0, 0, true, "With fewer turns left the blank leaks."));
        put(all, new Parameter(TURNS_MOST, "turns left, most", Quantity.COUNT, -20, 40, 2, 0, true,
                "With more turns left the thread crushes closed cane and springs the sides open higher up."));
        put(all, Parameter.length(PINCHED_MOST, "pinched at the staple's top, most", 0, 2, 0.4, 0, false, "How far the sides may be pressed together at the staple's top."));
        put(all, Parameter.length(TIE_SHORTEST, "tie length, shortest", 10, 150, Double.NaN, 0, false, "Remedies do not propose a shorter tie; left out, any that fits the parts."));
        put(all, Parameter.length(TIE_LONGEST, "tie length, longest", 10, 150, Double.NaN, 0, false, "Remedies do not propose a longer tie; left out, any that fits the parts."));
        return Collections.unmodifiableMap(all);
    }

    private static void put(Map<String, Parameter> all, Parameter parameter) {
        all.put(parameter.id(), parameter);
    }
}

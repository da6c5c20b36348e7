package culm.blank;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** The marks of a blank as heights from the bottom of the staple, mm; marks that do not exist are absent. */
public final class Heights {
    private final Map<Mark, Double> marks = new LinkedHashMap<>();

    Heights(Blank blank, OptionalDouble closes) {
        put(Mark.CORK_TOP, blank.number(Inputs.CORK_TOP));
        put(Mark.WRAP_BOTTOM, wrapBottom(blank));
        put(Mark.CANE_END, blank.number(Inputs.TIE_LENGTH) - blank.number(Inputs.FOLDED_LENGTH));
        closes.ifPresent(z -> put(Mark.SIDES_CLOSE, z));
        put(Mark.WRAP_TOP, blank.number(Inputs.WRAP_TOP));
        put(Mark.STAPLE_TOP, blank.number(Inputs.STAPLE_LENGTH));
        put(Mark.FINISHED, blank.number(Inputs.FINISHED));
        put(Mark.FOLD, blank.number(Inputs.TIE_LENGTH));
    }

    /** The bottom of the wrap: as given, else the cork's top; NaN when there is neither. */
    static double wrapBottom(Blank blank) {
        double given = blank.number(Inputs.WRAP_BOTTOM);
        return Double.isNaN(given) ? blank.number(Inputs.CORK_TOP) : given;
    }

    private void put(Mark mark, double z) {
        if (Double.isFinite(z)) {
            marks.put(mark, z);
        }
    }

    /** Height of a mark, if it exists. */
    public OptionalDouble of(Mark mark) {
        Double z = marks.get(mark);
        return z == null ? OptionalDouble.empty() : OptionalDouble.of(z);
    }

    /** All marks that exist, from the bottom's list to the fold. */
    public Map<Mark, Double> all() {
        return java.util.Collections.unmodifiableMap(marks);
    }
}

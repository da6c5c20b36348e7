package culm.workbench.internal.sharing;

import java.util.Comparator;
import java.util.List;

import culm.design.compare.Difference;
import culm.design.compare.Side;
import culm.design.compare.ThreeWay;
import culm.geometry.words.LengthText;

/**
 * What differs in one file.
 *
 * @param file its name as it is shown
 * @param rows each value, those that both changed differently first
 */
public record Compared(String file, List<Difference> rows) {
    /** What differs, in the order in which a person looks at it. */
    public Compared {
        rows = rows.stream().sorted(Comparator.comparing(d -> d.side() != Side.CONFLICT)).toList();
    }

    /** {@return the same with lengths in some unit} */
    Compared in(LengthText unit) {
        return new Compared(file, rows.stream().map(d -> d.in(unit)).toList());
    }

    /** {@return everything in which versions of a file differ} */
    static Compared of(String file, ThreeWay three) {
        return new Compared(file, three.differences());
    }
}

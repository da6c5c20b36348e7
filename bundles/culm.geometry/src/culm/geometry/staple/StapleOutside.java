package culm.geometry.staple;

import java.util.OptionalDouble;

import culm.geometry.section.Section;

/** The outside of a staple: a section at every height z from 0 (bottom) to its length, mm. */
public interface StapleOutside {
    /** Staple length, mm. */
    double length();

    /** The outside section at height z, 0 &lt;= z &lt;= length. */
    Section section(double z);

    /** Heights where the outside is not smooth, ascending, mm; the ends need not be named. */
    default double[] breaks() {
        return new double[0];
    }

    /** Volume inside the outside surface, mm^3, where a closed form is known. */
    default OptionalDouble closedVolume() {
        return OptionalDouble.empty();
    }
}

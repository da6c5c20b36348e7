package culm.blank;

import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.WidthMeasure;

/**
 * How the cane was cut and measured.
 *
 * @param measure  what of the bark side the widths are
 * @param edges    how the sides were cut
 * @param shapeDry whether the widths were measured on dry cane
 * @param gougeDry whether the thickness was measured on dry cane
 */
public record Cut(WidthMeasure measure, EdgeKind edges, boolean shapeDry, boolean gougeDry) {
    /** Chord, square to the chord, both measured dry. */
    public static final Cut STANDARD = new Cut(WidthMeasure.CHORD, EdgeKind.SQUARE, true, true);
}

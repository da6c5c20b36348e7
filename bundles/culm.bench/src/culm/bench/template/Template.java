package culm.bench.template;

import java.util.List;

import culm.blank.Blank;
import culm.blank.CaneOutline;
import culm.geometry.section.Point;
import culm.geometry.shape.Outline;
import culm.geometry.shape.WidthMeasure;

/**
 * Outlines of the cane as cut, mm; x along the cane from the fold, y across. The ears are part of them.
 *
 * @param outline the outline they come from
 * @param flat    both blades before folding, laid flat: widths along the bark
 * @param folded  one blade: widths straight across, as a caliper measures
 */
public record Template(Outline outline, List<Point> flat, List<Point> folded) {
    /** Largest distance of the polygons from the true outline, mm. */
    public static final double TOLERANCE = 0.005;

    /** @throws culm.geometry.GeometryException when the parts cannot be built or the cane is wider than its tube */
    public static Template of(Blank blank) {
        Outline outline = CaneOutline.of(blank);
        return new Template(outline, outline.unfolded(WidthMeasure.ARC, TOLERANCE), outline.folded(WidthMeasure.CHORD, TOLERANCE));
    }
}

package culm.design;

import culm.blank.Cut;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.WidthMeasure;
import culm.model.Edges;
import culm.model.GougePart;
import culm.model.Moisture;
import culm.model.Part;
import culm.model.ShapePart;
import culm.model.WidthsAlong;

/** How parts say that the cane was cut and measured. */
public final class Cuts {
    private Cuts() {
    }

    /** {@return the cut of a shape on a gouge} */
    public static Cut of(ShapePart shape, GougePart gouge) {
        return of(shape, dry(gouge));
    }

    /** {@return the cut of a shape alone, on a gouge that was measured dry} */
    public static Cut of(ShapePart shape) {
        return of(shape, true);
    }

    private static Cut of(ShapePart shape, boolean gougeDry) {
        WidthMeasure measure = shape.getWidthsAlong() == WidthsAlong.ARC && shape.isSetWidthsAlong() ? WidthMeasure.ARC : WidthMeasure.CHORD;
        EdgeKind edges = !shape.isSetEdges() || shape.getEdges() == Edges.SQUARE ? EdgeKind.SQUARE
                : shape.getEdges() == Edges.RADIAL ? EdgeKind.RADIAL : EdgeKind.TWO_WIDTHS;
        return new Cut(measure, edges, dry(shape), gougeDry);
    }

    /** Not said counts as dry: that is how a shaped piece is measured before it is soaked. */
    private static boolean dry(Part part) {
        return !part.isSetMoisture() || part.getMoisture() == Moisture.DRY;
    }
}

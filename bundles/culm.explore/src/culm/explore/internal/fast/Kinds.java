package culm.explore.internal.fast;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Widened;
import culm.geometry.profile.Table;
import culm.geometry.numeric.Pchip;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.Waisted;
import culm.geometry.staple.MeasuredStaple;
import culm.geometry.staple.RolledSheet;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/** Which kinds of parts have lanes here; all others are closed by the general path. */
final class Kinds {
    private Kinds() {
    }

    /** Whether every part of a blank has lanes. */
    static boolean known(Blank blank) {
        StapleType staple = blank.staple().type();
        ShapeType shape = Widened.inner(blank.shape().type());
        return (staple instanceof StraightSidedOval || staple instanceof RolledSheet || staple instanceof MeasuredStaple) && GougeLanes.knows(blank.gouge().type()) && blank.gougeEnd().isEmpty()
                && (shape instanceof MeasuredShape || shape instanceof StraightTaper || shape instanceof Waisted);
    }

    static StapleLanes staple(Columns columns, BendRule rule) {
        StapleType type = columns.base().staple().type();
        return type instanceof RolledSheet ? new RolledLanes(columns, rule) : type instanceof MeasuredStaple ? new MeasuredLanes(columns, rule) : new OvalLanes(columns, rule);
    }

    static WidthLanes width(Columns columns) {
        double[] added = columns.of(Widened.PATH);
        ShapeType type = Widened.inner(columns.base().shape().type());
        if (type instanceof MeasuredShape) {
            return rows(columns, "shape.", columns.base().shape().values().table(MeasuredShape.PLACES), added, 0);
        }
        double[] start = LaneRows.constant(0);
        double[] end = columns.of(Inputs.FOLDED_LENGTH);
        double[][] widths = type instanceof StraightTaper ? new double[][] {columns.of("shape.fold"), columns.of("shape.end")}
                : new double[][] {columns.of("shape.fold"), columns.of("shape.throat"), columns.of("shape.end")};
        double[][] places = type instanceof StraightTaper ? new double[][] {start, end} : new double[][] {start, columns.of("shape.throatAt"), end};
        return new LaneRows(places, widths, added, 0);
    }

    /** Rows of a table, shared where none of its cells is varied. @param less what is added to the table's widths already */
    static WidthLanes rows(Columns columns, String part, Table table, double[] added, double less) {
        if (columns.varies(part + MeasuredShape.PLACES)) {
            double[][] places = new double[table.rows()][];
            double[][] widths = new double[table.rows()][];
            for (int i = 0; i < table.rows(); i++) {
                places[i] = columns.of(part + MeasuredShape.PLACES + "[" + i + "].fromFold");
                widths[i] = columns.of(part + MeasuredShape.PLACES + "[" + i + "].width");
            }
            return new LaneRows(places, widths, added, less);
        }
        return new SharedRows(new Pchip(table.column(0), table.column(1)), added, less);
    }
}

package culm.geometry.shape;

import java.util.List;

import culm.geometry.numeric.Pchip;
import culm.geometry.profile.MeasuredPlaces;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;

/** Width measured at distances from the fold, monotone cubic between them. */
public final class MeasuredShape extends MeasuredPlaces implements ShapeType {
    /** The described rows, used for inside widths as well. */
    public static final TableParameter TABLE = places(List.of(
            Parameter.length("fromFold", "from the fold", 0, 120, 0, 0.2, true, "Distance from the fold along the blade."),
            Parameter.length("width", "width", 0.2, 30, 5, 0.05, true, "Width of the cane as cut.")),
            Table.of(new double[] {0, 7.00}, new double[] {4, 6.95}, new double[] {10, 6.55}, new double[] {16, 5.75}, new double[] {22, 5.10},
                    new double[] {26, 4.83}, new double[] {30, 4.65}, new double[] {37, 4.35}),
            "Width at several distances from the fold; they have to reach from the staple's top to the end of the cane.");

    /** Made by the registry. */
    public MeasuredShape() {
        super("culm.shape.measured", "The width of the shaped cane measured at two or more distances from the fold.", TABLE);
    }

    @Override
    public ShapeWidth width(Values values, double foldedLength) {
        Table rows = values.table(PLACES);
        return new PchipWidth(new Pchip(rows.column(0), rows.column(1)));
    }
}

package culm.explore.internal.fast;

import java.util.List;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Profile;
import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;

/** Any shape with one length added to every width: a caliper that reads wide, a template that is worn. */
public record WiderShape(ShapeType inner, double added) implements ShapeType {
    /** The path under which the added length is varied, mm. */
    public static final String PATH = "shape.width";

    /** What is added to the widths of a blank, mm. */
    public static double added(Blank blank) {
        return blank.shape().type() instanceof WiderShape wider ? wider.added : 0;
    }

    /** The blank with so much added to every width, inside widths too, instead of what was added before. */
    public static Blank widened(Blank blank, double added) {
        ShapeType type = inner(blank.shape().type());
        BlankBuilder edit = blank.edit().shape(new Profile<>(added == 0 ? type : new WiderShape(type, added), blank.shape().values()));
        blank.insideWidths().ifPresent(rows -> edit.insideWidths(widened(rows, added - added(blank))));
        return edit.build();
    }

    /** The shape without what was added. */
    static ShapeType inner(ShapeType type) {
        return type instanceof WiderShape wider ? wider.inner : type;
    }

    private static Table widened(Table rows, double added) {
        Table wider = rows;
        for (int i = 0; i < rows.rows(); i++) {
            wider = wider.with(i, 1, rows.cell(i, 1) + added);
        }
        return wider;
    }

    @Override
    public String id() {
        return inner.id();
    }

    @Override
    public int version() {
        return inner.version();
    }

    @Override
    public String name() {
        return inner.name();
    }

    @Override
    public String help() {
        return inner.help();
    }

    @Override
    public List<Parameter> parameters() {
        return inner.parameters();
    }

    @Override
    public List<TableParameter> tables() {
        return inner.tables();
    }

    @Override
    public List<GeometryException> check(Values values) {
        return inner.check(values);
    }

    @Override
    public ShapeWidth width(Values values, double foldedLength) {
        ShapeWidth narrow = inner.width(values, foldedLength);
        return new ShapeWidth() {
            @Override
            public double from() {
                return narrow.from();
            }

            @Override
            public double to() {
                return narrow.to();
            }

            @Override
            public double at(double s) {
                return narrow.at(s) + added;
            }

            @Override
            public double[] breaks() {
                return narrow.breaks();
            }
        };
    }
}

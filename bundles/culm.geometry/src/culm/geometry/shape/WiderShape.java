package culm.geometry.shape;

import java.util.List;

import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.geometry.words.Told;

/**
 * Any shape with one length added to every width: cane shaped a little wider than the template, a caliper that reads wide. Describes itself like the shape
 * it widens.
 *
 * @param inner the shape
 * @param added length added to each width, mm; negative makes it narrower
 */
public record WiderShape(ShapeType inner, double added) implements ShapeType {
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
    public Values migrate(int fromVersion, Values older) {
        return inner.migrate(fromVersion, older);
    }

    @Override
    public List<TableParameter> tables(int olderVersion) {
        return inner.tables(olderVersion);
    }

    @Override
    public String origin(int olderVersion, String parameter) {
        return inner.origin(olderVersion, parameter);
    }

    @Override
    public Values standard() {
        return inner.standard();
    }

    /** @throws GeometryException when nothing would be left of the width, or the shape refuses */
    @Override
    public ShapeWidth width(Values values, double foldedLength) {
        ShapeWidth plain = inner.width(values, foldedLength);
        return new ShapeWidth() {
            @Override
            public double from() {
                return plain.from();
            }

            @Override
            public double to() {
                return plain.to();
            }

            @Override
            public double at(double s) {
                double width = plain.at(s) + added;
                if (!(width > 0)) {
                    throw new GeometryException("", "Nothing is left of the width when " + Told.given(-added) + " " + Told.UNIT + " are taken away.");
                }
                return width;
            }

            @Override
            public double[] breaks() {
                return plain.breaks();
            }
        };
    }
}

package culm.extensions;

import java.util.List;
import java.util.function.Function;

import culm.blank.export.Exporter;
import culm.blank.rules.Rule;
import culm.geometry.gouge.GougeType;
import culm.geometry.profile.ProfileType;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;

/**
 * One of Culm's extension points.
 *
 * @param name    its simple name; the full one begins with {@value Extensions#NAMESPACE} and a dot
 * @param element the element that names one class
 * @param word    what one contribution is called in a sentence
 * @param part    the part of a blank that it describes, {@code staple}; empty when none
 * @param kind    what the class has to be
 * @param idOf    the id that an instance says it has
 * @param nameOf  the name that an instance says it has
 */
public record Point<T>(String name, String element, String word, String part, Class<T> kind, Function<T, String> idOf, Function<T, String> nameOf) {
    /** Kinds of staple. */
    public static final Point<StapleType> STAPLES = profiles("staple", StapleType.class);
    /** Kinds of gouge. */
    public static final Point<GougeType> GOUGES = profiles("gouge", GougeType.class);
    /** Kinds of shape. */
    public static final Point<ShapeType> SHAPES = profiles("shape", ShapeType.class);
    /** Rules. */
    public static final Point<Rule> RULES = new Point<>("rules", "rule", "rule", "", Rule.class, Rule::id, Rule::name);
    /** Exporters. */
    public static final Point<Exporter> EXPORTERS = new Point<>("exporters", "exporter", "exporter", "", Exporter.class, Exporter::id, Exporter::name);

    /** All of them. */
    public static List<Point<?>> all() {
        return List.of(STAPLES, GOUGES, SHAPES, RULES, EXPORTERS);
    }

    private static <T extends ProfileType> Point<T> profiles(String part, Class<T> kind) {
        return new Point<>(part + "Types", part + "Type", part + " type", part, kind, ProfileType::id, ProfileType::name);
    }

    /** The id by which plug-ins extend it. */
    public String fullName() {
        return Extensions.NAMESPACE + "." + name;
    }
}

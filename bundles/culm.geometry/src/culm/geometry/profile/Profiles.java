package culm.geometry.profile;

import culm.geometry.gouge.GougeType;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;

/**
 * The three registries a program needs to understand a design.
 *
 * @param staples kinds of staples
 * @param gouges  kinds of gouges
 * @param shapes  kinds of shapes
 */
public record Profiles(Registry<StapleType> staples, Registry<GougeType> gouges, Registry<ShapeType> shapes) {
    /** What {@link java.util.ServiceLoader} finds on the class path. */
    public static Profiles load() {
        return new Profiles(Registry.load(StapleType.class), Registry.load(GougeType.class), Registry.load(ShapeType.class));
    }
}

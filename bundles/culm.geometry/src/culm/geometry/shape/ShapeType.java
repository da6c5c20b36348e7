package culm.geometry.shape;

import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Values;

/** A kind of shape: from its parameters to the width of the cane as cut. */
public interface ShapeType extends ProfileType {
    /**
     * The width along the blade with these (checked) values.
     * @param foldedLength from the fold to the end of the cane, mm, positive
     * @throws culm.geometry.GeometryException when the numbers do not go together; path is a parameter id
     */
    ShapeWidth width(Values values, double foldedLength);
}

package culm.geometry.gouge;

import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Values;

/** A kind of gouge: from its parameters and the tube to the thickness. */
public interface GougeType extends ProfileType {
    /**
     * Thickness over the angle, with these (checked) values.
     * @param tubeRadius radius of the bark surface, mm, positive
     * @throws culm.geometry.GeometryException when the numbers do not go together; path is a parameter id
     */
    GougeSection section(Values values, double tubeRadius);
}

package culm.geometry.staple;

import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Values;

/** A kind of staple: from its parameters and its length to the outside. */
public interface StapleType extends ProfileType {
    /**
     * The outside of a staple with these (checked) values.
     * @param length staple length, mm, positive
     * @throws culm.geometry.GeometryException when the numbers do not go together; path is a parameter id
     */
    StapleOutside outside(Values values, double length);

    /**
     * The values with the top's axes multiplied by k, for a top whose perimeter was measured with thread.
     * @param k positive factor, near 1
     */
    Values topScaled(Values values, double k);
}

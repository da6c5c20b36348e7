package culm.blank;

import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Values;

/**
 * A profile type together with its values.
 *
 * @param type   the kind
 * @param values its numbers and rows, checked only when the parts are built
 */
public record Profile<T extends ProfileType>(T type, Values values) {
    /** The type with what it assumes when nothing was measured. */
    public static <T extends ProfileType> Profile<T> standard(T type) {
        return new Profile<>(type, type.standard());
    }

    /** The same type with other values. */
    public Profile<T> with(Values other) {
        return new Profile<>(type, other);
    }
}

package culm.geometry.staple;

import java.util.OptionalDouble;

/**
 * How a staple tapers, always as half-angles: the angle between the axis and one side, radians; positive when it narrows towards the top. Outside
 * and bore have the same two angles, for the wall is the same everywhere.
 *
 * @param wide   across the wide axis
 * @param narrow across the narrow axis
 * @param bore   of the round cone whose sections have the bore's area; empty where the wall does not fit inside the outside
 */
public record HalfAngles(double wide, double narrow, OptionalDouble bore) {
}

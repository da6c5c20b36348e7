package culm.blank;

/**
 * One point of the course of the seam.
 *
 * @param z    height above the bottom of the staple, mm
 * @param open how far the sides are open there, mm; negative when pinched
 */
public record SeamPoint(double z, double open) {
}

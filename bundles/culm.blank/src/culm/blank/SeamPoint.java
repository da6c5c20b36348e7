package culm.blank;

/** One point of the course of the seam: height z and how far the sides are open there, both mm. */
public record SeamPoint(double z, double open) {
}

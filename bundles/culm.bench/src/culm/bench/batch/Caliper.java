package culm.bench.batch;

import culm.blank.Tolerance;

/**
 * The caliper all readings of a batch were taken with.
 *
 * @param largestError the largest error its maker permits between the outside jaws, mm, not negative; 0.02 or 0.03 are usual for a
 *                     caliper that shows hundredths (from memory)
 */
public record Caliper(double largestError) {
    /** What is assumed when nobody said. */
    public static final Caliper ASSUMED = new Caliper(0.03);

    /** How to find the number, in the words of ISO 13385-1 (from memory). */
    public static final String HELP = "The caliper's largest permitted error (ISO 13385-1: partial surface contact error, its maximum permissible value E MPE, "
            + "for the outside jaws). It stands on the caliper's sheet; a shown hundredth is the resolution, not the accuracy. "
            + "With the depth rod or the inside jaws the scale shift error (S MPE) comes on top.";

    /** @throws IllegalArgumentException when it is negative or no number */
    public Caliper {
        if (!(largestError >= 0 && largestError <= 1)) {
            throw new IllegalArgumentException("A caliper's largest error lies between 0 and 1 mm, not " + largestError + ".");
        }
    }

    /** How well a reading with this caliper is known. Repeating it does not help: the error is the caliper's own. */
    public Tolerance tolerance() {
        return new Tolerance(largestError, true);
    }
}

package culm.blank;

/**
 * How well an input is known.
 *
 * @param plusMinus give or take in the input's unit, not negative; uniform within it unless said otherwise
 * @param measured  false when the value was assumed
 */
public record Tolerance(double plusMinus, boolean measured) {
    /** @throws IllegalArgumentException when negative or not a number */
    public Tolerance {
        if (!(plusMinus >= 0) || Double.isInfinite(plusMinus)) {
            throw new IllegalArgumentException("a give or take is not negative: " + plusMinus);
        }
    }

    /** Standard uncertainty of a uniform distribution, plusMinus / sqrt 3 (JCGM 100:2008, 4.3.7). */
    public double standardUncertainty() {
        return plusMinus / Math.sqrt(3);
    }
}

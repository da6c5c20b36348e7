package culm.explore;

/**
 * How far one input moves turns left.
 *
 * @param path         the input
 * @param label        its name
 * @param unit         its unit, empty for shares
 * @param value        its value
 * @param plusMinus    its give or take
 * @param measured     false when it was assumed
 * @param perHundredth turns for 0.01 more of it (0.01 mm, or one percent)
 * @param perTolerance turns for its give or take more of it; with a fit to a blank that worked, what the fitted length does not take in of that
 * @param share        its share of the variance of turns left, 0 to 1, each input uniform within its give or take
 */
public record Effect(String path, String label, String unit, double value, double plusMinus, boolean measured, double perHundredth, double perTolerance,
        double share) {
}

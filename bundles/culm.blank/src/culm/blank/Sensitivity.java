package culm.blank;

/**
 * How one input moves the closing.
 *
 * @param input    the input
 * @param closing  d z_c / d x, mm per unit of the input
 * @param opening  d G / d x at the height of the closing, mm per unit
 */
public record Sensitivity(Input input, double closing, double opening) {
    /** Contribution of the input's give or take to the standard uncertainty of the closing, mm, not negative. */
    public double contribution() {
        return Math.abs(closing) * input.tolerance().standardUncertainty();
    }
}

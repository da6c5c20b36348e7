package culm.figures;

/**
 * The axis that drawings along the reed share: mm from the bottom of the staple to drawing units across the page.
 *
 * @param from  smallest height shown, mm
 * @param to    largest height shown, mm
 * @param left  where {@code from} lies, drawing units
 * @param right where {@code to} lies, drawing units
 */
public record Scale(double from, double to, double left, double right) {
    /** @throws IllegalArgumentException when it has no length */
    public Scale {
        if (!(to > from && right > left) || !Double.isFinite(from + to + left + right)) {
            throw new IllegalArgumentException("a scale needs a length: " + from + " to " + to + " on " + left + " to " + right);
        }
    }

    /** Where a height lies. */
    public double x(double z) {
        return left + (z - from) * perMm();
    }

    /** The height at a place. */
    public double z(double x) {
        return from + (x - left) / perMm();
    }

    /** Drawing units to a mm. */
    public double perMm() {
        return (right - left) / (to - from);
    }

    /** How many times larger than the real thing it is on paper. */
    public double enlargement() {
        return perMm() / Drawing.UNITS_PER_MM;
    }

    /** Whether a height is shown. */
    public boolean shows(double z) {
        return z >= from && z <= to;
    }

    /** The same place on the page, {@code factor} times larger around the height z; the height under the pointer stays where it is. */
    public Scale zoomed(double z, double factor) {
        return new Scale(z - (z - from) / factor, z + (to - z) / factor, left, right);
    }

    /** Moved along by so many mm. */
    public Scale shifted(double mm) {
        return new Scale(from + mm, to + mm, left, right);
    }
}

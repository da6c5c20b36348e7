package culm.geometry.shape;

import culm.geometry.numeric.Pchip;

/**
 * Width as a monotone cubic through rows.
 *
 * @param rows distance from the fold and full width, mm
 */
public record PchipWidth(Pchip rows) implements ShapeWidth {
    @Override
    public double from() {
        return rows.from();
    }

    @Override
    public double to() {
        return rows.to();
    }

    @Override
    public double at(double s) {
        return rows.value(s);
    }

    @Override
    public double[] breaks() {
        return rows.places();
    }
}

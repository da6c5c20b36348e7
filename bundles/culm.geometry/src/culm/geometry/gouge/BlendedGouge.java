package culm.geometry.gouge;

import java.util.stream.DoubleStream;

/** Thickness linear between two sections: (1 - u) first + u second, 0 &lt;= u &lt;= 1; {@link #smallest(double)} may fall below the least while it is positive. */
record BlendedGouge(GougeSection first, GougeSection second, double u) implements GougeSection {
    @Override
    public double thickness(double phi) {
        return (1 - u) * first.thickness(phi) + u * second.thickness(phi);
    }

    @Override
    public double[] breaks() {
        return DoubleStream.concat(DoubleStream.of(first.breaks()), DoubleStream.of(second.breaks())).sorted().distinct().toArray();
    }

    @Override
    public double integral(double phi) {
        return (1 - u) * first.integral(phi) + u * second.integral(phi);
    }

    /** The blend of both smallest values is a lower bound, and enough while it is positive. */
    @Override
    public double smallest(double phi) {
        double bound = (1 - u) * first.smallest(phi) + u * second.smallest(phi);
        return bound > 0 ? bound : GougeSection.super.smallest(phi);
    }
}

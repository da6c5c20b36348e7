package culm.geometry.gouge;

import java.util.Arrays;
import java.util.List;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Pchip;
import culm.geometry.profile.MeasuredPlaces;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;

/** Thickness measured at distances along the bark from the middle: monotone cubic, symmetrical, the last row holds beyond it. */
public final class MeasuredGouge extends MeasuredPlaces implements GougeType {
    private static final TableParameter TABLE = places(List.of(
            Parameter.length("along", "along the bark", 0, 20, 0, 0.1, true, "Distance from the middle of the blade, along the bark."),
            Parameter.length("thickness", "thickness", 0.01, 3, 0.5, 0.02, true, "Radial thickness there.")),
            Table.of(new double[] {0, 0.60}, new double[] {2, 0.55}, new double[] {3.5, 0.46}),
            "Thickness at several distances from the middle, the first at 0.");

    /** Made by the registry. */
    public MeasuredGouge() {
        super("culm.gouge.measured", "Thickness measured at two or more distances from the middle.", TABLE);
    }

    @Override
    public List<GeometryException> check(Values values) {
        return firstAtZero(values, "in the middle, 0");
    }

    @Override
    public GougeSection section(Values values, double tubeRadius) {
        Table rows = values.table(PLACES);
        return new Measured(new Pchip(rows.column(0), rows.column(1)), tubeRadius);
    }

    private static final class Measured implements GougeSection {
        private final Pchip along;
        private final double tubeRadius;
        private final double[] breaks;

        Measured(Pchip along, double tubeRadius) {
            this.along = along;
            this.tubeRadius = tubeRadius;
            this.breaks = Arrays.stream(along.places()).skip(1).map(d -> d / tubeRadius).filter(phi -> phi < Math.PI / 2).toArray();
        }

        @Override
        public double thickness(double phi) {
            return along.value(Math.min(along.to(), Math.abs(phi) * tubeRadius));
        }

        @Override
        public double[] breaks() {
            return breaks.clone();
        }

        /** Exact: the cubic's integral, and the last row beyond it. */
        @Override
        public double integral(double phi) {
            double to = Math.min(along.to(), phi * tubeRadius);
            return (along.integral(to) + (phi * tubeRadius - to) * along.value(along.to())) / tubeRadius;
        }

        /** The monotone cubic has no other turning points than its rows. */
        @Override
        public double smallest(double phi) {
            double least = Math.min(thickness(0), thickness(phi));
            for (double cut : breaks) {
                least = cut < phi ? Math.min(least, thickness(cut)) : least;
            }
            return least;
        }
    }
}

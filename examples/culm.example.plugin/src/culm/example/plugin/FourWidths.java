package culm.example.plugin;

import java.util.List;
import java.util.Locale;

import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;

/** A natural cubic spline through four widths: at the fold, at two places of the blade, at the end of the cane. */
public final class FourWidths implements ShapeType {
    private static final int SAMPLES = 200;

    @Override
    public String id() {
        return "example.shape.fourWidths";
    }

    @Override
    public String name() {
        return "four widths";
    }

    @Override
    public String help() {
        return "A smooth curve through the widths at the fold, at two places between, and at the end of the cane.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(
                Parameter.length("fold", "width at the fold", 0.5, 30, 7.00, 0.05, true, "Width of the cane as cut, at the fold, without ears."),
                Parameter.length("upperAt", "upper place from the fold", 0.5, 110, 12, 0.2, true, "Distance from the fold to the upper place."),
                Parameter.length("upper", "width at the upper place", 0.5, 30, 6.35, 0.05, true, "Width of the cane as cut, at the upper place."),
                Parameter.length("lowerAt", "lower place from the fold", 0.5, 115, 25, 0.2, true, "Distance from the fold to the lower place."),
                Parameter.length("lower", "width at the lower place", 0.5, 30, 4.88, 0.05, true, "Width of the cane as cut, at the lower place."),
                Parameter.length("end", "width at the end", 0.5, 30, 4.35, 0.05, true, "Width at the end of the cane."));
    }

    @Override
    public List<GeometryException> check(Values v) {
        return v.number("upperAt") < v.number("lowerAt") ? List.of() : List.of(new GeometryException("lowerAt",
                "The lower place at " + v.number("lowerAt") + " mm from the fold is not below the upper one at " + v.number("upperAt") + " mm."));
    }

    @Override
    public ShapeWidth width(Values v, double foldedLength) {
        double lowerAt = v.number("lowerAt");
        if (lowerAt >= foldedLength) {
            throw new GeometryException("lowerAt", "The lower place at " + lowerAt + " mm lies beyond the folded length of " + foldedLength + " mm.");
        }
        double[] at = {0, v.number("upperAt"), lowerAt, foldedLength};
        double[] widths = {v.number("fold"), v.number("upper"), v.number("lower"), v.number("end")};
        Curve curve = new Curve(new SplineInterpolator().interpolate(at, widths), at);
        for (int i = 0; i <= SAMPLES; i++) {
            double s = foldedLength * i / SAMPLES;
            if (curve.at(s) <= 0) {
                throw new GeometryException("lower", String.format(Locale.ROOT, "A smooth curve through these widths has no width left at %.1f mm from the fold.", s));
            }
        }
        return curve;
    }

    private record Curve(PolynomialSplineFunction spline, double[] at) implements ShapeWidth {
        @Override
        public double to() {
            return at[3];
        }

        @Override
        public double at(double s) {
            if (s < 0 || s > at[3]) {
                throw new IllegalArgumentException(s + " mm from the fold is outside the cane");
            }
            return spline.value(s);
        }

        @Override
        public double[] breaks() {
            return at.clone();
        }
    }
}

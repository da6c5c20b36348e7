package culm.blank;

import java.util.Arrays;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

import org.hipparchus.analysis.solvers.BisectionSolver;
import org.hipparchus.analysis.solvers.RiddersSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

import culm.geometry.numeric.Pchip;
import culm.geometry.profile.Table;
import culm.geometry.shape.WidthMeasure;

/**
 * Section 6 a second time, written for the tests from the design's bare numbers: the equation of the bent blade and the length of its mid-surface are
 * integrated by Hipparchus' Dormand-Prince 8(5,3) at tight tolerance, thickness and widths are computed from their definitions.
 */
final class Reference {
    private static final double LONGEST_STEP = 0.4;
    private final Blank b;
    private final double length;
    private final double radius;
    private final double tie;
    private final double folded;
    private final double wide;
    private final double thick;
    private final DoubleUnaryOperator fold;
    private final DoubleUnaryOperator end;
    private final DoubleUnaryOperator width;
    private final double[] axes;
    private final double[] rows;

    Reference(Blank blank) {
        b = blank;
        length = b.number(Inputs.STAPLE_LENGTH);
        radius = b.number(Inputs.TUBE) / 2;
        tie = b.number(Inputs.TIE_LENGTH);
        folded = b.number(Inputs.FOLDED_LENGTH);
        double swell = 1 + b.number(Inputs.SWELL_WIDTH);
        wide = b.cut().gougeDry() ? swell : 1;
        thick = (b.cut().gougeDry() ? 1 + b.number(Inputs.SWELL_THICKNESS) : 1) * (1 - b.number(Inputs.COMPRESSION));
        fold = gouge(b.gouge());
        end = b.gougeEnd().map(this::gouge).orElse(fold);
        width = width();
        rows = DoubleStream.concat(rows(b.gouge()), b.gougeEnd().map(this::rows).orElse(DoubleStream.empty())).sorted().distinct().toArray();
        axes = b.staple().type().id().equals("culm.staple.measured") ? null : new double[] {b.staple().values().number("bottom") / 2,
                b.staple().values().number("topWide") / 2, b.staple().values().number("topNarrow") / 2};
    }

    private DoubleUnaryOperator gouge(Profile<?> p) {
        return switch (p.type().id()) {
            case "culm.gouge.concentric" -> phi -> p.values().number("middle");
            case "culm.gouge.offset" -> phi -> circle(phi, p.values().number("radius"), radius - p.values().number("radius") - p.values().number("middle"));
            case "culm.gouge.middleAndSide" -> {
                double c = radius - p.values().number("middle");
                double q = radius - p.values().number("side");
                double phi1 = Math.asin(p.values().number("sideAt") / radius);
                double e = (c * c - q * q) / (2 * (c - q * Math.cos(phi1)));
                yield phi -> circle(phi, c - e, e);
            }
            default -> {
                Table rows = p.values().table("places");
                Pchip t = new Pchip(rows.column(0), rows.column(1));
                yield phi -> t.value(Math.min(phi * radius, t.to()));
            }
        };
    }

    private DoubleStream rows(Profile<?> p) {
        return p.values().tables().containsKey("places") ? Arrays.stream(p.values().table("places").column(0)).skip(1).map(d -> d / radius) : DoubleStream.empty();
    }

    private double circle(double phi, double r, double e) {
        return radius - (e * Math.cos(phi) + Math.sqrt(r * r - Math.pow(e * Math.sin(phi), 2)));
    }

    private DoubleUnaryOperator width() {
        return switch (b.shape().type().id()) {
            case "culm.shape.straight" -> s -> (1 - s / folded) * b.shape().values().number("fold") + s / folded * b.shape().values().number("end");
            case "culm.shape.waisted" -> new Pchip(new double[] {0, b.shape().values().number("throatAt"), folded}, new double[] {
                    b.shape().values().number("fold"), b.shape().values().number("throat"), b.shape().values().number("end")})::value;
            default -> pchip(b.shape().values().table("places"));
        };
    }

    private static DoubleUnaryOperator pchip(Table rows) {
        return new Pchip(rows.column(0), rows.column(1))::value;
    }

    private double thickness(double s, double phi) {
        double u = s / folded;
        return (1 - u) * fold.applyAsDouble(phi) + u * end.applyAsDouble(phi);
    }

    /** Radius of curvature of the staple's outside at height z where the normal has turned by theta from the narrow axis. */
    private DoubleUnaryOperator bend(double z) {
        double u = z / length;
        if (axes == null) {
            Table rows = b.staple().values().table("places");
            double a = new Pchip(rows.column(0), rows.column(1)).value(z) / 2;
            double c = new Pchip(rows.column(0), rows.column(2)).value(z) / 2;
            return theta -> ellipse(a, c, theta);
        }
        if (b.staple().type().id().equals("culm.staple.rolled")) {
            return theta -> (1 - u) * axes[0] + u * ellipse(axes[1], axes[2], theta);
        }
        return theta -> ellipse((1 - u) * axes[0] + u * axes[1], (1 - u) * axes[0] + u * axes[2], theta);
    }

    private static double ellipse(double a, double c, double theta) {
        return a * a * c * c / Math.pow(a * a * Math.sin(theta) * Math.sin(theta) + c * c * Math.cos(theta) * Math.cos(theta), 1.5);
    }

    /**
     * M(z): mu and phi over theta. Where the gouge has rows, theta and mu are first followed over phi from row to row, so that no step crosses one.
     */
    double needed(double z) {
        DoubleUnaryOperator rho = bend(z);
        double s = tie - z;
        double[] theta = {0, 0};
        double phi = 0;
        for (double row : rows) {
            double[] next = integrate(theta, phi, row, (p, y) -> {
                double along = wide * (radius - thickness(s, p) / 2);
                return new double[] {along / (rho.applyAsDouble(y[0]) + thick * thickness(s, p) / 2), along};
            });
            if (next[0] >= Math.PI / 2) {
                break;
            }
            theta = next;
            phi = row;
        }
        return integrate(new double[] {theta[1], phi}, theta[0], Math.PI / 2, (angle, y) -> {
            double t = thickness(s, y[1]);
            double along = rho.applyAsDouble(angle) + thick * t / 2;
            return new double[] {along, along / (wide * (radius - t / 2))};
        })[0];
    }

    /** m(L - z). */
    double given(double z) {
        double s = tie - z;
        double full = width.applyAsDouble(s);
        double outer = b.cut().measure() == WidthMeasure.ARC ? full / (2 * radius) : Math.asin(full / 2 / radius);
        double meets = switch (b.cut().edges()) {
            case RADIAL -> outer;
            case SQUARE -> Math.max(outer, inner(s, radius * Math.sin(outer)));
            case TWO_WIDTHS -> Math.max(outer, inner(s, pchip(b.insideWidths().orElseThrow()).applyAsDouble(s) / 2));
        };
        double dry = 0;
        double from = 0;
        for (double row : DoubleStream.concat(Arrays.stream(rows).filter(r -> r < meets), DoubleStream.of(meets)).toArray()) {
            dry = integrate(new double[] {dry}, from, row, (phi, y) -> new double[] {radius - thickness(s, phi) / 2})[0];
            from = row;
        }
        return (b.cut().shapeDry() ? 1 + b.number(Inputs.SWELL_WIDTH) : 1) * dry + b.number(Inputs.DELTA);
    }

    private double inner(double s, double half) {
        return new RiddersSolver(1e-15, 1e-14).solve(500, phi -> (radius - thickness(s, phi)) * Math.sin(phi) - half, 0, 1.2);
    }

    double open(double z) {
        return 2 * (needed(z) - given(z));
    }

    /** The height between two heights of opposite sign, by bisection. */
    double closes(double low, double high) {
        return new BisectionSolver(1e-13, 1e-12).solve(200, this::open, low, high);
    }

    private static double[] integrate(double[] start, double from, double to, BiFunction<Double, double[], double[]> f) {
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, LONGEST_STEP, 1e-14, 1e-14);
        return integrator.integrate(new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return start.length;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return f.apply(t, y);
            }
        }, new ODEState(from, start), to).getPrimaryState();
    }
}

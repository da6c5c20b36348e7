package culm.blank.guard;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.DoubleUnaryOperator;

import culm.blank.TestType;
import culm.geometry.GeometryException;
import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeSection;
import culm.geometry.gouge.GougeType;
import culm.geometry.profile.Values;
import culm.geometry.section.Section;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.shape.StraightTaper;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/** Profile types that misbehave in one way, and are those that ship otherwise. */
final class Hostile {
    /** How; its method is called in every place where a plug-in gives a number. */
    enum Way implements DoubleUnaryOperator {
        THROWS, NOT_A_NUMBER, INFINITE, NEVER_ENDS_CALLING_ITSELF, ASSERTS, MISSES_A_CLASS, SLOW;

        @Override
        public double applyAsDouble(double good) {
            return switch (this) {
                case THROWS -> throw new IllegalStateException("broken on purpose");
                case NOT_A_NUMBER -> Double.NaN;
                case INFINITE -> Double.POSITIVE_INFINITY;
                case NEVER_ENDS_CALLING_ITSELF -> applyAsDouble(good) + 1;
                case ASSERTS -> throw new AssertionError("broken on purpose");
                case MISSES_A_CLASS -> throw new NoClassDefFoundError("not/There");
                case SLOW -> {
                    LockSupport.parkNanos(20_000_000);
                    yield good;
                }
            };
        }
    }

    private Hostile() {
    }

    /** Fails only the nth time it is asked, n from 1. */
    static DoubleUnaryOperator onlyAt(int n) {
        AtomicInteger calls = new AtomicInteger();
        return good -> {
            if (calls.incrementAndGet() == n) {
                throw new ArithmeticException("only at call " + n);
            }
            return good;
        };
    }

    static StapleType staple(DoubleUnaryOperator way) {
        return new HostileStaple(way);
    }

    static GougeType gouge(DoubleUnaryOperator way) {
        return new HostileGouge(way);
    }

    static ShapeType shape(DoubleUnaryOperator way) {
        return new HostileShape(way);
    }

    private static final class HostileStaple extends TestType implements StapleType {
        private final StraightSidedOval good = new StraightSidedOval();
        private final DoubleUnaryOperator way;

        HostileStaple(DoubleUnaryOperator way) {
            super("hostile.staple", "hostile staple", new StraightSidedOval().parameters());
            this.way = way;
        }

        @Override
        public StapleOutside outside(Values values, double length) {
            StapleOutside made = good.outside(values, length);
            return new StapleOutside() {
                @Override
                public double length() {
                    return length;
                }

                @Override
                public Section section(double z) {
                    return new HostileSection(made.section(z), way);
                }
            };
        }

        @Override
        public Values topScaled(Values values, double k) {
            return good.topScaled(values, k);
        }
    }

    private static final class HostileGouge extends TestType implements GougeType {
        private final Concentric good = new Concentric();
        private final DoubleUnaryOperator way;

        HostileGouge(DoubleUnaryOperator way) {
            super("hostile.gouge", "hostile gouge", new Concentric().parameters());
            this.way = way;
        }

        @Override
        public List<GeometryException> check(Values values) {
            way.applyAsDouble(0);
            return good.check(values);
        }

        @Override
        public GougeSection section(Values values, double tubeRadius) {
            GougeSection made = good.section(values, tubeRadius);
            return phi -> way.applyAsDouble(made.thickness(phi));
        }
    }

    private static final class HostileShape extends TestType implements ShapeType {
        private final StraightTaper good = new StraightTaper();
        private final DoubleUnaryOperator way;

        HostileShape(DoubleUnaryOperator way) {
            super("hostile.shape", "hostile shape", new StraightTaper().parameters());
            this.way = way;
        }

        @Override
        public ShapeWidth width(Values values, double foldedLength) {
            ShapeWidth made = good.width(values, foldedLength);
            return new ShapeWidth() {
                @Override
                public double to() {
                    return made.to();
                }

                @Override
                public double at(double s) {
                    return way.applyAsDouble(made.at(s));
                }
            };
        }
    }

    private record HostileSection(Section good, DoubleUnaryOperator way) implements Section {
        @Override
        public double support(double psi) {
            return way.applyAsDouble(good.support(psi));
        }

        @Override
        public double supportSlope(double psi) {
            return way.applyAsDouble(good.supportSlope(psi));
        }

        @Override
        public double curvatureRadius(double psi) {
            return way.applyAsDouble(good.curvatureRadius(psi));
        }

        @Override
        public double perimeter() {
            return way.applyAsDouble(good.perimeter());
        }

        @Override
        public double area() {
            return way.applyAsDouble(good.area());
        }

        @Override
        public double smallestRadius() {
            return way.applyAsDouble(good.smallestRadius());
        }
    }
}

package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;

import culm.geometry.gouge.GougeSection;
import culm.geometry.gouge.GougeType;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.section.Ellipse;
import culm.geometry.section.Section;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.StapleType;

/** Types that throw, give nothing or give no number: each ends as one sentence that names it. */
class SomeoneElsesTypesTest {
    private static final class Gouge extends TestType implements GougeType {
        private final DoubleUnaryOperator thickness;
        private final boolean nothing;

        Gouge(DoubleUnaryOperator thickness, boolean nothing) {
            super("other.gouge", "someone's gouge", List.of());
            this.thickness = thickness;
            this.nothing = nothing;
        }

        @Override
        public GougeSection section(Values values, double tubeRadius) {
            return nothing ? null : thickness::applyAsDouble;
        }
    }

    private static final class Shape extends TestType implements ShapeType {
        Shape() {
            super("other.shape", "someone's shape", List.of());
        }

        @Override
        public List<Parameter> parameters() {
            throw new IllegalStateException("not ready");
        }

        @Override
        public ShapeWidth width(Values values, double foldedLength) {
            return null;
        }
    }

    private static final class Staple extends TestType implements StapleType {
        private final DoubleUnaryOperator radius;

        Staple(DoubleUnaryOperator radius) {
            super("other.staple", "someone's staple", List.of());
            this.radius = radius;
        }

        @Override
        public StapleOutside outside(Values values, double length) {
            return new StapleOutside() {
                @Override
                public double length() {
                    return length;
                }

                @Override
                public Section section(double z) {
                    Ellipse like = new Ellipse(1.7, 1.1);
                    return new Section() {
                        @Override
                        public double support(double psi) {
                            return like.support(psi);
                        }

                        @Override
                        public double supportSlope(double psi) {
                            return like.supportSlope(psi);
                        }

                        @Override
                        public double curvatureRadius(double psi) {
                            return radius.applyAsDouble(psi) * like.curvatureRadius(psi);
                        }
                    };
                }
            };
        }

        @Override
        public Values topScaled(Values values, double k) {
            return values;
        }
    }

    private static void assertNamed(Blank blank, String path, String sentence) {
        Assessment a = Assessor.assess(blank);
        assertEquals(sentence, a.closing().problem().orElseThrow());
        assertEquals(path, a.closing().path());
        assertTrue(a.boreVolume().stream().allMatch(Double::isFinite));
        assertTrue(a.sidesCloseAt().isEmpty() && a.turnsLeft().isEmpty() && a.closeBand().isEmpty());
    }

    private static Blank with(Gouge gouge) {
        return Sample.builder().gouge(new Profile<>(gouge, Values.NONE)).build();
    }

    private static Blank with(Staple staple) {
        return Sample.builder().staple(new Profile<>(staple, Values.NONE)).build();
    }

    @Test
    void whatThrowsOrGivesNoNumberIsNamed() {
        assertNamed(with(new Gouge(phi -> Double.NaN, false)), "gouge", "The gouge type \"someone's gouge\" gives no number for the thickness at 35.0 mm.");
        assertNamed(with(new Gouge(phi -> phi > 0.3 ? Double.POSITIVE_INFINITY : 0.5, false)), "gouge",
                "The gouge type \"someone's gouge\" gives no number for the thickness at 35.0 mm.");
        assertNamed(with(new Gouge(phi -> {
            throw new ArithmeticException("divided by nothing");
        }, false)), "gouge", "The gouge type \"someone's gouge\" failed (ArithmeticException: divided by nothing) for the thickness at 35.0 mm.");
        assertNamed(with(new Gouge(phi -> 0.5, true)), "gouge", "The gouge type \"someone's gouge\" failed: NullPointerException: nothing given back.");
        assertNamed(with(new Staple(psi -> psi < 0.5 ? Double.NaN : 1)), "staple",
                "The staple type \"someone's staple\" gives no number for the outside at 35.0 mm.");
        assertNamed(with(new Staple(psi -> {
            throw new UnsupportedOperationException();
        })), "staple", "The staple type \"someone's staple\" failed (UnsupportedOperationException) for the outside at 35.0 mm.");
        Blank shape = Sample.builder().shape(new Profile<>(new Shape(), Values.NONE)).build();
        assertEquals("The shape type \"someone's shape\" failed: IllegalStateException: not ready.", ClosingFinder.find(shape).problem().orElseThrow());
    }

    /** Kinks that a type does not name cost time and three digits of thirteen, steps more. */
    @Test
    void kinksThatAreNotNamedAreFoundAnyway() {
        double kink = 0.37;
        GougeSection named = new GougeSection() {
            @Override
            public double thickness(double phi) {
                return 0.6 - 0.3 * Math.max(0, phi - kink);
            }

            @Override
            public double[] breaks() {
                return new double[] {kink};
            }
        };
        GougeSection silent = named::thickness;
        Ellipse oval = new Ellipse(1.7, 1.1);
        double expected = new CaneBend(oval, named, 5.25, 1.01, 0.9).seam();
        assertEquals(expected, new CaneBend(oval, silent, 5.25, 1.01, 0.9).seam(), 1e-9);
        GougeSection stepped = phi -> phi < kink ? 0.6 : 0.55;
        double ramp = new CaneBend(oval, phi -> phi < kink ? 0.6 : Math.max(0.55, 0.6 - (phi - kink) * 1e6), 5.25, 1.01, 0.9).seam();
        assertEquals(ramp, new CaneBend(oval, stepped, 5.25, 1.01, 0.9).seam(), 1e-7);
    }

    @Test
    void aGoodTypeOfSomeoneElsesWorks() {
        Closing ours = ClosingFinder.find(Sample.builder().gouge(new Profile<>(new culm.geometry.gouge.Concentric(), Values.NONE.with("middle", 0.58))).build());
        Closing theirs = ClosingFinder.find(with(new Gouge(phi -> 0.58, false)));
        assertEquals(ours.at().orElseThrow(), theirs.at().orElseThrow(), 1e-10);
    }
}

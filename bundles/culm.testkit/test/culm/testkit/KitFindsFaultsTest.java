package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;
import culm.blank.rules.Severity;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Values;
import culm.geometry.section.Ellipse;
import culm.geometry.section.Section;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.StapleOutside;
import culm.geometry.staple.StapleType;

/** The contracts find what they are there to find. */
class KitFindsFaultsTest {
    private static final Parameter WIDTH = Parameter.length("all", "width", 1, 9, 5, 0.1, true, "Width everywhere.");

    static Stream<Arguments> badShapes() {
        int[] calls = {0};
        return Stream.of(Arguments.of("is no number", new TestShape(s -> Double.NaN, true)), Arguments.of("a width of", new TestShape(s -> -1, true)),
                Arguments.of("jumps at", new TestShape(s -> s < 20 ? 5 : 4, true)), Arguments.of("nothing is extrapolated", new TestShape(s -> 5, false)),
                Arguments.of("expected:", new TestShape(s -> 5 + 1e-6 * calls[0]++, true)));
    }

    @ParameterizedTest
    @MethodSource("badShapes")
    void inAShape(String what, ShapeType bad) {
        ShapeTypeContract contract = new ShapeTypeContract() {
            @Override
            protected ShapeType type() {
                return bad;
            }
        };
        AssertionError found = assertThrows(AssertionError.class, () -> {
            contract.soundOrRefused();
            contract.hasNoState();
        });
        assertTrue(found.getMessage().contains(what), found.getMessage());
    }

    @Test
    void aGoodShapePasses() {
        ShapeTypeContract contract = new ShapeTypeContract() {
            @Override
            protected ShapeType type() {
                return new TestShape(s -> 5 - s / 100, true);
            }
        };
        assertDoesNotThrow(contract::soundOrRefused);
        assertDoesNotThrow(contract::hasNoState);
    }

    static Stream<Arguments> badSections() {
        Ellipse e = new Ellipse(2.2, 1.4);
        return Stream.of(Arguments.of("perimeter", section(e, e.perimeter() + 0.01, e.area(), 0)), Arguments.of("area", section(e, e.perimeter(), 9, 0)),
                Arguments.of("slope", section(e, e.perimeter(), e.area(), 0.05)));
    }

    @ParameterizedTest
    @MethodSource("badSections")
    void inASection(String what, Section bad) {
        StapleTypeContract contract = new StapleTypeContract() {
            @Override
            protected StapleType type() {
                return new TestStaple(bad);
            }
        };
        AssertionError found = assertThrows(AssertionError.class, contract::defaultsMakeAPart);
        assertTrue(found.getMessage().contains(what), found.getMessage());
    }

    static Stream<Arguments> badRules() {
        return Stream.of(Arguments.of("a finding is a sentence", "no capital, no stop"), Arguments.of("no caliper sees a thousandth", "Closes at 46.0489 mm."));
    }

    @ParameterizedTest
    @MethodSource("badRules")
    void inARule(String what, String says) {
        RuleContract contract = new RuleContract() {
            @Override
            protected Rule rule() {
                return new Saying(says);
            }

            @Override
            protected Assessment spoken() {
                return Sample.assessments().get("works");
            }
        };
        AssertionError found = assertThrows(AssertionError.class, contract::speaks);
        assertTrue(found.getMessage().contains(what), found.getMessage());
    }

    private record Saying(String text) implements Rule {
        @Override
        public String id() {
            return "test.saying";
        }

        @Override
        public String name() {
            return "says this";
        }

        @Override
        public List<Finding> judge(Assessment assessment, Limits limits) {
            return List.of(Finding.of(id(), Severity.ADVICE, text));
        }
    }

    /** What a type of this test says of itself. */
    private abstract static class TestType implements ProfileType {
        private final String part;

        TestType(String part) {
            this.part = part;
        }

        @Override
        public final String id() {
            return "test." + part;
        }

        @Override
        public final String name() {
            return "test " + part;
        }

        @Override
        public final String help() {
            return "A test.";
        }

        @Override
        public final List<Parameter> parameters() {
            return List.of(WIDTH);
        }
    }

    private static final class TestShape extends TestType implements ShapeType {
        private final DoubleUnaryOperator width;
        private final boolean keepsIn;

        TestShape(DoubleUnaryOperator width, boolean keepsIn) {
            super("shape");
            this.width = width;
            this.keepsIn = keepsIn;
        }

        @Override
        public ShapeWidth width(Values values, double foldedLength) {
            return new ShapeWidth() {
                @Override
                public double to() {
                    return foldedLength;
                }

                @Override
                public double at(double s) {
                    if (keepsIn && (s < 0 || s > foldedLength)) {
                        throw new IllegalArgumentException();
                    }
                    return width.applyAsDouble(s);
                }
            };
        }
    }

    private static final class TestStaple extends TestType implements StapleType {
        private final Section everywhere;

        TestStaple(Section everywhere) {
            super("staple");
            this.everywhere = everywhere;
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
                    return everywhere;
                }
            };
        }

        @Override
        public Values topScaled(Values values, double k) {
            return values;
        }
    }

    private static Section section(Ellipse good, double perimeter, double area, double slopeError) {
        return new Section() {
            @Override
            public double support(double psi) {
                return good.support(psi);
            }

            @Override
            public double supportSlope(double psi) {
                return good.supportSlope(psi) + slopeError;
            }

            @Override
            public double curvatureRadius(double psi) {
                return good.curvatureRadius(psi);
            }

            @Override
            public double perimeter() {
                return perimeter;
            }

            @Override
            public double area() {
                return area;
            }

            @Override
            public double smallestRadius() {
                return good.smallestRadius();
            }
        };
    }
}

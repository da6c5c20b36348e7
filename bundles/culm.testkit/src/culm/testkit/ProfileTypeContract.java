package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.geometry.GeometryException;
import culm.geometry.guard.Description;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;

/** What every profile type promises: it describes itself, refuses clearly, has no state, and gives numbers. */
abstract class ProfileTypeContract<T extends ProfileType> {
    private static final int INTERVALS = 16;

    /** The type, made anew. */
    protected abstract T type();

    /** The part of a blank that it describes: staple, gouge or shape. */
    abstract String part();

    /** Checks the geometry of values that {@link ProfileType#problems} has passed; returns numbers that identify it. @throws GeometryException when refused */
    abstract double[] checked(T type, Values values);

    @Test
    @DisplayName("a public class with a public constructor without arguments")
    final void canBeMade() throws NoSuchMethodException {
        Class<?> type = type().getClass();
        assertTrue(Modifier.isPublic(type.getModifiers()), "the class has to be public");
        assertTrue(Modifier.isPublic(type.getDeclaredConstructor().getModifiers()), "its constructor has to be public");
    }

    @Test
    @DisplayName("describes itself, with ids that are free")
    final void describesItself() {
        assertEquals(Optional.empty(), Description.problem(type(), Inputs.of(part())));
        assertFalse(type().name().endsWith("."), "a name is no sentence");
        assertTrue(type().help().endsWith("."), "the help text is a sentence");
        for (Parameter p : type().parameters()) {
            assertTrue(p.help().endsWith("."), p.id() + ": the help text is a sentence");
        }
    }

    @Test
    @DisplayName("its defaults make a part")
    final void defaultsMakeAPart() {
        assertNotNull(checked(type(), type().standard()));
    }

    @Test
    @DisplayName("any values in their ranges give sound geometry, or a refusal that says which number")
    final void soundOrRefused() {
        T type = type();
        int made = 0;
        for (Values values : Samples.of(type)) {
            List<GeometryException> problems = assertDoesNotThrow(() -> type.problems(values), values::toString);
            problems.forEach(p -> wellRefused(type, p, values));
            if (problems.isEmpty()) {
                try {
                    checked(type, values);
                    made++;
                } catch (GeometryException e) {
                    wellRefused(type, e, values);
                }
            }
        }
        assertTrue(made >= 10, "only " + made + " of the values tried made a part: are the ranges far wider than what is possible?");
    }

    @Test
    @DisplayName("refuses what is missing and what is outside its range, by id")
    final void refusesByID() {
        T type = type();
        for (Parameter p : type.parameters()) {
            for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, p.max() + 1, p.min() - 1}) {
                assertTrue(type.problems(type.standard().with(p.id(), bad)).stream().anyMatch(e -> e.path().equals(p.id())), p.id() + " " + bad);
            }
        }
        for (TableParameter t : type.tables()) {
            assertTrue(type.problems(type.standard().with(t.id(), Table.of())).stream().anyMatch(e -> e.path().startsWith(t.id())), t.id() + " without rows");
        }
        if (!type.parameters().stream().allMatch(Parameter::optional) || !type.tables().isEmpty()) {
            assertFalse(type.problems(Values.NONE).isEmpty(), "nothing given at all");
        }
    }

    @Test
    @DisplayName("has no state: the same values give the same part, from any thread, in any locale")
    final void hasNoState() {
        T type = type();
        List<Values> samples = Samples.of(type).subList(0, 12);
        List<String> first = samples.stream().map(v -> told(type, v)).toList();
        List<String> again = IntStream.range(0, 8 * samples.size()).parallel().mapToObj(i -> told(type, samples.get(i % samples.size()))).toList();
        for (int i = 0; i < again.size(); i++) {
            assertEquals(first.get(i % samples.size()), again.get(i));
        }
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(first, samples.stream().map(v -> told(type(), v)).toList(), "numbers in sentences are written with a point, whatever the locale");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    @DisplayName("leaves its own version alone and refuses a newer one")
    final void migrates() {
        T type = type();
        assertEquals(type.standard(), type.migrate(type.version(), type.standard()));
        assertThrows(GeometryException.class, () -> type.migrate(type.version() + 1, type.standard()));
    }

    private String told(T type, Values values) {
        try {
            List<GeometryException> problems = type.problems(values);
            return problems.isEmpty() ? java.util.Arrays.toString(checked(type, values)) : problems.get(0).getMessage();
        } catch (GeometryException e) {
            return e.getMessage();
        }
    }

    private static void wellRefused(ProfileType type, GeometryException refusal, Values values) {
        String path = refusal.path();
        String id = path.contains("[") ? path.substring(0, path.indexOf('[')) : path;
        boolean known = id.isEmpty() || type.parameters().stream().anyMatch(p -> p.id().equals(id)) || type.tables().stream().anyMatch(t -> t.id().equals(id));
        assertTrue(known, "a refusal names \"" + path + "\", which is none of its numbers: " + refusal.getMessage());
        String sentence = refusal.getMessage();
        assertTrue(sentence != null && sentence.endsWith(".") && sentence.length() > 10, "a refusal is a sentence: " + sentence + " for " + values);
    }

    /** Fails unless a number is finite. */
    static double finite(String what, double value) {
        assertTrue(Double.isFinite(value), () -> what + " is no number: " + value);
        return value;
    }

    /** Fails unless places are finite and ascend within a range. */
    static double[] places(String what, double[] breaks, double from, double to) {
        for (int i = 0; i < breaks.length; i++) {
            double here = breaks[i];
            assertTrue(here >= from && here <= to, () -> what + ": a break at " + here + " is outside " + from + " to " + to);
            assertTrue(i == 0 || breaks[i - 1] <= here, () -> what + ": breaks have to ascend");
        }
        return breaks;
    }

    /** Places to look at: evenly spread, none of them on a break, where one side may differ from the other. */
    static double[] between(double from, double to, int count, double[] breaks) {
        return IntStream.range(0, count).mapToDouble(i -> from + (to - from) * (i + 0.5) / count)
                .filter(x -> java.util.Arrays.stream(breaks).noneMatch(b -> Math.abs(b - x) < 1e-3)).toArray();
    }

    /** Fails when a course jumps by more than a hundredth anywhere but at its breaks: halves the side that changes more, again and again. */
    static void noJump(String what, DoubleUnaryOperator course, double from, double to, double[] breaks) {
        double[] cuts = DoubleStream.concat(IntStream.rangeClosed(0, INTERVALS).mapToDouble(i -> from + (to - from) * i / INTERVALS), DoubleStream.of(breaks))
                .sorted().distinct().toArray();
        for (int i = 1; i < cuts.length; i++) {
            double inset = Math.min(1e-6, (cuts[i] - cuts[i - 1]) / 4);
            double a = cuts[i - 1] + inset;
            double b = cuts[i] - inset;
            while (b - a > 1e-9) {
                double middle = (a + b) / 2;
                double here = course.applyAsDouble(middle);
                boolean below = Math.abs(here - course.applyAsDouble(a)) >= Math.abs(course.applyAsDouble(b) - here);
                a = below ? a : middle;
                b = below ? middle : b;
            }
            double at = a;
            assertTrue(Math.abs(course.applyAsDouble(b) - course.applyAsDouble(a)) < 0.01, () -> what + " jumps at " + at + ", which is not among its breaks");
        }
    }

    /** Fails unless two numbers agree within a share of their size, or absolutely when near zero. */
    static void agree(String what, double stated, double found, double share) {
        double scale = Math.max(1, Math.max(Math.abs(stated), Math.abs(found)));
        assertTrue(Math.abs(stated - found) <= share * scale, () -> what + ": stated " + stated + ", found " + found);
    }
}

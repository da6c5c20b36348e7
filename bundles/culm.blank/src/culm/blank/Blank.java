package culm.blank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.stream.Stream;

import culm.geometry.GeometryException;
import culm.geometry.gouge.GougeType;
import culm.geometry.guard.Guarded;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Table;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;

/**
 * A blank as described: three profiles, how the cane was cut and measured, every other number by path, how well each is known, and
 * perhaps a fit to a blank that worked. Immutable; nothing is computed or checked before {@link #parts()}.
 */
public final class Blank {
    private final Profile<StapleType> staple;
    private final Profile<GougeType> gouge;
    private final Profile<GougeType> gougeEnd;
    private final Profile<ShapeType> shape;
    private final Table insideWidths;
    private final Cut cut;
    private final Map<String, Double> numbers;
    private final Map<String, Tolerance> tolerances;
    private final Fit fit;
    /** One that this was made from and whose parts are made, until this one's are. */
    private Blank relative;
    private Parts parts;
    private volatile List<Input> inputs;
    private volatile Response response;

    Blank(BlankBuilder b) {
        this.staple = b.staple;
        this.gouge = b.gouge;
        this.gougeEnd = b.gougeEnd;
        this.shape = b.shape;
        this.insideWidths = b.insideWidths;
        this.cut = b.cut;
        this.numbers = Collections.unmodifiableMap(new HashMap<>(b.numbers));
        this.tolerances = Collections.unmodifiableMap(new HashMap<>(b.tolerances));
        this.fit = b.fit;
        this.relative = b.relative;
    }

    /** A builder that starts from what this blank says. */
    public BlankBuilder edit() {
        return new BlankBuilder(this);
    }

    /** The same blank with one number changed. @throws IllegalArgumentException when the path is not known here */
    public Blank with(String path, double value) {
        return edit().set(path, value).build();
    }

    /** The value at a path; empty when it is absent. @throws IllegalArgumentException when the path is not known here */
    public OptionalDouble value(String path) {
        return Paths.value(this, path);
    }

    /** The value at a path, or what is assumed where it is absent; NaN when nothing is. */
    public double number(String path) {
        Double given = numbers.get(path);
        return given != null ? given : Inputs.all().get(path).standard();
    }

    /** How well the input at a path is known: as given, else the description's usual give or take, assumed. */
    public Tolerance tolerance(String path) {
        Tolerance given = tolerances.get(path);
        return given != null ? given : new Tolerance(Paths.parameter(this, path).tolerance(), false);
    }

    /** Every number that this blank has, in the order of the bench. */
    public List<Input> inputs() {
        List<Input> known = inputs;
        if (known == null) {
            known = List.copyOf(found());
            inputs = known;
        }
        return known;
    }

    private List<Input> found() {
        List<Input> all = new ArrayList<>();
        for (String path : Paths.all(this)) {
            Parameter parameter = Paths.parameter(this, path);
            value(path).ifPresent(v -> all.add(new Input(path, parameter, v, tolerance(path))));
        }
        return all;
    }

    /** How the seam answers the inputs, as it was last asked: of a blank that worked, again and again while those fitted to it are tried. Parameters as in {@link Response}. */
    Response response(double from, double to, Optional<Executor> besides) {
        Response known = response;
        if (known == null || !known.spans(from, to)) {
            known = new Response(this, from, to, besides);
            response = known;
        }
        return known;
    }

    /** Every number that is missing, out of its range or out of order, with its full path; empty when all may be used. */
    public List<GeometryException> problems() {
        return PartsCheck.problems(this);
    }

    /**
     * The geometry of the parts, checked; made once.
     * @throws culm.geometry.GeometryException when a number is out of range or the numbers do not go together, with its full path
     */
    public synchronized Parts parts() {
        if (parts == null) {
            parts = PartsCheck.build(this, Optional.ofNullable(relative));
            relative = null;
        }
        return parts;
    }

    /** This blank, or the one it was made from, whose parts are made; empty when none are. */
    synchronized Optional<Blank> made() {
        return Optional.ofNullable(parts != null ? this : relative);
    }

    /** The staple's outside: its type and values. */
    public Profile<StapleType> staple() {
        return staple;
    }

    /** The gouge at the fold, or all along when there is no second one. */
    public Profile<GougeType> gouge() {
        return gouge;
    }

    /** The gouge at the end of the cane, where it was given twice. */
    public Optional<Profile<GougeType>> gougeEnd() {
        return Optional.ofNullable(gougeEnd);
    }

    /** The shape: its type and values. */
    public Profile<ShapeType> shape() {
        return shape;
    }

    /** Rows (distance from the fold, inside width), for edges of the kind "two widths". */
    public Optional<Table> insideWidths() {
        return Optional.ofNullable(insideWidths);
    }

    /** The types in it that plug-ins bring, also below what was added to all widths. */
    public Stream<Guarded> foreign() {
        return Stream.of(staple.type(), gouge.type(), gougeEnd().map(Profile::type).orElse(gouge.type()), Widened.inner(shape.type()))
                .filter(Guarded.class::isInstance).map(Guarded.class::cast);
    }

    /** How the cane was cut and measured. */
    public Cut cut() {
        return cut;
    }

    /** The numbers given, by path; those of the profiles are in their values. */
    public Map<String, Double> numbers() {
        return numbers;
    }

    /** What is said of how well inputs are known, by path. */
    public Map<String, Tolerance> tolerances() {
        return tolerances;
    }

    /** The blank that worked, where one was fitted. */
    public Optional<Fit> fit() {
        return Optional.ofNullable(fit);
    }

    /** Whether everything that is said of two blanks is the same; types of profiles are the same when they are one object or say so themselves. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Blank b && Objects.equals(staple, b.staple) && Objects.equals(gouge, b.gouge) && Objects.equals(gougeEnd, b.gougeEnd)
                && Objects.equals(shape, b.shape) && Objects.equals(insideWidths, b.insideWidths) && Objects.equals(cut, b.cut) && numbers.equals(b.numbers)
                && tolerances.equals(b.tolerances) && Objects.equals(fit, b.fit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(staple, gouge, gougeEnd, shape, insideWidths, cut, numbers, tolerances, fit);
    }
}

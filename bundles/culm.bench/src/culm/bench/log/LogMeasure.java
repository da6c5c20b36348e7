package culm.bench.log;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;

import org.eclipse.emf.ecore.EStructuralFeature;

import culm.bench.batch.StapleReadings;
import culm.blank.Inputs;
import culm.geometry.profile.Parameter;
import culm.geometry.words.Told;
import culm.model.ModelPackage.Literals;
import culm.model.text.Numbers;

/** A length that is measured on a blank, mm: its range is that of the described number of a design, and what is usual for it comes from the log. */
public enum LogMeasure {
    /** The staple, bottom to top. */
    STAPLE("staple length", Inputs.STAPLE_LENGTH, Literals.LOG_ENTRY__STAPLE_LENGTH, Seen::stapleLength),
    /** Bottom of the staple to the fold, after tying. */
    TIE("tie length", Inputs.TIE_LENGTH, Literals.LOG_ENTRY__TIE_LENGTH, Seen::tie),
    /** Bottom of the staple to where the thread stops. */
    WRAP_TOP("wrap top", Inputs.WRAP_TOP, Literals.LOG_ENTRY__WRAP_TOP, Seen::wrapTop),
    /** Bottom of the staple to the tip. */
    FINISHED("finished length", Inputs.FINISHED, Literals.LOG_ENTRY__FINISHED_LENGTH, Seen::finished);

    /** So many times more or less than usual is hardly meant: English horn and oboe lie closer together, a slipped decimal point further apart. */
    private static final double FAR = 2;
    private static final int USUAL_DIGITS = 1;
    private final String column;
    private final String path;
    private final EStructuralFeature feature;
    private final Function<Seen, OptionalDouble> of;

    LogMeasure(String column, String path, EStructuralFeature feature, Function<Seen, OptionalDouble> of) {
        this.column = column;
        this.path = path;
        this.feature = feature;
        this.of = of;
    }

    /** The measure that stands in a feature of a log's entry; empty for one that holds no length. */
    public static Optional<LogMeasure> of(EStructuralFeature feature) {
        return List.of(values()).stream().filter(m -> m.feature == feature).findFirst();
    }

    /** {@return its column in a table} */
    public String column() {
        return column;
    }

    /** {@return the described number: its words and range} */
    public Parameter described() {
        return Inputs.all().get(path);
    }

    /** {@return what was measured, mm; empty when it was not} */
    public OptionalDouble value(Tied tied) {
        return of.apply(tied.seen());
    }

    /** {@return the middle of what other blanks have, mm; common practice where they have none, and empty where there is none either} */
    public OptionalDouble usual(List<Tied> others) {
        return orPractice(StapleReadings.middle(possible(others).boxed().toList()));
    }

    /** The lengths of a log that can be, mm. */
    DoubleStream possible(List<Tied> log) {
        return log.stream().map(this::value).filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble).filter(v -> described().refusal(v).isEmpty());
    }

    /** The middle of what was seen, or common practice where nothing was. */
    OptionalDouble orPractice(OptionalDouble middle) {
        return middle.isPresent() || described().optional() ? middle : OptionalDouble.of(described().standard());
    }

    /** Why a length cannot be, and what is usual, its lengths as {@link Told} keeps them; empty when it can. @param mm the length; @param others the other blanks of the log */
    public Optional<String> refusal(double mm, List<Tied> others) {
        return described().refusal(mm).map(why -> capital(why) + usualWords(others));
    }

    /** Why a length that can be is hardly meant, told the same way; empty when it is as usual. @param mm the length; @param others the other blanks of the log */
    public Optional<String> doubt(double mm, List<Tied> others) {
        return doubt(mm, usual(others));
    }

    /** The same beside what is usual, mm; empty where nothing is. */
    Optional<String> doubt(double mm, OptionalDouble usual) {
        if (usual.isEmpty() || mm <= usual.getAsDouble() * FAR && mm >= usual.getAsDouble() / FAR) {
            return Optional.empty();
        }
        return Optional.of(capital(described().label()) + " " + given(mm) + " " + Told.UNIT + " is far from what is usual, " + Told.length(usual.getAsDouble(), USUAL_DIGITS)
                + "; is a decimal point in the wrong place?");
    }

    private String usualWords(List<Tied> others) {
        OptionalDouble usual = usual(others);
        return usual.isEmpty() ? "" : " Usual is " + Told.length(usual.getAsDouble(), USUAL_DIGITS) + ".";
    }

    private static String given(double mm) {
        return Told.given(mm, Numbers.format(mm));
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

package culm.geometry.profile;

import java.util.Locale;
import java.util.Optional;

import culm.geometry.words.Told;

/**
 * One described number of a part: written once, and used by the form, the command line's help, the reference table and the range check.
 *
 * @param id           stable name in files and paths, lower camel case
 * @param label        the bench's word for it
 * @param quantity     what it measures
 * @param min          smallest value allowed, inclusive
 * @param max          largest value allowed, inclusive
 * @param standard     value that is assumed when nothing was measured (common practice); NaN when the input may be absent
 * @param tolerance    usual give or take (plus or minus) of a measurement, in the same unit, not negative
 * @param measureFirst true when a maker can measure it with a caliper before anything else
 * @param help         one or two sentences: where to measure, what it does; its lengths may be as {@link Told} keeps them
 */
public record Parameter(String id, String label, Quantity quantity, double min, double max, double standard, double tolerance,
        boolean measureFirst, String help) {

    /** @throws IllegalArgumentException when the description contradicts itself */
    public Parameter {
        if (!id.matches("[a-z][A-Za-z0-9]*") || label.isBlank() || help.isBlank()) {
            throw new IllegalArgumentException("parameter " + id + " needs an id, a label and a help text");
        }
        if (!(min <= max) || !(tolerance >= 0) || standard < min || standard > max) {
            throw new IllegalArgumentException("parameter " + id + ": range, default or tolerance contradict each other");
        }
    }

    /** A length in mm. */
    public static Parameter length(String id, String label, double min, double max, double standard, double tolerance,
            boolean measureFirst, String help) {
        return new Parameter(id, label, Quantity.LENGTH, min, max, standard, tolerance, measureFirst, help);
    }

    /** {@return one or two sentences: where to measure, what it does; lengths in mm} */
    @Override
    public String help() {
        return Told.mm(help);
    }

    /** {@return the same, its lengths as {@link Told} keeps them} */
    public String toldHelp() {
        return help;
    }

    /** Whether the input may be left out. */
    public boolean optional() {
        return Double.isNaN(standard);
    }

    /** What is wrong with a value, in one sentence, lengths in mm; empty when it may be used. */
    public Optional<String> refuse(double value) {
        return refusal(value).map(Told::mm);
    }

    /** The same, its lengths as {@link Told} keeps them. */
    public Optional<String> refusal(double value) {
        if (Double.isFinite(value) && value >= min && value <= max) {
            return Optional.empty();
        }
        if (!Double.isFinite(value)) {
            return Optional.of(label + " is not a number: " + value + ".");
        }
        return Optional.of(label + " " + told(value) + " is outside " + told(min) + " to " + told(max) + unitBehind() + ".");
    }

    private String unitBehind() {
        return quantity == Quantity.LENGTH ? " " + Told.UNIT : quantity.unit().isEmpty() ? "" : " " + quantity.unit();
    }

    private String told(double value) {
        return quantity == Quantity.LENGTH ? Told.given(value, plain(value)) : plain(value);
    }

    private static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}

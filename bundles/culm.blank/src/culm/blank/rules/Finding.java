package culm.blank.rules;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a rule found.
 *
 * @param rule     id of the rule
 * @param severity how bad
 * @param text     one sentence for the bench
 * @param value    the number that was looked at, if there is one
 * @param limit    the number it was held against, if there is one
 * @param why      where the limit comes from, one sentence; may be empty
 * @param remedy   what to do, one sentence; may be empty
 * @param fix      the remedy as data, if one was found by solving
 * @param path     the input it concerns; may be empty
 */
public record Finding(String rule, Severity severity, String text, OptionalDouble value, OptionalDouble limit, String why, String remedy,
        Optional<Fix> fix, String path) {

    /** A finding with a text; the rest is added. */
    public static Finding of(String rule, Severity severity, String text) {
        return new Finding(rule, severity, text, OptionalDouble.empty(), OptionalDouble.empty(), "", "", Optional.empty(), "");
    }

    /** The same with the input it concerns. */
    public Finding at(String input) {
        return new Finding(rule, severity, text, value, limit, why, remedy, fix, input);
    }

    /** The same with the number that was looked at. */
    public Finding measured(double number) {
        return new Finding(rule, severity, text, OptionalDouble.of(number), limit, why, remedy, fix, path);
    }

    /** The same with the number it was held against. */
    public Finding against(double bound) {
        return new Finding(rule, severity, text, value, OptionalDouble.of(bound), why, remedy, fix, path);
    }

    /** The same with where the limit comes from, one sentence. */
    public Finding because(String reason) {
        return new Finding(rule, severity, text, value, limit, reason, remedy, fix, path);
    }

    /** The same with what to do, one sentence. */
    public Finding remedy(String what) {
        return new Finding(rule, severity, text, value, limit, why, what, fix, path);
    }

    /** The same with the remedy as data. */
    public Finding fix(Optional<Fix> found) {
        return new Finding(rule, severity, text, value, limit, why, remedy, found, path);
    }
}

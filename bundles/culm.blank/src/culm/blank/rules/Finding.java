package culm.blank.rules;

import java.util.Optional;
import java.util.OptionalDouble;

import culm.geometry.words.LengthText;
import culm.geometry.words.Told;

/**
 * What a rule found. Its sentences hold their lengths as {@link Say#along} and {@link Say#across} write them, so that a window can show them in another
 * unit; {@link #text}, {@link #why} and {@link #remedy} tell them in mm.
 *
 * @param rule       id of the rule
 * @param severity   how bad
 * @param toldText   one sentence for the bench
 * @param value      the number that was looked at, if there is one
 * @param limit      the number it was held against, if there is one
 * @param lengths    whether these two are lengths, mm
 * @param toldWhy    where the limit comes from, one sentence; may be empty
 * @param toldRemedy what to do, one sentence; may be empty
 * @param fix        the remedy as data, if one was found by solving
 * @param path       the input it concerns; may be empty
 */
public record Finding(String rule, Severity severity, String toldText, OptionalDouble value, OptionalDouble limit, boolean lengths, String toldWhy, String toldRemedy,
        Optional<Fix> fix, String path) {

    /** A finding with a text; the rest is added. */
    public static Finding of(String rule, Severity severity, String text) {
        return new Finding(rule, severity, text, OptionalDouble.empty(), OptionalDouble.empty(), false, "", "", Optional.empty(), "");
    }

    /** One sentence for the bench. */
    public String text() {
        return Told.mm(toldText);
    }

    /** Where the limit comes from, one sentence; may be empty. */
    public String why() {
        return Told.mm(toldWhy);
    }

    /** What to do, one sentence; may be empty. */
    public String remedy() {
        return Told.mm(toldRemedy);
    }

    /** The same with the lengths of its sentences in some unit; its value and limit stay in mm. */
    public Finding in(LengthText unit) {
        return new Finding(rule, severity, Told.in(toldText, unit), value, limit, lengths, Told.in(toldWhy, unit), Told.in(toldRemedy, unit), fix.map(f -> f.in(unit)), path);
    }

    /** The same with the input it concerns. */
    public Finding at(String input) {
        return new Finding(rule, severity, toldText, value, limit, lengths, toldWhy, toldRemedy, fix, input);
    }

    /** The same with the number that was looked at. */
    public Finding measured(double number) {
        return new Finding(rule, severity, toldText, OptionalDouble.of(number), limit, lengths, toldWhy, toldRemedy, fix, path);
    }

    /** The same with the length that was looked at, mm; what it is held against is one too. */
    public Finding measuredLength(double mm) {
        return new Finding(rule, severity, toldText, OptionalDouble.of(mm), limit, true, toldWhy, toldRemedy, fix, path);
    }

    /** The same with the number it was held against. */
    public Finding against(double bound) {
        return new Finding(rule, severity, toldText, value, OptionalDouble.of(bound), lengths, toldWhy, toldRemedy, fix, path);
    }

    /** The same with where the limit comes from, one sentence. */
    public Finding because(String reason) {
        return new Finding(rule, severity, toldText, value, limit, lengths, reason, toldRemedy, fix, path);
    }

    /** The same with what to do, one sentence. */
    public Finding remedy(String what) {
        return new Finding(rule, severity, toldText, value, limit, lengths, toldWhy, what, fix, path);
    }

    /** The same with the remedy as data. */
    public Finding fix(Optional<Fix> found) {
        return new Finding(rule, severity, toldText, value, limit, lengths, toldWhy, toldRemedy, found, path);
    }
}

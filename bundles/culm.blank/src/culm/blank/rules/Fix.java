package culm.blank.rules;

import culm.geometry.words.LengthText;
import culm.geometry.words.Told;

/**
 * A remedy as data: the input to change and its new value, found by solving.
 *
 * @param path  input path
 * @param value new value in the input's unit
 * @param told  what it does, in a few words, its lengths as {@link Say#along} writes them
 */
public record Fix(String path, double value, String told) {
    /** What it does, in a few words, lengths in mm. */
    public String text() {
        return Told.mm(told);
    }

    Fix in(LengthText unit) {
        return new Fix(path, value, Told.in(told, unit));
    }
}

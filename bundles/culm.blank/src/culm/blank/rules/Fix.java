package culm.blank.rules;

/**
 * A remedy as data: the input to change and its new value, found by solving.
 *
 * @param path  input path
 * @param value new value in the input's unit
 * @param text  what it does, in a few words
 */
public record Fix(String path, double value, String text) {
}

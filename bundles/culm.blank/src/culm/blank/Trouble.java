package culm.blank;

/**
 * Why one result could not be computed.
 *
 * @param result  name of the result, e.g. {@code sidesCloseAt}
 * @param path    input that has to change; may be empty
 * @param sentence one clear sentence
 */
public record Trouble(String result, String path, String sentence) {
}

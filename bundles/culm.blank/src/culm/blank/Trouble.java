package culm.blank;

import culm.geometry.words.Told;

/**
 * Why one result could not be computed.
 *
 * @param result  name of the result, e.g. {@code sidesCloseAt}
 * @param path    input that has to change; may be empty
 * @param told   one clear sentence, its lengths as {@link Told} keeps them
 */
public record Trouble(String result, String path, String told) {
    /** One clear sentence, lengths in mm. */
    public String sentence() {
        return Told.mm(told);
    }
}

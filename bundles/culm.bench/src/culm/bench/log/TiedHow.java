package culm.bench.log;

import java.util.Optional;

/**
 * How a blank was tied; empty where it was not noted.
 *
 * @param winding  clockwise or anticlockwise, seen from the tip
 * @param caneHeld how the cane was held while tying
 * @param ends     plain, thinned or bevelled
 * @param wire     whether it has a wire
 * @param sealing  what the sides were sealed with
 */
public record TiedHow(String winding, String caneHeld, String ends, Optional<Boolean> wire, String sealing) {
    /** Nothing noted. */
    public static final TiedHow NOTHING = new TiedHow("", "", "", Optional.empty(), "");
}

package culm.bench.log;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was measured and seen on one blank; whatever was not noted is empty. Lengths mm.
 *
 * @param stapleLength its staple
 * @param tie          tie length after tying
 * @param wrapTop      top of the wrap
 * @param left         turns left when the left side closed; negative when it was still open at the top of the wrap
 * @param right        the same on the right
 * @param folded       leak test with the fold still closed
 * @param cut          leak test after the tip was cut
 * @param straight     whether it looks straight
 * @param finished     finished length
 * @param keeper       whether it was kept
 */
public record Seen(OptionalDouble stapleLength, OptionalDouble tie, OptionalDouble wrapTop, OptionalDouble left, OptionalDouble right, Optional<Leak> folded,
        Optional<Leak> cut, Optional<Boolean> straight, OptionalDouble finished, Optional<Boolean> keeper) {
    /** Nothing noted yet. */
    public static final Seen NOTHING = new Seen(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());

    /** Only how it closed. */
    public static Seen closing(double tie, double wrapTop, double left, double right) {
        return new Seen(OptionalDouble.empty(), OptionalDouble.of(tie), OptionalDouble.of(wrapTop), OptionalDouble.of(left), OptionalDouble.of(right),
                Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    /** Turns left, the mean of both sides, or of the one that was noted. */
    public OptionalDouble turns() {
        if (left.isPresent() && right.isPresent()) {
            return OptionalDouble.of((left.getAsDouble() + right.getAsDouble()) / 2);
        }
        return left.isPresent() ? left : right;
    }

    /** How many sides were noted. */
    public int sides() {
        return (left.isPresent() ? 1 : 0) + (right.isPresent() ? 1 : 0);
    }
}

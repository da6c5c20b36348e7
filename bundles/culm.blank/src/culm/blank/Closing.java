package culm.blank;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.geometry.words.Told;

/**
 * Where the sides close.
 *
 * @param at      lowest height from which the sides are closed all the way to the staple's top; empty when they never are
 * @param closed  every closed stretch of the overlap, ascending; the last one reaches the top when {@code at} is present
 * @param course  how far the sides are open along the overlap, ascending in z
 * @param refusal why nothing could be computed, in one sentence, its lengths as {@link Told} keeps them
 * @param path    input that has to change, may be empty
 */
public record Closing(OptionalDouble at, List<Stretch> closed, List<SeamPoint> course, Optional<String> refusal, String path) {
    static Closing refused(String path, String why) {
        return new Closing(OptionalDouble.empty(), List.of(), List.of(), Optional.of(why), path);
    }

    /** Why nothing could be computed, in one sentence, lengths in mm. */
    public Optional<String> problem() {
        return refusal.map(Told::mm);
    }

    /** How far the sides are open at the staple's top; empty when nothing could be computed. */
    public OptionalDouble openAtTop() {
        return course.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(course.get(course.size() - 1).open());
    }

    /** Whether the sides are closed from the end of the cane on. */
    public boolean closedEverywhere() {
        return at.isPresent() && !course.isEmpty() && at.getAsDouble() <= course.get(0).z();
    }
}

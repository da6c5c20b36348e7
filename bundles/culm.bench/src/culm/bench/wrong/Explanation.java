package culm.bench.wrong;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.geometry.words.Told;

/**
 * What went wrong with one blank.
 *
 * @param verdict  in one word
 * @param planned  turns left that the design planned
 * @param expected turns left that the model expects with the lengths as measured
 * @param seen     turns left that were seen, mean of both sides
 * @param reading  how well turns can be read, 95 %, of that mean
 * @param known    measured lengths that differ from the plan, the weightiest first
 * @param crooked  how crooked it would have to be, when the sides differ by more than the reading
 * @param causes   what would explain the rest, the least far off first; empty when there is no rest to explain
 * @param equal    how many of the first causes fit about equally well; 0 without causes
 * @param together how far all causes together would have to be off, each in units of its own tolerance
 * @param told     the answer in sentences, the most important first, their lengths as {@link Told} keeps them
 */
public record Explanation(Verdict verdict, OptionalDouble planned, OptionalDouble expected, OptionalDouble seen, double reading, List<Known> known, Optional<Cause> crooked,
        List<Cause> causes, int equal, double together, List<String> told) {
    /** The answer in sentences, the most important first, lengths in mm. */
    public List<String> sentences() {
        return told.stream().map(Told::mm).toList();
    }

    /** The first cause: crooked, a measured length, or the input that is least far off; empty when all is as planned. */
    public Optional<String> first() {
        return switch (verdict) {
            case CROOKED -> Optional.of("crooked");
            case EXPLAINED -> known.stream().findFirst().map(Known::words);
            case SOMETHING_ELSE, WITHIN_GIVE_OR_TAKE -> causes.stream().findFirst().map(Cause::words);
            default -> Optional.empty();
        };
    }
}

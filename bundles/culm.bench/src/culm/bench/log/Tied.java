package culm.bench.log;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One blank of the log.
 *
 * @param number  the number on the blank
 * @param on      when it was tied
 * @param by      who tied it
 * @param madeFor who it is for
 * @param from    parts
 * @param how     how it was tied
 * @param seen    what was measured and seen
 * @param remarks anything else
 * @param line    its line in the file it was read from; 0 when there is none
 */
public record Tied(String number, Optional<LocalDate> on, String by, String madeFor, TiedFrom from, TiedHow how, Seen seen, String remarks, int line) {
    /** Whether one side closed at least a turn sooner than the other: a sign of crooked cane. */
    public boolean oneSided() {
        return seen.left().isPresent() && seen.right().isPresent() && Math.abs(seen.left().getAsDouble() - seen.right().getAsDouble()) >= 1;
    }

    /** Whether it leaked, folded or cut; a slight leak counts. Empty when no test was noted. */
    public Optional<Boolean> leaked() {
        if (seen.folded().isEmpty() && seen.cut().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(seen.folded().filter(l -> l != Leak.NONE).isPresent() || seen.cut().filter(l -> l != Leak.NONE).isPresent());
    }

    /** Tied but not cut yet: it is drying. */
    public boolean drying() {
        return seen.cut().isEmpty() && seen.finished().isEmpty() && seen.keeper().isEmpty();
    }
}

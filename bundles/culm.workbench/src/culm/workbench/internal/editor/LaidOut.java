package culm.workbench.internal.editor;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

import culm.figures.Drawing;
import culm.figures.TextMeasure;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedDrawing;

/**
 * Drawings of one reed that were laid out before the display's thread asks for them: as the last ones were, which at the next step of a drag is
 * nearly always right.
 *
 * @param reed the reed as laid out for {@code reedFor}; empty when it was not
 * @param section the section as laid out for {@code sectionFor}; empty when it was not
 */
record LaidOut(Optional<ReedLayout> reedFor, Optional<ReedDrawing> reed, Optional<SectionLayout> sectionFor, Optional<Drawing> section) {
    /** Nothing is. */
    static final LaidOut NOTHING = new LaidOut(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * What to lay out, and how.
     *
     * @param reed the reed's layout; empty when the reed cannot be seen
     * @param section the section's; empty when it cannot be seen
     * @param measure room that text takes; where it cannot tell, nothing is laid out
     */
    record Wanted(Optional<ReedLayout> reed, Optional<SectionLayout> section, TextMeasure measure) {
        /** Lays a reed out, the section on this thread and the rest at the same time elsewhere. */
        LaidOut of(Reed what, CompletableFuture<Optional<ReedDrawing>> begun) {
            Optional<Drawing> cut = tried(() -> section.map(l -> l.draw(what, measure)));
            return new LaidOut(reed, begun.join(), section, cut);
        }

        /** Begins with the reed. */
        CompletableFuture<Optional<ReedDrawing>> begin(Reed what, Executor besides) {
            return CompletableFuture.supplyAsync(() -> tried(() -> reed.map(l -> l.draw(what, measure))), besides);
        }

        private static <T> Optional<T> tried(Supplier<Optional<T>> layOut) {
            try {
                return layOut.get();
            } catch (RuntimeException e) {
                return Optional.empty(); // it is laid out again on the display's thread: there it is told what is wrong
            }
        }
    }

    /** {@return the reed laid out so; empty when it was not} */
    Optional<ReedDrawing> reed(ReedLayout as) {
        return reedFor.filter(as::equals).flatMap(l -> reed);
    }

    /** {@return the section laid out so; empty when it was not} */
    Optional<Drawing> section(SectionLayout as) {
        return sectionFor.filter(as::equals).flatMap(l -> section);
    }
}

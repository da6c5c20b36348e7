package culm.workbench.internal.editor;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Stream;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Verdict;
import culm.design.DesignedBlank;
import culm.figures.reed.Reed;
import culm.model.problem.FileProblem;

/**
 * What an editor shows at one moment; everything in it belongs together.
 *
 * @param blank the design as a blank; empty when it cannot be told
 * @param assessment its numbers
 * @param findings what the rules say, the worst first
 * @param verdict the sentence under the name
 * @param reed the geometry to draw
 * @param problems why it cannot be told
 */
public record Shown(Optional<DesignedBlank> blank, Optional<Assessment> assessment, List<Finding> findings, Verdict verdict,
        Optional<Reed> reed, List<FileProblem> problems) {

    /** Nothing yet. */
    public static final Shown NOTHING = new Shown(Optional.empty(), Optional.empty(), List.of(),
            new Verdict(Verdict.Sign.MAY_FIT, "not computed yet"), Optional.empty(), List.of());

    /**
     * Computes everything of a blank; takes some milliseconds.
     *
     * @param blank the blank
     * @param rules the rules to judge by
     * @param always what is said of every design, such as a plug-in that cannot be used
     * @param besides where a part of it may be computed at the same time
     * @return what to show
     */
    static Shown of(DesignedBlank blank, Rules rules, List<Finding> always, Executor besides) {
        Supplier<Reed> drawn = drawn(blank, besides);
        Assessment assessment = blank.assess();
        List<Finding> findings = Stream.concat(blank.judge(assessment, rules).stream(), always.stream()).sorted(Comparator.comparing(Finding::severity)).toList();
        return new Shown(Optional.of(blank), Optional.of(assessment), findings, Verdict.of(assessment, findings),
                Optional.of(drawn == null ? Reed.of(assessment).ready() : drawn.get().told(assessment)), List.of());
    }

    /** Begins to prepare the drawing; null where a plug-in could hold it up: it is prepared after the assessment then, which has seen to that. */
    private static Supplier<Reed> drawn(DesignedBlank blank, Executor besides) {
        return blank.foreign() ? null : CompletableFuture.supplyAsync(() -> Reed.of(Assessor.outline(blank.blank())).ready(), besides)::join;
    }

    /**
     * What to show of a design that is no blank.
     *
     * @param problems why
     * @return what to show
     */
    static Shown of(List<FileProblem> problems) {
        return new Shown(Optional.empty(), Optional.empty(), List.of(),
                new Verdict(Verdict.Sign.DOES_NOT, "cannot be told: " + problems.get(0).sentence()), Optional.empty(), problems);
    }
}

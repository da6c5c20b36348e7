package culm.workbench.internal.editor;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Verdict;
import culm.design.DesignedBlank;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedDrawing;
import culm.model.problem.FileProblem;
import culm.workbench.internal.sharing.MissingNotice;

/**
 * What an editor shows at one moment; everything in it belongs together.
 *
 * @param blank the design as a blank; empty when it cannot be told
 * @param assessment its numbers
 * @param findings what the rules say, the worst first
 * @param verdict the sentence under the name
 * @param reed the geometry to draw
 * @param problems why it cannot be told
 * @param laidOut what of the reed is laid out already
 */
public record Shown(Optional<DesignedBlank> blank, Optional<Assessment> assessment, List<Finding> findings, Verdict verdict,
        Optional<Reed> reed, List<FileProblem> problems, LaidOut laidOut) {

    /** Nothing yet; no verdict is told of it. */
    public static final Shown NOTHING = new Shown(Optional.empty(), Optional.empty(), List.of(),
            new Verdict(Verdict.Sign.MAY_FIT, "being computed"), Optional.empty(), List.of(), LaidOut.NOTHING);

    /**
     * Computes everything of a blank; takes some milliseconds.
     *
     * @param blank the blank
     * @param rules the rules to judge by
     * @param always what is said of every design, such as a plug-in that cannot be used
     * @param besides where a part of it may be computed at the same time
     * @param wanted what of it to lay out
     * @return what to show
     */
    static Shown of(DesignedBlank blank, Rules rules, List<Finding> always, Executor besides, Optional<LaidOut.Wanted> wanted) {
        // A plug-in could hold it up: then it is prepared after the assessment, which has seen to that.
        Optional<CompletableFuture<Reed>> prepared = blank.foreign() ? Optional.empty()
                : Optional.of(CompletableFuture.supplyAsync(() -> prepared(Assessor.given(blank.blank())), besides));
        Assessment assessment = blank.assess(besides);
        Reed reed = prepared.map(p -> p.join().told(assessment)).orElseGet(() -> prepared(assessment));
        Optional<LaidOut.Wanted> drawn = prepared.flatMap(p -> wanted);
        Optional<CompletableFuture<Optional<ReedDrawing>>> begun = drawn.map(w -> w.begin(reed, besides));
        List<Finding> findings = blank.judge(assessment, rules, always);
        LaidOut laidOut = drawn.map(w -> w.of(reed, begun.get())).orElse(LaidOut.NOTHING);
        List<Finding> told = MissingNotice.without(findings, blank.blank());
        Verdict verdict = new Verdict(Verdict.of(assessment, findings).sign(), Verdict.of(assessment, told).told());
        return new Shown(Optional.of(blank), Optional.of(assessment), told, verdict, Optional.of(reed), List.of(), laidOut);
    }

    /** That a type is not here is told once, above all else. */
    private static Reed prepared(Assessment assessment) {
        Reed reed = Reed.of(assessment);
        return (MissingNotice.types(assessment.blank()).isEmpty() ? reed : reed.silent()).ready();
    }

    /**
     * What to show of a design that is no blank.
     *
     * @param problems why
     * @return what to show
     */
    static Shown of(List<FileProblem> problems) {
        return new Shown(Optional.empty(), Optional.empty(), List.of(),
                new Verdict(Verdict.Sign.DOES_NOT, "where the sides close cannot be told"), Optional.empty(), problems, LaidOut.NOTHING);
    }
}

package culm.design;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Stream;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.geometry.guard.Guarded;
import culm.geometry.guard.Supervised;

/**
 * A design as it can be computed.
 *
 * @param name    the design's name, or its file's
 * @param blank   the blank it describes
 * @param limits  my limits: the studio's, with those of the design on top
 * @param places  where each input stands
 * @param remarks what was read but has no meaning here, such as a number that the profile's type does not know
 */
public record DesignedBlank(String name, Blank blank, Limits limits, Places places, List<Finding> remarks) {
    private static final Duration LONGEST = Duration.ofSeconds(20);

    /**
     * Every number of it. With a plug-in's type in it, the work is done on a thread of its own and waited for so long; a type that has not come back is
     * stopped, and the assessment then names it.
     */
    public Assessment assess() {
        // A thread that was left behind may still hold the blank it worked on.
        return foreign() ? inTime(() -> Assessor.assess(blank), () -> Assessor.assess(blank.edit().build())) : Assessor.assess(blank);
    }

    /** The same, a part of it at the same time elsewhere where no plug-in's type is in it. @param besides where that part is computed */
    public Assessment assess(Executor besides) {
        return foreign() ? assess() : Assessor.assess(blank, besides);
    }

    /** Whether a type of a plug-in is in it, which may fail or never come back. */
    public boolean foreign() {
        return blank.foreign().findAny().isPresent();
    }

    /** What the rules say of an assessment, the worst first, and the remarks. A plug-in's rule that does not come back is stopped and named. */
    public List<Finding> judge(Assessment assessment, Rules rules) {
        boolean foreign = rules.all().stream().anyMatch(Guarded.class::isInstance);
        Supplier<List<Finding>> judging = () -> rules.judge(assessment, limits);
        List<Finding> all = new ArrayList<>(foreign ? inTime(judging, judging) : judging.get());
        all.addAll(remarks);
        all.sort(Comparator.comparing(Finding::severity));
        return List.copyOf(all);
    }

    /** The same with what is said of every design, such as a plug-in that cannot be used. */
    public List<Finding> judge(Assessment assessment, Rules rules, List<Finding> always) {
        return Stream.concat(judge(assessment, rules).stream(), always.stream()).sorted(Comparator.comparing(Finding::severity)).toList();
    }

    private static <R> R inTime(Supplier<R> work, Supplier<R> again) {
        try {
            return Supervised.call(LONGEST, work);
        } catch (Supervised.Overdue stopped) {
            return again.get(); // what was stopped refuses at once now, and is named
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return again.get();
        }
    }
}

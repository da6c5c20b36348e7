package culm.workbench.internal.bench.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import culm.bench.learn.Learned;
import culm.bench.learn.Learner;
import culm.bench.log.LogDesigns;
import culm.bench.log.PlannedSeen;
import culm.bench.log.Tied;
import culm.bench.wrong.Company;
import culm.bench.wrong.Explanation;
import culm.bench.wrong.WhatWentWrong;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.design.Bridge;
import culm.geometry.GeometryException;

/**
 * What comes of a log.
 *
 * @param log all blanks
 * @param compared planned against seen, for those of the shown blanks whose design is known
 * @param limits my limits
 * @param planned the chosen blank as planned; empty when its design is not known
 * @param explanation what went wrong with it; empty when it was not asked, or its design is not known
 * @param company what the log says of others like it
 * @param learned what the log teaches; empty when it was not asked
 * @param problems what could not be read
 */
record LogShown(List<Tied> log, List<PlannedSeen> compared, Limits limits, Optional<Blank> planned, Optional<Explanation> explanation, Optional<Company> company,
        List<Learned> learned, List<String> problems) {
    static final LogShown NOTHING = new LogShown(List.of(), List.of(), Limits.STANDARD, Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of());

    /**
     * What is asked.
     *
     * @param log all blanks
     * @param some those that pass the filter
     * @param chosen the one that is chosen
     * @param page what is looked at
     */
    record Question(List<Tied> log, List<Tied> some, Optional<Tied> chosen, LogEditor.Page page) {
    }

    static LogShown of(Question q, Bridge bridge, Path file) {
        LogDesigns designs = new LogDesigns(bridge, file, Optional.empty());
        List<PlannedSeen> compared = new ArrayList<>();
        if (q.page() == LogEditor.Page.CHARTS || q.page() == LogEditor.Page.WHO) {
            q.some().forEach(t -> designs.apply(t).ifPresent(b -> compare(t, b, compared)));
        }
        Optional<Blank> planned = q.chosen().flatMap(designs);
        boolean wrong = q.page() == LogEditor.Page.WRONG && planned.isPresent();
        Optional<Explanation> explanation = wrong ? Optional.of(WhatWentWrong.explain(planned.get(), q.chosen().get())) : Optional.empty();
        Optional<Company> company = wrong ? Company.of(q.chosen().get(), q.log(), designs) : Optional.empty();
        List<Learned> learned = q.page() == LogEditor.Page.LEARN ? new Learner(designs).learn(q.some()) : List.of();
        return new LogShown(q.log(), compared, designs.limits(), planned, explanation, company, learned, designs.problems());
    }

    private static void compare(Tied tied, Blank planned, List<PlannedSeen> compared) {
        try {
            compared.add(PlannedSeen.of(tied, planned));
        } catch (GeometryException e) {
            return; // a length out of its range: its own page says so
        }
    }
}

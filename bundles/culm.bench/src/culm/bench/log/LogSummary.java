package culm.bench.log;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a log says at a glance.
 *
 * @param all     figures of all blanks
 * @param drying  tied but not cut yet, the longest first
 * @param unheld  keepers that are for nobody yet
 * @param forWhom keepers by whom they are for
 */
public record LogSummary(GroupStats all, List<Drying> drying, List<Tied> unheld, List<GroupStats> forWhom) {
    /** A blank that is drying. @param days since it was tied; -1 when no date was noted */
    public record Drying(Tied tied, long days) {
    }

    /** @param today counts how long blanks have been drying */
    public static LogSummary of(List<Tied> log, LocalDate today) {
        List<Drying> drying = new ArrayList<>();
        for (Tied tied : log) {
            if (tied.drying()) {
                drying.add(new Drying(tied, tied.on().map(d -> ChronoUnit.DAYS.between(d, today)).orElse(-1L)));
            }
        }
        drying.sort(Comparator.comparingLong(Drying::days).reversed());
        List<Tied> keepers = log.stream().filter(t -> t.seen().keeper().orElse(false)).toList();
        return new LogSummary(GroupStats.of("all", log), drying, keepers.stream().filter(t -> t.madeFor().isEmpty()).toList(),
                GroupStats.by(GroupBy.FOR, keepers).stream().filter(g -> !g.group().isEmpty()).toList());
    }
}

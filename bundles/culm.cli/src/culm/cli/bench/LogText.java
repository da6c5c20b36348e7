package culm.cli.bench;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import culm.bench.log.GroupBy;
import culm.bench.log.GroupStats;
import culm.bench.log.LogSummary;
import culm.bench.log.PlannedSeen;
import culm.bench.log.Shares;
import culm.bench.log.Tied;
import culm.blank.rules.Say;

/** A log for a person: shares by group, what is drying, what goes to whom, planned against measured. */
final class LogText {
    private static final int NAMED = 12;

    private LogText() {
    }

    static String text(List<Tied> log, GroupBy by, List<PlannedSeen> compared, LocalDate today) {
        StringBuilder out = new StringBuilder();
        LogSummary summary = LogSummary.of(log, today);
        out.append(log.size()).append(log.size() == 1 ? " blank" : " blanks").append(". Leaked: ").append(Shares.text(summary.all().leaks())).append(". Keepers: ")
                .append(Shares.text(summary.all().keepers())).append(".\n\nBy ").append(by.words()).append('\n');
        for (GroupStats g : GroupStats.by(by, log)) {
            out.append(String.format(Locale.ROOT, "  %-20s %3d blanks   leaked %s   keepers %s%n", g.group().isEmpty() ? "not noted" : g.group(), g.blanks(), Shares.text(g.leaks()),
                    Shares.text(g.keepers())).replace("\r\n", "\n"));
            g.meanTurns().ifPresent(m -> out.append(String.format("  %-20s ", "")).append(Say.turns(m)).append(" left on average")
                    .append(g.spread().isPresent() ? ", spread " + Say.tenth(g.spread().getAsDouble()) : "").append("; one side a turn before the other: ").append(Shares.text(g.oneSided()))
                    .append('\n'));
        }
        list(out, "Drying", summary.drying().stream().map(d -> "no. " + d.tied().number() + (d.days() < 0 ? ", no date" : ", " + d.days() + (d.days() == 1 ? " day" : " days"))
                + who(d.tied())).toList());
        list(out, "Keepers for nobody yet", summary.unheld().stream().map(t -> "no. " + t.number() + who(t)).toList());
        list(out, "Keepers by whom they are for", summary.forWhom().stream().map(g -> g.group() + ": " + g.blanks()).toList());
        planned(out, compared);
        return out.toString();
    }

    private static String who(Tied tied) {
        return tied.by().isEmpty() ? "" : ", tied by " + tied.by();
    }

    private static void list(StringBuilder out, String head, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        out.append('\n').append(head).append('\n');
        lines.stream().limit(NAMED).forEach(l -> out.append("  ").append(l).append('\n'));
        if (lines.size() > NAMED) {
            out.append("  and ").append(lines.size() - NAMED).append(" more\n");
        }
    }

    /** Those furthest from their plan first. */
    private static void planned(StringBuilder out, List<PlannedSeen> compared) {
        List<PlannedSeen> off = compared.stream().filter(c -> c.turns().isPresent()).sorted(Comparator.comparingDouble((PlannedSeen c) -> Math.abs(c.turns().getAsDouble())).reversed())
                .toList();
        list(out, "Furthest from the plan (measured less planned)", off.stream().map(c -> "no. " + c.tied().number() + ": " + part("turns", c.turns()) + part(", tie", c.tie())
                + part(", top of the wrap", c.wrapTop()) + part(", finished", c.finished())).collect(Collectors.toList()));
    }

    private static String part(String what, OptionalDouble value) {
        return value.isEmpty() ? "" : what + " " + (value.getAsDouble() >= 0.05 ? "+" : "") + Say.tenth(value.getAsDouble());
    }
}

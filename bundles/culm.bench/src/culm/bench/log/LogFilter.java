package culm.bench.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Picks blanks of a log: every condition that was given has to hold. Immutable. */
public final class LogFilter {
    /** All blanks. */
    public static final LogFilter ALL = new LogFilter(new EnumMap<>(GroupBy.class), LocalDate.MIN, LocalDate.MAX);
    private final Map<GroupBy, String> wanted;
    private final LocalDate from;
    private final LocalDate to;

    private LogFilter(Map<GroupBy, String> wanted, LocalDate from, LocalDate to) {
        this.wanted = wanted;
        this.from = from;
        this.to = to;
    }

    /** Only those of this group; capital letters do not count. */
    public LogFilter with(GroupBy by, String value) {
        Map<GroupBy, String> copy = new EnumMap<>(GroupBy.class);
        copy.putAll(wanted);
        copy.put(by, value.strip());
        return new LogFilter(copy, from, to);
    }

    /** Only those tied on these days, both included; blanks without a date are left out. */
    public LogFilter between(LocalDate first, LocalDate last) {
        return new LogFilter(wanted, first, last);
    }

    /** The blanks that pass, in their order. */
    public List<Tied> of(List<Tied> log) {
        List<Tied> passed = new ArrayList<>();
        for (Tied tied : log) {
            if (passes(tied)) {
                passed.add(tied);
            }
        }
        return passed;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LogFilter f && wanted.equals(f.wanted) && from.equals(f.from) && to.equals(f.to);
    }

    @Override
    public int hashCode() {
        return Objects.hash(wanted, from, to);
    }

    /** Whether a blank passes. */
    public boolean passes(Tied tied) {
        boolean dated = !from.equals(LocalDate.MIN) || !to.equals(LocalDate.MAX);
        if (dated && tied.on().filter(d -> !d.isBefore(from) && !d.isAfter(to)).isEmpty()) {
            return false;
        }
        return wanted.entrySet().stream().allMatch(w -> w.getKey().of(tied).equalsIgnoreCase(w.getValue()));
    }
}

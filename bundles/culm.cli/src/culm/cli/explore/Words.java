package culm.cli.explore;

import java.util.List;
import java.util.Locale;

import culm.blank.rules.Say;
import culm.explore.Cause;
import culm.explore.Distribution;
import culm.explore.Effect;
import culm.explore.RuleShare;
import culm.explore.Sensitivities;
import culm.explore.Share;
import culm.explore.ToleranceResult;

/** What exploring found, in words for a person. */
final class Words {
    private static final int CAUSES = 3;
    private static final int BAR = 40;
    /** Turns below which an effect is not listed, since it would read 0.00. */
    private static final double FELT = 0.005;
    private static final double BIN = 0.5;

    private Words() {
    }

    static String tolerances(String name, ToleranceResult r) {
        StringBuilder t = new StringBuilder();
        t.append(name).append(": ").append(say("%,d blanks drawn%s", r.blanks(), r.partial() ? say(" of %,d, then stopped", r.wanted()) : "")).append(say(", seed %d%n%n", r.seed()));
        t.append(say("  %-60s %s%n", "all rules", share(r.passed())));
        for (RuleShare rule : r.rules()) {
            t.append(say("  %-60s %s%n", rule.name(), share(rule.passed())));
        }
        turns(t, r);
        List<Cause> causes = r.causes().stream().filter(Cause::certain).limit(CAUSES).toList();
        if (!causes.isEmpty()) {
            t.append(say("%nWhat failures have in common%n"));
            for (Cause c : causes) {
                t.append(say("  %-40s low third %s fail, middle %s, high %s%n", c.label(), percent(c.low().value()), percent(c.middle().value()), percent(c.high().value())));
            }
        }
        if (r.reference() > 0) {
            t.append(say("%n%,d blanks took the reference path.%n", r.reference()));
        }
        if (!r.slowRules().isEmpty()) {
            t.append(say("Judged one by one: %s.%n", String.join(", ", r.slowRules())));
        }
        return t.toString();
    }

    private static void turns(StringBuilder t, ToleranceResult r) {
        Distribution d = r.turns();
        t.append(say("%nTurns left: half of the blanks between %s and %s, nine of ten between %s and %s; in the middle %s%n", turn(d.percentile(25)), turn(d.percentile(75)),
                turn(d.percentile(5)), turn(d.percentile(95)), turn(d.percentile(50))));
        if (r.never() > 0) {
            t.append(say("%,d blanks never close.%n", r.never()));
        }
        if (r.refused() > 0) {
            t.append(say("%,d blanks cannot be computed.%n", r.refused()));
        }
        Distribution.Histogram h = d.histogram(BIN);
        long most = 1;
        for (long c : h.counts()) {
            most = Math.max(most, c);
        }
        for (int i = 0; i < h.counts().length; i++) {
            if (h.counts()[i] * 2000 >= r.blanks()) {
                t.append(say("  %5s to %5s  %-" + BAR + "s %s%n", Say.tenth(h.from() + i * BIN), Say.tenth(h.from() + (i + 1) * BIN),
                        "#".repeat((int) (BAR * h.counts()[i] / most)), percent((double) h.counts()[i] / r.blanks())));
            }
        }
    }

    static String matters(String name, Sensitivities s, boolean fitted) {
        if (s.effects().isEmpty()) {
            return name + ": " + s.why() + "\n";
        }
        StringBuilder t = new StringBuilder(name).append(": turns left move by\n\n");
        List<Effect> felt = s.effects().stream().filter(e -> Math.abs(e.perTolerance()) >= FELT).toList();
        int label = felt.stream().mapToInt(e -> e.label().length()).max().orElse(0);
        t.append(say("  %" + -Math.max(1, label) + "s %14s %24s %8s%n", "", "for 0.01 more", "for its give or take", "share"));
        for (Effect e : felt) {
            t.append(say("  %" + -label + "s %+14.2f %+12.2f for %7s %8s%s%n", e.label(), e.perHundredth(), e.perTolerance(), Say.plain(e.plusMinus()), percent(e.share()),
                    e.measured() ? "" : "  assumed"));
        }
        long little = s.effects().stream().filter(e -> e.perTolerance() != 0).count() - felt.size();
        t.append(little == 0 ? "" : say("%n  %d more move them by less than a hundredth of a turn each.%n", little));
        t.append(fitted ? say("  What is the same in the blank that worked hardly counts: the fit has taken it in.%n") : "");
        s.advice().ifPresent(e -> t.append(say("%nMeasure better first: %s.%n", e.label())));
        return t.toString();
    }

    static String share(Share s) {
        return say("%s pass (%s to %s)", percent(s.value()), percent(s.low()), percent(s.high()));
    }

    private static String turn(double value) {
        return Double.isNaN(value) ? "never" : Say.tenth(value);
    }

    static String percent(double share) {
        return say("%.1f %%", 100 * share);
    }

    static String say(String format, Object... values) {
        return String.format(Locale.ROOT, format.replace("%n", "\n"), values);
    }
}

package culm.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Band;
import culm.blank.Blank;
import culm.blank.Fit;
import culm.blank.Input;
import culm.blank.Inputs;
import culm.blank.Mark;
import culm.blank.Spool;
import culm.blank.rules.Finding;
import culm.blank.rules.Say;
import culm.blank.rules.Verdict;

/** An assessment for a person: the verdict first, then the marks, the findings, the numbers. No digit that a caliper cannot see. */
public final class ReportText {
    private static final int LABEL = 26;
    private final StringBuilder out = new StringBuilder();
    private final Assessment a;

    private ReportText(Assessment a) {
        this.a = a;
    }

    /** The text, ending with a line break. @param name the design's name; @param spool the thread there is, if that was asked */
    public static String text(String name, Assessment a, List<Finding> findings, Optional<Spool> spool) {
        return new ReportText(a).write(name, findings, spool);
    }

    private String write(String name, List<Finding> findings, Optional<Spool> spool) {
        Verdict verdict = Verdict.of(a, findings);
        line(name);
        line(sign(verdict.sign()) + " " + verdict.sentence());
        if (a.fitted()) {
            Fit fit = a.blank().fit().orElseThrow();
            line(fit.learned().isEmpty() ? "  Fitted to a blank that worked with " + Say.turns(fit.turnsLeft()) + " left." : "  In use: one length " + fit.learned() + ".");
        }
        heading("Marks, from the bottom of the staple");
        a.heights().all().entrySet().stream().sorted(Comparator.comparingDouble(Map.Entry::getValue)).forEach(e -> mark(e.getKey(), e.getValue()));
        heading("Findings");
        findings.forEach(this::finding);
        heading("Numbers");
        numbers();
        spool.ifPresent(this::spool);
        assumed();
        return out.toString();
    }

    private void mark(Mark mark, double z) {
        String take = mark == Mark.SIDES_CLOSE ? a.closeBand().map(b -> ", give or take " + Say.tenth(b.half())).orElse("") : "";
        row(mark.label(), Say.mm(z) + take);
    }

    private void finding(Finding f) {
        line(String.format("  %-13s %s", f.severity().word(), f.text()));
        String todo = f.fix().map(fix -> fix.text()).orElse(f.remedy());
        if (!todo.isEmpty()) {
            line(String.format("  %-13s -> %s", "", todo));
        }
    }

    private void numbers() {
        Blank blank = a.blank();
        row("turns left", a.turnsLeft().isPresent() ? Say.tenth(a.turnsLeft().getAsDouble()) + take(a.turnsBand()) : "cannot be told");
        row("one turn of closing", length(a.tieLengthPerTurn()) + " of tie length");
        row("open at the staple's top", gap(a.openAtStapleTop()));
        row("open at the wrap's top", gap(a.openAtWrapTop()));
        row("cane on the staple", length(a.caneOnStaple()));
        row("cane above the staple", Say.mm(a.caneAboveStaple()));
        row("thread", a.thread().map(t -> Say.plain(t.turnsUp()) + " turns up, " + Math.round(t.turnsDown()) + " down, " + Math.round(t.length())
                + " mm and tails").orElse("cannot be told"));
        row("bore", a.boreVolume().isPresent() ? Math.round(a.boreVolume().getAsDouble()) + " mm³" : "cannot be told");
        if (blank.number(Inputs.SLIPPED) != 0) {
            row("slipped by", Say.fine(blank.number(Inputs.SLIPPED)) + ", without effect on the closing in this model");
        }
    }

    private void spool(Spool spool) {
        row("spool", a.thread().map(t -> {
            int blanks = spool.blanks(t);
            return "enough for " + blanks + (blanks == 1 ? " blank" : " blanks") + " with " + Math.round(spool.extra()) + " mm for the tails of each; "
                    + Math.round(spool.left(t, blanks)) + " mm left";
        }).orElse("cannot be told"));
    }

    private void assumed() {
        List<String> names = new ArrayList<>();
        for (Input input : a.blank().inputs()) {
            boolean counts = a.sensitivities().stream().anyMatch(s -> s.input().path().equals(input.path()) && s.contribution() > 0);
            if (counts && !input.tolerance().measured() && !names.contains(input.parameter().label())) {
                names.add(input.parameter().label());
            }
        }
        if (!names.isEmpty()) {
            line("");
            line("Assumed, not measured: " + String.join("; ", names) + ".");
        }
        line("");
        line("The seam above the staple, the opening and the sound are outside this model.");
    }

    private static String take(java.util.Optional<Band> band) {
        return band.map(b -> ", give or take " + Say.tenth(b.half())).orElse("");
    }

    private static String length(OptionalDouble value) {
        return value.isPresent() ? Say.mm(value.getAsDouble()) : "cannot be told";
    }

    private static String gap(OptionalDouble value) {
        if (value.isEmpty()) {
            return "cannot be told";
        }
        double open = value.getAsDouble();
        return open > 0 ? Say.fine(open) : "closed, pinched by " + Say.fine(-open);
    }

    private static String sign(Verdict.Sign sign) {
        return "[" + sign.word() + "]";
    }

    private void heading(String text) {
        line("");
        line(text);
    }

    private void row(String label, String value) {
        line("  " + label + " ".repeat(Math.max(1, LABEL - label.length())) + value);
    }

    private void line(String text) {
        out.append(text).append('\n');
    }
}

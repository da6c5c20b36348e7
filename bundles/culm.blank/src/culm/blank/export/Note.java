package culm.blank.export;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import culm.blank.Assessment;
import culm.blank.Input;
import culm.blank.rules.Finding;
import culm.blank.rules.Say;
import culm.blank.rules.Verdict;

/** A note in Markdown: the verdict, the numbers, the findings and what was given, to keep beside a batch or send to someone. */
public final class Note implements Exporter {
    @Override
    public String id() {
        return "culm.export.note";
    }

    @Override
    public String name() {
        return "note in Markdown";
    }

    @Override
    public String ending() {
        return "md";
    }

    @Override
    public byte[] bytes(String title, Assessment a, List<Finding> findings) {
        StringBuilder text = new StringBuilder("# ").append(cell(title)).append("\n\n");
        text.append(capital(Verdict.of(a, findings).sentence())).append(".\n\n| | |\n|---|---|\n");
        row(text, "sides close at", a.sidesCloseAt(), Say::mm, a.closeBand().map(b -> ", give or take " + Say.mm(b.half())).orElse(""));
        row(text, "turns left", a.turnsLeft(), Say::tenth, a.turnsBand().map(b -> ", give or take " + Say.tenth(b.half())).orElse(""));
        row(text, "sides at the staple's top", a.openAtStapleTop(), Note::open, "");
        row(text, "sides at the top of the wrap", a.openAtWrapTop(), Note::open, "");
        row(text, "tie length for one turn", a.tieLengthPerTurn(), Say::mm, "");
        row(text, "cane on the staple", a.caneOnStaple(), Say::mm, "");
        row(text, "cane above the staple", OptionalDouble.of(a.caneAboveStaple()), Say::mm, "");
        a.thread().ifPresent(t -> row(text, "thread without tails", OptionalDouble.of(t.length()), Say::mm, ""));
        row(text, "bore volume", a.boreVolume(), v -> String.format(Locale.ROOT, "%.1f mm³", v), "");
        text.append("\n## Marks from the bottom of the staple\n\n| | |\n|---|---|\n");
        a.heights().all().forEach((mark, z) -> row(text, mark.label(), OptionalDouble.of(z), Say::mm, ""));
        text.append("\n## Findings\n\n");
        findings.forEach(f -> text.append("- **").append(f.severity().word()).append("**: ").append(cell(f.text()))
                .append(f.remedy().isEmpty() ? "" : " " + cell(f.remedy())).append('\n'));
        text.append("\n## What was given\n\n| | | |\n|---|---|---|\n");
        a.blank().inputs().forEach(input -> text.append("| ").append(cell(label(input))).append(" | ").append(given(input)).append(" | ")
                .append(input.tolerance().measured() ? "measured" : "assumed").append(" |\n"));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void row(StringBuilder text, String label, OptionalDouble value, java.util.function.DoubleFunction<String> say, String behind) {
        value.ifPresent(v -> text.append("| ").append(label).append(" | ").append(say.apply(v)).append(behind).append(" |\n"));
    }

    private static String open(double gap) {
        return gap > 0 ? "open by " + Say.fine(gap) : "closed, pinched by " + Say.fine(-gap);
    }

    private static String label(Input input) {
        int row = input.path().indexOf('[');
        return row < 0 ? input.parameter().label() : input.parameter().label() + ", row " + (Integer.parseInt(input.path().substring(row + 1, input.path().indexOf(']'))) + 1);
    }

    private static String given(Input input) {
        String unit = input.parameter().quantity().unit();
        return String.format(Locale.ROOT, "%.3f", input.value()).replaceAll("\\.?0+$", "") + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** One line that cannot break out of a table or become markup. */
    private static String cell(String text) {
        return text.replaceAll("\\s+", " ").replaceAll("([\\\\|<>*_`\\[\\]])", "\\\\$1");
    }
}

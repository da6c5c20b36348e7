package culm.bench.card;

import java.util.List;

import culm.figures.Anchor;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;

/** Boxes for what was measured and seen, in the order of the work and in the words of the log. */
final class Results {
    private static final double ROW = 9;

    private Results() {
    }

    private record Line(String name, List<String> choices) {
    }

    /** Draws them down to a height, mm; what is left over at the end is for remarks. */
    static void draw(Mm mm, double x, double y, double width, double bottom) {
        List<Line> lines = List.of(new Line("tied by", List.of()), new Line("staple length", List.of("mm")), new Line("tie length", List.of("mm")), new Line("turns left, left side", List.of()),
                new Line("turns left, right side", List.of()), new Line("top of the wrap", List.of("mm")), new Line("tie again", List.of("mm")),
                new Line("straight", List.of("yes", "no")), new Line("leak, fold closed", List.of("none", "slight", "leaks")),
                new Line("finished length", List.of("mm")), new Line("leak, tip cut", List.of("none", "slight", "leaks")), new Line("keeper", List.of("yes", "no")),
                new Line("remarks", List.of()));
        mm.bold("Result", x + 1, y + 4.2, Anchor.START, Size.HEADING, Role.INK);
        double at = y + 6.4;
        for (Line line : lines) {
            boolean last = line == lines.get(lines.size() - 1);
            mm.box(x, at, width, last ? Math.max(ROW, bottom - at) : ROW, Style.line(Role.INK, 0.8));
            mm.text(line.name(), x + 1.6, at + 3.4, Anchor.START, Size.SMALL, Role.INK);
            choices(mm, line.choices(), x, at, width);
            at += ROW;
        }
    }

    private static void choices(Mm mm, List<String> choices, double x, double y, double width) {
        if (choices.equals(List.of("mm"))) {
            mm.text("mm", x + width - 1.6, y + ROW - 2, Anchor.END, Size.SMALL, Role.QUIET);
            return;
        }
        double at = x + width - 1.6;
        for (int i = choices.size() - 1; i >= 0; i--) {
            String word = choices.get(i);
            at -= mm.width(word, Size.SMALL, false);
            mm.text(word, at, y + ROW - 2, Anchor.START, Size.SMALL, Role.INK);
            at -= 4;
            mm.box(at, y + ROW - 4.8, 3.2, 3.2, Style.line(Role.INK, 0.8));
            at -= 3;
        }
    }
}

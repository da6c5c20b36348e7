package culm.bench.card;

import java.util.List;

import culm.figures.Anchor;
import culm.figures.Numbers;
import culm.figures.Role;
import culm.figures.Size;

/** The staples of a card for several, setting by setting: where the pencil mark, where to stop; room to note the turns left and right. In two columns when
 * they are many, with the tie length beside each and without that room. */
final class StapleList {
    private static final double ROW = 4.6;
    private static final double HEAD = 9.5;
    private static final double BETWEEN = 4;
    private final Card card;

    StapleList(Card card) {
        this.card = card;
    }

    /** Draws as many as fit, and says how many more there are. */
    void draw(Mm mm, double x, double y, double width, double bottom) {
        int rows = (int) Math.floor((bottom - y - HEAD) / ROW);
        List<StapleLine> all = card.staples();
        long ties = card.oneTie() ? 0 : all.stream().mapToDouble(StapleLine::tie).distinct().count();
        int columns = all.size() + ties > rows ? 2 : 1;
        double column = (width - (columns - 1) * BETWEEN) / columns;
        int room = rows * columns;
        int shown = all.size() <= room ? all.size() : room - 1;
        mm.bold("Staples", x, y + 4.2, Anchor.START, Size.HEADING, Role.INK);
        for (int c = 0; c < columns; c++) {
            List<StapleLine> lines = all.subList(Math.min(shown, c * rows), Math.min(shown, (c + 1) * rows));
            column(mm, x + c * (column + BETWEEN), y + HEAD, column, lines, columns == 1 ? Size.BODY : Size.SMALL);
        }
        if (shown < all.size()) {
            mm.text("and " + (all.size() - shown) + " more, see table", x + column + BETWEEN, y + HEAD + rows * ROW, Anchor.START, Size.SMALL, Role.DOES_NOT);
        }
    }

    private void column(Mm mm, double x, double y, double width, List<StapleLine> lines, Size size) {
        boolean write = size == Size.BODY;
        boolean ties = !card.oneTie() && !write;
        double number = mm.width("70.0 ", size, true) + (write ? 1.4 : size == Size.BODY ? 3.4 : 0.6);
        double end = write ? x + width - 2 * number : x + width;
        double stop = end;
        double mark = stop - number;
        double tie = mark - number;
        if (ties) {
            head(mm, "tie", tie, y);
        }
        head(mm, "mark", mark, y);
        head(mm, "stop", stop, y);
        if (write) {
            head(mm, "left", stop + number, y);
            head(mm, "right", x + width, y);
        }
        double at = y;
        double set = card.oneTie() ? lines.stream().mapToDouble(StapleLine::tie).findFirst().orElse(0) : Double.NaN;
        for (StapleLine line : lines) {
            at += ROW;
            if (write && line.tie() != set) {
                set = line.tie();
                mm.bold("tie at " + Numbers.fixed(set, 1), x, at, Anchor.START, Size.HEADING, Role.INK);
                mm.line(x, at + 1.1, x + width, at + 1.1, Role.INK, 0.8);
                at += ROW;
            }
            mm.text(mm.cut(line.staple(), (ties ? tie : mark) - number - x, size, false), x, at, Anchor.START, size, Role.INK);
            if (ties) {
                mm.bold(Numbers.fixed(line.tie(), 1), tie, at, Anchor.END, size, Role.INK);
            }
            mm.bold(Numbers.fixed(line.pencilMark(), 1), mark, at, Anchor.END, size, Role.INK);
            mm.text(Numbers.fixed(line.wrapTop(), 1), stop, at, Anchor.END, size, Role.INK);
            mm.line(x, at + 1.1, x + width, at + 1.1, Role.RULE, 0.5);
        }
        if (write && !lines.isEmpty()) {
            for (double line : new double[] {stop + 1.4, stop + 1.4 + number - 0.7, x + width}) {
                mm.line(line, y + 0.6, line, at + 1.1, Role.RULE, 0.5);
            }
        }
    }

    private static void head(Mm mm, String word, double x, double y) {
        mm.text(word, x, y - 0.6, Anchor.END, Size.SMALL, Role.QUIET);
    }
}

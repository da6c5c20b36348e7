package culm.bench.card;

import java.util.List;

import culm.figures.Anchor;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;

/** The head of a card: its number, who it is for, and the parts. */
final class HeadBlock {
    private static final double FIELD = 11;
    private final Card card;

    HeadBlock(Card card) {
        this.card = card;
    }

    /** Draws it; returns where it ends below, mm. */
    double draw(Mm mm, double x, double y, double width) {
        CardHead h = card.head();
        double number = 46;
        mm.round(x, y, number, 14, 1.5, Style.line(Role.INK, 1.4));
        mm.text(card.forSeveral() ? "blanks no." : "blank no.", x + 2, y + 4.2, Anchor.START, Size.SMALL, Role.QUIET);
        mm.bold(mm.cut(h.blankNumber(), number - 4, Size.LARGE, true), x + number / 2, y + 11.8, Anchor.MIDDLE, Size.LARGE, Role.INK);
        double room = width - number - 6;
        Size name = mm.width(h.design(), Size.TITLE, true) <= room ? Size.TITLE : Size.HEADING;
        mm.bold(mm.cut(h.design(), room, name, true), x + number + 5, y + 5.6, Anchor.START, name, Role.INK);
        Size size = mm.wrap(sentence(), room, Size.BODY, !card.works()).size() > 1 ? Size.SMALL : Size.BODY;
        mm.paragraph(sentence(), x + number + 5, y + (size == Size.BODY ? 11.6 : 10), room, size, !card.works(), card.works() ? Role.QUIET : Role.DOES_NOT);
        int lines = mm.wrap(sentence(), room, size, !card.works()).size();
        double top = y + 17.5 + Math.max(0, lines - 2) * Mm.lineHeight(size);
        double quarter = width / 4;
        String[][] fields = {{"for", h.madeFor()}, {"instrument", h.instrument()}, {"staple", h.staple()}, {"cane batch", h.caneBatch()},
                {"shape", h.shape()}, {"thread", h.thread()}, {"ends of the cane", h.ends()}, {"date", ""}};
        for (int i = 0; i < fields.length; i++) {
            field(mm, fields[i][0], fields[i][1], x + i % 4 * quarter, top + i / 4 * FIELD, quarter - 3);
        }
        return top + 2 * FIELD;
    }

    private String sentence() {
        return card.works() ? card.verdict() : "Do not tie it like this: " + card.verdict();
    }

    /** As large as it fits: on one line, else small on two, the second cut. */
    private static void value(Mm mm, String value, double x, double y, double width) {
        for (Size size : new Size[] {Size.HEADING, Size.BODY, Size.SMALL}) {
            if (mm.width(value, size, true) <= width) {
                mm.bold(value, x, y + 7.6, Anchor.START, size, Role.INK);
                return;
            }
        }
        List<String> lines = mm.wrap(value, width, Size.SMALL, true);
        mm.bold(mm.cut(lines.get(0), width, Size.SMALL, true), x, y + 5.9, Anchor.START, Size.SMALL, Role.INK);
        if (lines.size() > 1) {
            mm.bold(mm.cut(String.join(" ", lines.subList(1, lines.size())), width, Size.SMALL, true), x, y + 8.6, Anchor.START, Size.SMALL, Role.INK);
        }
    }

    private static void field(Mm mm, String name, String value, double x, double y, double width) {
        mm.text(name, x, y + 2.8, Anchor.START, Size.SMALL, Role.QUIET);
        value(mm, value, x, y, width);
        mm.line(x, y + 9, x + width, y + 9, value.isEmpty() ? Role.QUIET : Role.RULE, 0.8);
    }
}

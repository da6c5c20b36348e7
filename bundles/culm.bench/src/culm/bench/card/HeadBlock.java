package culm.bench.card;

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
        mm.bold(mm.cut(h.design(), width - number - 6, Size.TITLE, true), x + number + 5, y + 5.6, Anchor.START, Size.TITLE, Role.INK);
        double room = width - number - 6;
        Size size = mm.wrap(sentence(), room, Size.BODY, !card.works()).size() > 1 ? Size.SMALL : Size.BODY;
        mm.paragraph(sentence(), x + number + 5, y + (size == Size.BODY ? 11.6 : 10), room, size, !card.works(), card.works() ? Role.QUIET : Role.DOES_NOT);
        double top = y + 17.5;
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

    private static void field(Mm mm, String name, String value, double x, double y, double width) {
        mm.text(name, x, y + 2.8, Anchor.START, Size.SMALL, Role.QUIET);
        mm.bold(mm.cut(value, width, Size.HEADING, true), x, y + 7.6, Anchor.START, Size.HEADING, Role.INK);
        mm.line(x, y + 9, x + width, y + 9, value.isEmpty() ? Role.QUIET : Role.RULE, 0.8);
    }
}

package culm.bench.card;

import culm.figures.Drawing;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.paper.CheckRuler;
import culm.figures.paper.Paper;

/** Lays a card out on one upright page: head, steps, results or staples beside them, cautions, check ruler. */
public final class CardPage {
    private static final double MARGIN = Paper.MARGIN_MM;
    private static final double TOP = 9;
    private static final double STEPS = 124;
    private static final double GAP = 5;
    private static final double RULER = 12.5;

    private CardPage() {
    }

    /** The page as a drawing of the paper's size; 1 mm on it is 1 mm on paper. */
    public static Drawing draw(Card card, Paper paper, TextMeasure measure) {
        double u = Drawing.UNITS_PER_MM;
        double width = paper.width(false) / u - 2 * MARGIN;
        double height = paper.height(false) / u;
        Pen pen = new Pen();
        Mm mm = new Mm(pen, measure);
        double head = new HeadBlock(card).draw(mm, MARGIN, TOP, width);
        mm.line(MARGIN, head + 1, MARGIN + width, head + 1, Role.INK, 1.2);
        double top = head + 3.5;
        double foot = height - RULER - 6;
        double end = Steps.draw(card, mm, MARGIN, top, STEPS, foot);
        double side = MARGIN + STEPS + GAP;
        double beside = width - STEPS - GAP;
        boolean below = end + Cautions.height(mm, STEPS, 2) <= foot;
        double bottom = below ? foot : foot - Cautions.height(mm, beside, 1) - 2;
        if (card.forSeveral()) {
            new StapleList(card).draw(mm, side, top, beside, bottom);
        } else {
            Results.draw(mm, side, top, beside, bottom);
        }
        if (below) {
            Cautions.draw(mm, MARGIN, foot - Cautions.height(mm, STEPS, 2), STEPS, 2);
        } else {
            Cautions.draw(mm, side, bottom + 2, beside, 1);
        }
        mm.line(MARGIN, foot + 2.2, MARGIN + width, foot + 2.2, Role.INK, 1.2);
        CheckRuler.draw(pen, MARGIN * u, (height - RULER) * u + 14);
        return pen.drawing(paper.width(false), paper.height(false), title(card), description(card));
    }

    private static String title(Card card) {
        String number = card.head().blankNumber();
        return "Bench card: " + card.head().design() + (number.isEmpty() ? "" : ", no. " + number);
    }

    private static String description(Card card) {
        return String.format(java.util.Locale.ROOT, "Tie length %.1f mm, stop at %.1f mm. %s", card.numbers().tie(), card.numbers().wrapTop(), card.verdict());
    }
}

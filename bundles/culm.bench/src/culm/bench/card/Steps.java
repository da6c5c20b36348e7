package culm.bench.card;

import java.util.List;

import culm.blank.rules.Say;
import culm.figures.Anchor;
import culm.figures.Numbers;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;

/** The steps of a card, in the order of the work: a number, what to do, and the figure for it in large type. */
final class Steps {
    private static final double SIGN = 8;
    private static final double FIGURE = 40;
    /** Room between two steps, mm: as it looks best, and as tight as it may become so that all of them stay above the foot. */
    private static final double[] GAPS = {2.6, 2.0, 1.5, 1.0, 0.6};
    private final Card card;
    private final CardNumbers n;
    private final Mm mm;
    private final double x;
    private final double width;
    private final double gap;
    private double y;
    private int number;

    private Steps(Card card, Mm mm, double x, double y, double width, double gap) {
        this.card = card;
        this.n = card.numbers();
        this.mm = mm;
        this.x = x;
        this.y = y;
        this.width = width;
        this.gap = gap;
    }

    /** Draws them as far apart as they fit above a height; returns where they end below, mm. */
    static double draw(Card card, Mm mm, double x, double y, double width, double foot) {
        for (double gap : GAPS) {
            if (new Steps(card, mm.inside(new Pen()), x, y, width, gap).draw() <= foot + gap / 2 || gap == GAPS[GAPS.length - 1]) {
                return new Steps(card, mm, x, y, width, gap).draw();
            }
        }
        throw new IllegalStateException("no room between steps");
    }

    private double draw() {
        boolean several = card.forSeveral();
        String ends = card.head().ends();
        step("Soak the cane. Measure the staple, bottom to top. Seat it on the mandrel.", several ? "see list" : Numbers.fixed(n.stapleLength(), 1), several ? "" : "mm",
                several || card.measured() ? "" : "assumed: measure it first");
        step("Pencil mark on both blades, from the fold: cane above the staple.", several ? "see list" : Numbers.fixed(n.pencilMark(), 1), several ? "" : "mm",
                (several ? "" : "On a staple of " + Numbers.fixed(n.stapleLength(), 1) + ". ") + (ends.isEmpty() ? "Ends of the cane plain or thinned: note it." : "Ends of the cane " + ends + "."));
        step("Seat the cane to the mark. Line it up with the oval. Look from both sides.", "", "", "");
        tie();
        step("Start " + Numbers.fixed(n.startTurns(), 0) + " turns below the top of the wrap and wind up.", several ? Numbers.fixed(n.startTurns(), 0)
                : Numbers.fixed(n.start(), 1), several ? "turns" : "mm", several ? "" : "From the staple's bottom.");
        closes();
        moves();
        stop();
        boolean cork = n.corkTop().isPresent() && n.corkTop().equals(n.wrapBottom());
        step("Cross over, wind down to the " + (cork ? "cork" : "bottom of the wrap") + ", two knots.", n.wrapBottom().isPresent() ? Numbers.fixed(n.wrapBottom().getAsDouble(), 1) : "",
                n.wrapBottom().isPresent() ? "mm" : "",
                n.threadLength().isPresent() ? "Thread " + Numbers.fixed(n.threadLength().getAsDouble() / 10, 0) + " cm and tails." : "");
        step("Measure the tie again. Is it straight? Leak test, the fold still closed.", "", "", "");
        step("Clip the ears, look along the sides. Cut the tip to the finished length, leak test again.", n.finished().isPresent() ? Numbers.fixed(n.finished().getAsDouble(), 1) : "",
                n.finished().isPresent() ? "mm" : "", "");
        return y;
    }

    private void sign() {
        number++;
        mm.circle(x + 3, y + 3.6, 3, Style.fill(Role.PAPER).edged(Role.INK, 1));
        mm.bold(Integer.toString(number), x + 3, y + 5, Anchor.MIDDLE, Size.BODY, Role.INK);
    }

    private void step(String what, String figure, String unit, String beside) {
        sign();
        double room = width - SIGN - (figure.isEmpty() ? 0 : FIGURE);
        double end = mm.paragraph(what, x + SIGN, y + 4.9, room, Size.BODY, false, Role.INK);
        if (!beside.isEmpty()) {
            end = mm.paragraph(beside, x + SIGN, end + 4, room, Size.SMALL, false, Role.QUIET);
        }
        figure(figure, unit, Size.LARGE, y + 6.6);
        below(Math.max(end + 1.4, y + (figure.isEmpty() ? 6.6 : 7.6)));
    }

    private void figure(String figure, String unit, Size size, double baseline) {
        double units = unit.isEmpty() ? 0 : mm.width(unit, Size.BODY, false) + 1;
        mm.text(unit, x + width, baseline, Anchor.END, Size.BODY, Role.INK);
        mm.bold(figure, x + width - units, baseline, Anchor.END, figure.startsWith("see") ? Size.HEADING : size, Role.INK);
    }

    private void below(double end) {
        y = end + gap / 2;
        mm.line(x + SIGN, y, x + width, y, Role.RULE, 0.6);
        y += gap / 2;
    }

    private void tie() {
        sign();
        mm.bold("Tie length,", x + SIGN, y + 5.2, Anchor.START, Size.HEADING, Role.INK);
        mm.text("staple's bottom to fold.", x + SIGN + mm.width("Tie length, ", Size.HEADING, true), y + 5.2, Anchor.START, Size.BODY, Role.INK);
        mm.text(card.oneTie() ? "\u00b1 " + Numbers.fixed(n.tieTolerance(), 1) + " mm. Lay it on the strip, printed 1:1:" : "Different for each staple; see the list.", x + SIGN, y + 10,
                Anchor.START, Size.BODY, Role.INK);
        figure(card.oneTie() ? Numbers.fixed(n.tie(), 1) : "see list", card.oneTie() ? "mm" : "", Size.HUGE, y + 10.4);
        double end = y + 12.5;
        Strip strip = new Strip(n);
        if (card.oneTie() && strip.length() <= width - SIGN) {
            if (card.forSeveral()) {
                mm.text(mm.cut("its marks: staple " + card.example(), width - SIGN - strip.length() - 3, Size.SMALL, false), x + width, y + 21.6, Anchor.END, Size.SMALL, Role.QUIET);
            }
            end = strip.draw(mm, x + SIGN, y + 17);
        }
        below(end + 1);
    }

    private void closes() {
        sign();
        if (n.turnsLeft().isEmpty()) {
            double end = mm.paragraph("The sides never close on paper; see the report.", x + SIGN, y + 4.9, width - SIGN, Size.HEADING, true, Role.DOES_NOT);
            below(end + 2);
            return;
        }
        mm.bold("Sides close with", x + SIGN, y + 5.2, Anchor.START, Size.HEADING, Role.INK);
        mm.text("turns left to the stop. Wanted " + Say.plain(n.wanted()) + ", allowed " + Say.plain(n.fewest()) + " to " + Say.plain(n.most()) + ".", x + SIGN, y + 10, Anchor.START,
                Size.BODY, Role.INK);
        String take = n.giveOrTake().isPresent() ? "give or take " + Numbers.fixed(n.giveOrTake().getAsDouble(), 1) : "";
        mm.text(take + (card.forSeveral() ? "" : "; at " + Numbers.fixed(n.closes().getAsDouble(), 1) + " mm"), x + SIGN, y + 14, Anchor.START, Size.SMALL, Role.QUIET);
        boolean range = card.forSeveral();
        figure(range ? Numbers.fixed(card.fewestTurns(), 1) + "\u2013" + Numbers.fixed(card.mostTurns(), 1) : Numbers.fixed(n.turnsLeft().getAsDouble(), 1), "turns",
                range ? Size.LARGE : Size.HUGE, y + (range ? 5.6 : 10.4));
        mm.text("Note left and right.", x + width, y + 14.6, Anchor.END, Size.SMALL, Role.QUIET);
        below(y + 16);
    }

    private void moves() {
        List<Moves> moves = Moves.of(n);
        if (moves.isEmpty()) {
            return;
        }
        sign();
        mm.text("Both sides early or late: unwind, move the fold, tie again.", x + SIGN, y + 4.9, Anchor.START, Size.BODY, Role.INK);
        double top = y + 7;
        double names = 21;
        double each = (width - SIGN - names) / moves.size();
        mm.text("turns left", x + SIGN, top + 4.6, Anchor.START, Size.SMALL, Role.QUIET);
        mm.text("move", x + SIGN, top + 10.4, Anchor.START, Size.SMALL, Role.QUIET);
        for (int i = 0; i < moves.size(); i++) {
            Moves m = moves.get(i);
            double left = x + SIGN + names + i * each;
            mm.box(left, top, each, 12.6, m.allowed() ? Style.tint(Role.FITS, 0.12).edged(Role.INK, 0.8) : Style.line(Role.INK, 0.8));
            mm.text(m.seen() + (m.allowed() ? " \u2713" : ""), left + each / 2, top + 4.6, Anchor.MIDDLE, m.seen().length() > 2 ? Size.SMALL : Size.HEADING, Role.INK);
            mm.bold(m.text(), left + each / 2, top + 10.8, Anchor.MIDDLE, Size.HEADING, Role.INK);
        }
        double end = mm.paragraph("+ longer, \u2212 shorter: " + Numbers.fixed(Math.abs(n.perTurn().getAsDouble()), 1)
                + " mm for one turn. With \u2713 it may stay. On one side only: the cane is crooked; straighten it, do not change the tie.", x + SIGN, top + 16.6, width - SIGN, Size.SMALL, false, Role.INK);
        below(end + 1.2);
    }

    private void stop() {
        boolean several = card.forSeveral();
        mm.round(x, y, width, 12, 1.5, Style.fill(Role.INK));
        mm.bold("STOP", x + 3, y + 8.4, Anchor.START, Size.LARGE, Role.PAPER);
        boolean above = !several && n.wrapTop() > n.stapleLength();
        mm.text(above ? "The design's " + Numbers.fixed(n.wrapTop(), 1) + " is above the staple." : several ? "Top of the wrap: see list." : "Top of the wrap.", x + 27, y + 5, Anchor.START, Size.BODY, Role.PAPER);
        mm.bold("Never above the staple's top.", x + 27, y + 9.8, Anchor.START, Size.BODY, Role.PAPER);
        String figure = several ? Numbers.fixed(card.wrapBelow(), 1) : Numbers.fixed(Math.min(n.wrapTop(), n.stapleLength()), 1);
        String unit = several ? "mm below" : "mm";
        mm.text(unit, x + width - 2, y + 8.4, Anchor.END, Size.BODY, Role.PAPER);
        mm.bold(figure, x + width - 3 - mm.width(unit, Size.BODY, false), y + 8.6, Anchor.END, Size.LARGE, Role.PAPER);
        y += 12 + gap;
    }
}

package culm.bench.card;

import culm.figures.Anchor;
import culm.figures.Role;
import culm.figures.Size;

/** Cautions in general words; local rules and a teacher's supervision come first. */
final class Cautions {
    private static final String HEAD = "With care";
    private static final String FIRST = "Usual practice; a teacher's supervision and local rules come first.";
    private static final String[] LINES = {
        "Knife, razor blade: cut away from hands and from others; covered when put down.",
        "Mandrel: its point injures; never aim it at a palm.",
        "Cane dust: keep it out of the air, wipe it up wet.",
        "Brass: smooth sharp edges; wash hands before the reed goes into the mouth.",
        "Solvents, lacquer, glue: fresh air, no flame, fully dry before playing.",
        "A reed belongs to one mouth: fresh water, never a shared reed."};
    private static final double LINE = 3.6;
    private static final double APART = 0.9;

    private Cautions() {
    }

    /** Height they take in so many columns, mm. */
    static double height(Mm mm, double width, int columns) {
        return lay(mm, 0, 0, width, columns, false);
    }

    /** Draws them. */
    static void draw(Mm mm, double x, double y, double width, int columns) {
        lay(mm, x, y, width, columns, true);
    }

    private static double lay(Mm mm, double x, double y, double width, int columns, boolean draw) {
        double column = width / columns;
        double[] ends = new double[columns];
        java.util.Arrays.fill(ends, y + (columns == 1 ? 4.2 + LINE * mm.wrap(FIRST, width, Size.SMALL, false).size() : 4.2));
        if (draw) {
            mm.bold(HEAD, x, y + 3.8, Anchor.START, Size.BODY, Role.INK);
            double beside = columns == 1 ? 0 : mm.width(HEAD + "  ", Size.BODY, true);
            lines(mm, FIRST, x + beside, y + (columns == 1 ? 4.2 + LINE : 3.8), width);
        }
        for (int i = 0; i < LINES.length; i++) {
            int side = i % columns;
            if (draw) {
                mm.text("\u2022", x + side * column, ends[side] + LINE + APART, Anchor.START, Size.SMALL, Role.INK);
                lines(mm, LINES[i], x + side * column + 2.6, ends[side] + LINE + APART, column - 4);
            }
            ends[side] += LINE * mm.wrap(LINES[i], column - 4, Size.SMALL, false).size() + APART;
        }
        return java.util.Arrays.stream(ends).max().getAsDouble() - y;
    }

    private static void lines(Mm mm, String text, double x, double y, double width) {
        double at = y;
        for (String line : mm.wrap(text, width, Size.SMALL, false)) {
            mm.text(line, x, at, Anchor.START, Size.SMALL, Role.INK);
            at += LINE;
        }
    }
}

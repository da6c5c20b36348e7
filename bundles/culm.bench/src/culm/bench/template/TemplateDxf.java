package culm.bench.template;

import java.util.List;

import culm.geometry.section.Point;

/**
 * Both outlines as DXF R12: the flat one with its fold at x = 0 on layer FLAT, the folded one below it on layer FOLDED, the folds on layer FOLD, words on
 * layer TEXT.
 */
public final class TemplateDxf {
    private static final double APART = 10;

    private TemplateDxf() {
    }

    /** The whole file, plain ASCII. @param title the design's name */
    public static String write(Template template, String title) {
        double half = template.flat().stream().mapToDouble(Point::y).max().orElse(0);
        double halfFolded = template.folded().stream().mapToDouble(Point::y).max().orElse(0);
        double below = -half - APART - halfFolded;
        List<Point> folded = template.folded().stream().map(p -> new Point(p.x(), p.y() + below)).toList();
        double from = template.outline().from();
        return new Dxf().layer("FLAT", 7).layer("FOLDED", 5).layer("FOLD", 1).layer("TEXT", 3).polygon("FLAT", template.flat()).polygon("FOLDED", folded)
                .line("FOLD", 0, -half, 0, half).line("FOLD", from, below - halfFolded, from, below + halfFolded)
                .text("TEXT", 2, half + 2, 2, title + ", flat, widths along the bark, mm")
                .text("TEXT", 2, below - halfFolded - 4, 2, "folded, widths straight across, mm").file();
    }
}

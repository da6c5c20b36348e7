package culm.bench.card;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.label.Label;
import culm.figures.label.LabelRows;
import culm.figures.label.PlacedLabel;

/** The 1:1 strip: the blank is laid on it with the bottom of its staple at 0; the fold has to come to lie in the dark window. */
final class Strip {
    private static final double BAR = 7;
    private static final double ROW = 4.4;
    private final CardNumbers n;

    Strip(CardNumbers numbers) {
        this.n = numbers;
    }

    /** How long it is, mm. */
    double length() {
        return n.tie() + n.tieTolerance() + 2;
    }

    /** Draws it with the bottom of the staple at x and its upper edge at y, mm; returns where it ends below. */
    double draw(Mm mm, double x, double y) {
        double end = x + n.tie();
        mm.pen().group(Part.RULER, "strip, 1:1", p -> {
            Mm in = mm.inside(p);
            n.corkTop().ifPresent(cork -> in.box(x, y + 0.4, cork, BAR - 0.8, Style.tint(Role.CORK, 0.35)));
            in.box(x, y + 2, n.stapleLength(), BAR - 4, Style.tint(Role.BRASS, 0.6));
            in.box(x + n.caneEnd(), y + 1.4, n.tie() - n.caneEnd(), BAR - 2.8, Style.tint(Role.CANE, 0.8));
            in.box(x + n.stapleLength(), y + 2, 0.25, BAR - 4, Style.fill(Role.BRASS_EDGE));
            if (n.tieTolerance() > 0) {
                in.box(end - n.tieTolerance(), y, 2 * n.tieTolerance(), BAR, Style.fill(Role.INK));
            }
            in.box(x, y, length(), BAR, Style.line(Role.INK, 1));
            ticks(in, x, y + BAR);
            in.line(x, y - 0.6, x, y + BAR + 2, Role.INK, 1.6);
        });
        List<PlacedLabel> labels = new LabelRows(mm.measure(), Size.SMALL, (x - 6) * Drawing.UNITS_PER_MM, (x + length() + 22) * Drawing.UNITS_PER_MM).place(labels(x));
        double first = y + BAR + 4.4;
        mm.pen().group(Part.MARKS, "marks", p -> {
            Mm in = mm.inside(p);
            for (PlacedLabel l : labels) {
                double at = l.label().x() / Drawing.UNITS_PER_MM;
                double row = first + l.row() * ROW;
                p.shape(Path.line(at * Drawing.UNITS_PER_MM, y * Drawing.UNITS_PER_MM, at * Drawing.UNITS_PER_MM, (row + 0.6) * Drawing.UNITS_PER_MM),
                        Style.line(l.label().role(), Style.THIN));
                double from = (l.left() ? l.to() : l.from()) / Drawing.UNITS_PER_MM;
                if (l.label().bold()) {
                    in.bold(l.text(), from, row, l.left() ? Anchor.END : Anchor.START, Size.SMALL, l.label().role());
                } else {
                    in.text(l.text(), from, row, l.left() ? Anchor.END : Anchor.START, Size.SMALL, l.label().role());
                }
            }
        });
        return first + labels.stream().mapToInt(PlacedLabel::row).max().orElse(0) * ROW + 1;
    }

    private void ticks(Mm in, double x, double y) {
        PathBuilder fine = Path.start();
        double u = Drawing.UNITS_PER_MM;
        for (int i = 0; i <= (int) Math.floor(length()); i++) {
            fine.move((x + i) * u, y * u).line((x + i) * u, (y - (i % 10 == 0 ? 2.6 : i % 5 == 0 ? 1.9 : 1.1)) * u);
        }
        in.pen().shape(fine.path(), Style.line(Role.INK, 0.5));
        for (int i = 0; i <= (int) Math.floor(length()); i += 10) {
            in.text(Integer.toString(i), x + i, y - BAR - 1, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
        }
    }

    private List<Label> labels(double x) {
        List<Label> labels = new ArrayList<>();
        label(labels, "fold", "fold", n.tie(), x, true, Role.INK);
        label(labels, "wrapTop", "stop", n.wrapTop(), x, true, Role.DOES_NOT);
        n.closes().ifPresent(z -> label(labels, "sidesClose", "sides close", z, x, true, Role.FITS));
        label(labels, "stapleTop", "staple top", n.stapleLength(), x, false, Role.INK);
        n.finished().ifPresent(z -> label(labels, "finished", "finished", z, x, false, Role.INK));
        label(labels, "caneEnd", "end of the cane", n.caneEnd(), x, false, Role.INK);
        n.corkTop().ifPresent(z -> label(labels, "corkTop", "cork", z, x, false, Role.INK));
        return labels;
    }

    private static void label(List<Label> labels, String id, String words, double z, double x, boolean bold, Role role) {
        labels.add(new Label(id, (x + z) * Drawing.UNITS_PER_MM, words + " " + Numbers.fixed(z, 1), Numbers.fixed(z, 1), bold, role));
    }
}

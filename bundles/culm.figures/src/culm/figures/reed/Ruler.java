package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Mark;
import culm.figures.Anchor;
import culm.figures.Dash;
import culm.figures.Handle;
import culm.figures.Lengths;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.Ticks;
import culm.figures.label.LabelRows;
import culm.figures.label.PlacedLabel;

/**
 * The ruler with the marks. What can be moved has a round handle, what is computed a full diamond; handles that would lie on each other step up
 * along their leaders. Labels stand in rows below.
 */
final class Ruler {
    static final double ROW = 17;
    private static final double STEP_UP = 13;
    private static final double DIAMOND = 4.5;
    private static final double NUMBERS = 22;
    private static final double FIRST_ROW = 42;
    private static final double FINEST = 4.5;
    private static final double NUMBER_APART = 55;
    private final Reed reed;
    private final MarkLook look;
    private final Scale scale;
    private final TextMeasure measure;
    private final Lengths unit;
    private final List<PlacedLabel> labels;

    Ruler(Reed reed, MarkLook look, Scale scale, TextMeasure measure) {
        this.reed = reed;
        this.unit = look.unit();
        this.look = look;
        this.scale = scale;
        this.measure = measure;
        this.labels = new LabelRows(measure, Size.BODY, scale.left() - 2, scale.right() + 2).place(look.labels(scale));
    }

    /** Height below the ruler's line, drawing units. @param leastRows room is kept for so many rows of labels */
    double below(int leastRows) {
        int rows = labels.stream().mapToInt(l -> l.row() + 1).max().orElse(0);
        return FIRST_ROW + ROW * (Math.max(leastRows, rows) - 1) + measure.descent(Size.BODY) + 2;
    }

    List<PlacedLabel> labels() {
        return labels;
    }

    void draw(Pen pen, double y) {
        pen.group(Part.RULER, "ruler, " + unit.sign(), p -> {
            p.line(scale.left(), y, scale.right(), y, Role.INK, 1.2);
            ticks(p, y);
        });
        pen.group(Part.MARKS, "marks", p -> labels.forEach(l -> {
            double row = y + FIRST_ROW + l.row() * ROW;
            p.shape(Path.line(l.label().x(), y, l.label().x(), row + 2), Style.line(leader(l), Style.THIN).broken(Dash.DASHED));
            double x = l.left() ? l.to() : l.from();
            p.add(new culm.figures.Text(l.text(), x, row, l.left() ? Anchor.END : Anchor.START, Size.BODY, l.label().bold(), l.label().role(), 0));
        }));
    }

    static Role leader(PlacedLabel l) {
        return l.label().role() == Role.INK ? Role.QUIET : l.label().role();
    }

    private void ticks(Pen p, double y) {
        Ticks fine = unit.ticks(scale.from(), scale.to(), (scale.right() - scale.left()) / FINEST);
        Ticks numbered = unit.ticks(scale.from(), scale.to(), (scale.right() - scale.left()) / NUMBER_APART);
        PathBuilder lines = Path.start();
        for (double z : fine.values()) {
            double longer = multiple(z, numbered.step()) ? 9 : multiple(z, numbered.step() / 2) && numbered.step() / 2 > fine.step() ? 7 : 4;
            double x = scale.x(unit.toMm(z));
            lines.move(x, y).line(x, y + longer);
        }
        p.shape(lines.path(), Style.line(Role.INK, Style.THIN));
        for (double z : numbered.values()) {
            String number = numbered.label(z);
            double half = measure.width(number, Size.SMALL, false) / 2 + 3;
            double x = scale.x(unit.toMm(z));
            if (labels.stream().noneMatch(l -> Math.abs(l.label().x() - x) < half)) {
                p.text(number, x, y + NUMBERS, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
                if (z == numbered.values().get(0)) {
                    p.text(unit.sign(), x + half, y + NUMBERS, Anchor.START, Size.SMALL, Role.QUIET);
                }
            }
        }
    }

    private static boolean multiple(double z, double step) {
        double k = z / step;
        return Math.abs(k - Math.rint(k)) < 1e-6;
    }

    /** Handles and diamonds on the line; painted last, so that they lie on top. */
    void handles(Pen pen, double y) {
        List<Mark> shown = look.shown(scale);
        List<double[]> taken = new ArrayList<>();
        pen.group(Part.HANDLES, "", p -> {
            for (Mark mark : shown) {
                if (!MarkLook.movable(mark)) {
                    double x = scale.x(reed.mark(mark).getAsDouble());
                    taken.add(new double[] {x, 0});
                    p.shape(Path.start().move(x, y - DIAMOND).line(x + DIAMOND, y).line(x, y + DIAMOND).line(x - DIAMOND, y).close().path(),
                            Style.fill(look.role(mark)).edged(Role.PAPER, Style.THIN));
                }
            }
            for (Mark mark : shown.stream().filter(MarkLook::movable).toList()) {
                double x = scale.x(reed.mark(mark).getAsDouble());
                int level = 0;
                while (blocked(taken, x, level)) {
                    level++;
                }
                taken.add(new double[] {x, level});
                p.add(new Handle(mark.id(), mark.label(), x, y - level * STEP_UP, look.role(mark)));
            }
        });
    }

    private static boolean blocked(List<double[]> taken, double x, int level) {
        return taken.stream().anyMatch(t -> t[1] == level && Math.abs(t[0] - x) < 2 * Handle.RADIUS + 1.5);
    }
}

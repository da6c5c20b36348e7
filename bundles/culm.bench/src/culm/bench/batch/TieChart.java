package culm.bench.batch;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Lines;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.Ticks;

/**
 * A split batch: the tie lengths that each staple allows as a line, the setting that serves it as a dot on it, and the settings as upright lines
 * with their tie lengths. Of a large batch only every few staples are drawn, and the drawing says so.
 */
public final class TieChart {
    private static final double TOP = 58;
    private static final double ROW = 17;
    private static final double THIN_ROW = 4;
    private static final int NAMED = 80;
    private static final int DRAWN = 240;
    private static final double LEFT = 14;

    private TieChart() {
    }

    /** Draws it. @param width drawing units, at least 260; @param unit in what lengths are written */
    public static Drawing draw(BatchPlan plan, double width, TextMeasure measure, Lengths unit) {
        double w = Math.max(260, width);
        int each = (int) Math.ceil(plan.served() / (double) DRAWN);
        boolean named = plan.served() <= NAMED;
        List<List<Served>> rows = new ArrayList<>();
        for (Setting setting : plan.settings()) {
            List<Served> some = new ArrayList<>();
            for (int i = 0; i < setting.staples().size(); i += Math.max(1, each)) {
                some.add(setting.staples().get(i));
            }
            rows.add(some);
        }
        double names = !named ? 0 : rows.stream().flatMap(List::stream).mapToDouble(s -> measure.width(s.staple().label(), Size.SMALL, false)).max().orElse(0);
        names = Math.min(names, 0.25 * w);
        double turns = named ? measure.width("−0.0 left", Size.SMALL, false) : 0;
        Axis x = axis(plan, LEFT + names + 8, w - turns - 16);
        double row = named ? ROW : THIN_ROW;
        String caption = each > 1 ? "Tie lengths allowed, " + unit.sign() + "; 1 of " + each + " staples is drawn" : "Tie lengths that each staple allows, " + unit.sign();
        List<String> lines = Lines.of(caption, measure, Size.BODY, false, w - LEFT);
        double line = measure.line(Size.BODY);
        double top = TOP + line * (lines.size() - 1);
        double bottom = top + row * rows.stream().mapToInt(List::size).sum() + 6 * rows.size();
        Pen pen = new Pen();
        for (int i = 0; i < lines.size(); i++) {
            pen.text(lines.get(i), LEFT, 16 + i * line, Anchor.START, Size.BODY, Role.INK);
        }
        Ticks ticks = unit.ticks(x.from(), x.to(), (x.end() - x.start()) / 46);
        pen.group(Part.AXIS, "tie length", p -> ticks.values().forEach(t -> {
            double at = x.at(unit.toMm(t));
            p.line(at, top - 4, at, bottom, Role.GRID, Style.THIN);
            p.text(ticks.label(t), at, top - 9, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
        }));
        pen.group(Part.SERIES, "staples", p -> {
            double y = top + 4;
            for (int i = 0; i < rows.size(); i++) {
                double tie = plan.settings().get(i).tie();
                double end = y + row * rows.get(i).size();
                p.shape(Path.line(x.at(tie), y - 2, x.at(tie), end), Style.line(Role.INK, 1).broken(Dash.DASHED));
                for (Served served : rows.get(i)) {
                    staple(p, served, x, y + row / 2, named, w);
                    y += row;
                }
                y = end + 6;
            }
        });
        pen.group(Part.MARKS, "settings", p -> settings(p, plan, x, top, measure, unit));
        return pen.drawing(w, bottom + 8, "Settings of " + plan.batch().name(), words(plan, unit));
    }

    private static void staple(Pen p, Served served, Axis x, double y, boolean named, double w) {
        for (TieRange range : served.ties().ranges()) {
            p.line(x.at(Math.max(range.low(), x.from())), y, x.at(Math.min(range.high(), x.to())), y, Role.CANE_EDGE, named ? 3 : 1.6);
        }
        p.shape(Path.circle(x.at(served.tie()), y, named ? 4 : 1.6), Style.fill(Role.THREAD));
        if (named) {
            p.text(served.staple().label(), LEFT, y + 4, Anchor.START, Size.SMALL, Role.INK);
            p.text(Numbers.fixed(served.turnsLeft(), 1) + " left", w - 8, y + 4, Anchor.END, Size.SMALL, Role.QUIET);
        }
    }

    /** The tie lengths above the axis; where two would overlap the later one moves aside. */
    private static void settings(Pen p, BatchPlan plan, Axis x, double top, TextMeasure measure, Lengths unit) {
        double free = Double.NEGATIVE_INFINITY;
        for (Setting setting : plan.settings()) {
            String words = "tie at " + unit.fixed(setting.tie(), 1);
            double half = measure.width(words, Size.BODY, true) / 2;
            double at = Math.max(Math.max(x.at(setting.tie()), free + half), LEFT + half);
            p.bold(words, at, top - 24, Anchor.MIDDLE, Size.BODY, Role.THREAD);
            free = at + half + 8;
        }
    }

    private static Axis axis(BatchPlan plan, double start, double end) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Setting setting : plan.settings()) {
            for (Served served : setting.staples()) {
                for (TieRange range : served.ties().ranges()) {
                    low = Math.min(low, range.low());
                    high = Math.max(high, range.high());
                }
            }
        }
        return low > high ? new Axis(70, 75, start, Math.max(start + 20, end)) : new Axis(low - 0.3, high + 0.3, start, Math.max(start + 20, end));
    }

    private static String words(BatchPlan plan, Lengths unit) {
        List<String> words = new ArrayList<>();
        plan.settings().forEach(s -> words.add(s.staples().size() + " staples tied at " + unit.text(s.tie(), 1)));
        return String.join("; ", words) + (plan.aside().isEmpty() ? "." : "; " + plan.aside().size() + " set aside.");
    }
}

package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import culm.blank.Inputs;
import culm.figures.Anchor;
import culm.figures.Box;
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
import culm.geometry.GeometryException;

/**
 * A section across the reed at one height: bore, brass, both blades with their true thickness and edges laid around the section, gaps or pinch at both
 * seams, layers of thread; above the staple a sketch. One scale for all sections with cane on the staple, always with a bar.
 */
public final class CrossSection {
    private static final double TITLE = 24;
    private static final double FOOT = 58;
    private static final double MARGIN = 8;
    private final Reed reed;
    private final double z;
    private final TextMeasure measure;
    private final double width;
    private final double height;
    private final Lengths unit;

    private CrossSection(Reed reed, double z, double width, double height, TextMeasure measure, Lengths unit) {
        this.reed = reed;
        this.z = z;
        this.width = width;
        this.height = height;
        this.measure = measure;
        this.unit = unit;
    }

    /** The section with its lengths in mm; see {@link #draw(Reed, double, double, double, TextMeasure, Lengths)}. */
    public static Drawing draw(Reed reed, double z, double width, double height, TextMeasure measure) {
        return draw(reed, z, width, height, measure, Lengths.MM);
    }

    /**
     * Draws the section at a height in a box.
     *
     * @param z      the height, mm
     * @param width  at least 60, drawing units
     * @param height at least 140, drawing units
     * @param unit   in what lengths are written
     */
    public static Drawing draw(Reed reed, double z, double width, double height, TextMeasure measure, Lengths unit) {
        return new CrossSection(reed, Math.max(0, Math.min(reed.top(), z)), Math.max(60, width), Math.max(140, height), measure, unit).run();
    }

    private Drawing run() {
        Pen pen = new Pen();
        String title = "Section at " + unit.text(z, 1);
        List<String> says = new ArrayList<>();
        boolean drawn = false;
        if (reed.drawable()) {
            try {
                SectionShapes shapes = SectionShapes.at(reed, z);
                double perMm = perMm(shapes);
                paint(pen, shapes, perMm);
                bar(pen, perMm);
                drawn = true;
                says.addAll(says(shapes));
            } catch (GeometryException e) {
                says.add(unit.told(e.told()));
            }
        } else {
            says.add(reed.problem().map(unit::told).orElse(""));
        }
        pen.text(title, width / 2, 14, Anchor.MIDDLE, Size.BODY, Role.QUIET);
        List<String> lines = says.stream().flatMap(text -> Lines.of(text, measure, Size.SMALL, false, width - 2 * MARGIN).stream()).toList();
        double step = Lines.height(measure, Size.SMALL);
        double line = first(lines.size() * step, drawn);
        for (String text : lines) {
            pen.text(text, width / 2, line, Anchor.MIDDLE, Size.SMALL, Role.INK);
            line += step;
        }
        return pen.drawing(width, Math.max(height, line - step + measure.descent(Size.SMALL)), title, String.join(" ", says));
    }

    /** Where words of some height begin: in the foot, further up where they need it, and at the top where nothing is drawn. */
    private double first(double high, boolean drawn) {
        return drawn ? Math.min(height - FOOT + 30, height - high + measure.ascent(Size.SMALL)) : TITLE + 24;
    }

    /** Drawing units to a mm at which all sections with cane on the staple fit the box; a larger section (cork, sketch) shrinks to fit. */
    private double perMm(SectionShapes shapes) {
        double from = Math.max(0, Math.min(reed.caneEnd(), reed.stapleTop()));
        double perMm = fitting(shapes);
        for (double at : new double[] {from, Math.min(reed.wrapTop(), reed.stapleTop()), reed.stapleTop()}) {
            if (reed.caneOnStaple(at)) {
                double around = reed.middle(at) + 2 * reed.thread();
                perMm = Math.min(perMm, fitting(reed.outside(at).halfWide() + around, reed.outside(at).halfNarrow() + around));
            }
        }
        return perMm;
    }

    private double fitting(SectionShapes shapes) {
        double wide = 0.1;
        double high = 0.1;
        for (double[] p : shapes.everything()) {
            wide = Math.max(wide, Math.abs(p[0]));
            high = Math.max(high, Math.abs(p[1]));
        }
        return fitting(wide, high);
    }

    private double fitting(double wide, double high) {
        return Math.min((width / 2 - MARGIN) / wide, (height - TITLE - FOOT) / 2 / high);
    }

    private void paint(Pen pen, SectionShapes s, double perMm) {
        double cy = TITLE + (height - TITLE - FOOT) / 2;
        pen.group(Part.THREAD, "thread", p -> {
            for (List<double[]> layer : s.thread()) {
                p.shape(closed(layer, perMm, cy), Style.fill(Role.THREAD).edged(Role.THREAD_EDGE, Style.THIN));
            }
            p.shape(closed(s.under(), perMm, cy), Style.fill(Role.PAPER).edged(Role.THREAD_EDGE, Style.THIN));
        });
        pen.group(Part.CORK, "cork", p -> p.shape(closed(s.cork(), perMm, cy), Style.fill(Role.CORK).edged(Role.CORK_EDGE, Style.THIN)));
        pen.group(Part.CANE, "cane", p -> {
            Style cane = Style.fill(Role.CANE).edged(Role.CANE_EDGE, 1);
            p.shape(closed(s.upper(), perMm, cy), cane);
            p.shape(closed(s.lower(), perMm, cy), cane);
            p.shape(open(s.bark(), perMm, cy), Style.line(Role.BARK, 1.8));
            p.shape(open(s.barkLow(), perMm, cy), Style.line(Role.BARK, 1.8));
        });
        pen.group(Part.STAPLE, "staple", p -> p.shape(closed(s.staple(), perMm, cy), Style.fill(Role.BRASS).edged(Role.BRASS_EDGE, Style.THIN)));
        pen.group(Part.BORE, "bore", p -> p.shape(closed(s.bore(), perMm, cy), Style.fill(Role.PAPER).edged(Role.BRASS_EDGE, Style.THIN)));
    }

    private Path closed(List<double[]> points, double perMm, double cy) {
        return points.isEmpty() ? Path.start().path() : Path.polygon(placed(points, perMm, cy));
    }

    private Path open(List<double[]> points, double perMm, double cy) {
        return points.isEmpty() ? Path.start().path() : Path.through(placed(points, perMm, cy));
    }

    private List<double[]> placed(List<double[]> points, double perMm, double cy) {
        return points.stream().map(p -> new double[] {width / 2 + p[0] * perMm, cy - p[1] * perMm}).toList();
    }

    private List<String> says(SectionShapes shapes) {
        if (shapes.sketch()) {
            return List.of(z > reed.fold() ? "Above the fold." : shapes.upper().isEmpty() ? "Above the staple, not measured here." : "Above the staple: a sketch.");
        }
        OptionalDouble open = reed.open(z);
        if (open.isEmpty()) {
            return reed.caneOnStaple(z) ? List.of("The widths were not measured here.") : List.of("No cane at this height.");
        }
        double crooked = reed.number(Inputs.CROOKED);
        double gap = open.getAsDouble();
        if (crooked == 0) {
            return List.of("Sides " + gap(gap) + ".");
        }
        return List.of("Left " + gap(gap + crooked) + ", right " + gap(gap - crooked) + ".");
    }

    private String gap(double open) {
        String size = unit.text(Math.abs(open), 2);
        return size.equals(unit.text(0, 2)) ? "just closed" : (open > 0 ? "open by " : "pinched by ") + size;
    }

    private void bar(Pen pen, double perMm) {
        double shown = Ticks.niceStep(unit.of(24 / perMm));
        double y = height - FOOT + 12;
        double half = unit.toMm(shown) * perMm / 2;
        Box box = new Box(width / 2 - half, y - 3, 2 * half, 3);
        pen.line(box.x(), y, box.right(), y, Role.INK, 1.4);
        pen.line(box.x(), box.y(), box.x(), y, Role.INK, 1.4);
        pen.line(box.right(), box.y(), box.right(), y, Role.INK, 1.4);
        pen.text(Numbers.plain(shown) + " " + unit.sign(), box.right() + 6, y + 3, Anchor.START, Size.SMALL, Role.QUIET);
    }
}

package culm.figures.reed;

import java.util.Optional;

import culm.blank.Limits;
import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Lines;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.label.PlacedLabel;

/** The reed from the bottom of the staple to the fold, on one axis: wide side, cut, ruler with marks, how far the sides are open. */
public final class ReedView {
    private static final double CAPTION = 26;
    private static final double GAP = 14;
    private static final double ABOVE_RULER = 34;
    private final Reed reed;
    private final Scale scale;
    private final TextMeasure measure;
    private final ReedOptions options;
    private final MarkLook look;
    private final Outlines outlines;

    private ReedView(Reed reed, Limits limits, Scale scale, TextMeasure measure, ReedOptions options) {
        this.reed = reed;
        this.scale = scale;
        this.measure = measure;
        this.options = options;
        this.look = new MarkLook(reed, limits, options.unit());
        this.outlines = reed.outlines();
    }

    /**
     * A scale on which the whole reed fills a width.
     * @param width drawing units, at least some ten letters
     */
    public static Scale fitting(Reed reed, double width) {
        double margin = 12;
        return new Scale(0, reed.top(), margin, Math.max(margin + 1, width - margin));
    }

    /** Draws the reed on a scale; the drawing is as wide as the scale and its margin at the left, again at the right. */
    public static ReedDrawing draw(Reed reed, Limits limits, Scale scale, TextMeasure measure, ReedOptions options) {
        return new ReedView(reed, limits, scale, measure, options).run();
    }

    private ReedDrawing run() {
        double left = scale.left();
        double width = scale.right() - left;
        WideSide wideSide = new WideSide(reed, outlines);
        CutView cutView = new CutView(reed, outlines);
        Ruler ruler = new Ruler(reed, look, scale, measure);
        double perMm = scale.perMm() * options.across();
        Box wide = new Box(left, CAPTION + 6, width, Math.min(options.laneMost(), 2 * wideSide.half() * perMm));
        Box cut = new Box(left, wide.bottom() + GAP + CAPTION, width, Math.min(options.laneMost(), 2 * cutView.half() * perMm));
        double line = cut.bottom() + ABOVE_RULER;
        Box rule = new Box(left, line - ABOVE_RULER / 2, width, ABOVE_RULER / 2 + ruler.below(options.leastRows()));
        Box graph = new Box(left, rule.bottom() + GAP + CAPTION, width, options.graphHeight());
        SeamGraph seam = new SeamGraph(reed, look, scale, measure, graph);

        Pen pen = new Pen();
        if (reed.drawable()) {
            lane(pen, wide, p -> wideSide.draw(p, new Lane(scale, wide.y() + wideSide.half() * perMm, options.across())));
            lane(pen, cut, p -> cutView.draw(p, new Lane(scale, cut.y() + cutView.half() * perMm, options.across())));
            caption(pen, wide, scaleNote(), "Wide side" + part(wide, wideSide.half() * perMm), "Wide side");
            caption(pen, cut, "", "Narrow side, cut through the middle" + part(cut, cutView.half() * perMm), "Cut");
            sketchNote(pen, cut);
            leaders(pen, ruler, wide, cut, line);
        } else {
            problem(pen, wide);
        }
        caption(pen, graph, "", "How far the sides are open, " + options.unit().sign() + "; below zero they are pinched", "Sides open by, " + options.unit().sign());
        ruler.draw(pen, line);
        if (options.handles()) {
            ruler.handles(pen, line);
        }
        seam.draw(pen);
        return new ReedDrawing(pen.drawing(scale.right() + left, graph.bottom() + 10, "The reed along its axis", describe()), scale, wide, cut, rule, graph, seam.axis(), options.unit());
    }

    private static String part(Box box, double half) {
        return box.height() < 2 * half - 1e-6 ? ", upper part" : "";
    }

    private void lane(Pen pen, Box box, java.util.function.Consumer<Pen> draw) {
        pen.group(Part.PAGE, "", Optional.of(new Box(box.x() - 8, box.y() - 4, box.width() + 16, box.height() + 8)), draw);
    }

    private void caption(Pen pen, Box below, String note, String full, String brief) {
        double base = below.y() - 12;
        String text = measure.width(full, Size.BODY, false) <= below.width() ? full : brief;
        pen.text(text, below.x(), base, Anchor.START, Size.BODY, Role.QUIET);
        double room = below.width() - measure.width(text, Size.BODY, false) - 12;
        if (!note.isEmpty() && measure.width(note, Size.SMALL, false) <= room) {
            pen.text(note, below.right(), base, Anchor.END, Size.SMALL, Role.QUIET);
        }
    }

    private String scaleNote() {
        String along = "drawn " + Numbers.fixed(scale.enlargement(), 1) + " : 1";
        return options.across() == 1 ? along : along + ", across enlarged " + Numbers.fixed(options.across(), 1) + " times more";
    }

    private void sketchNote(Pen pen, Box cut) {
        double from = Math.max(scale.left(), scale.x(Math.max(reed.stapleTop(), reed.wrapTop())));
        double to = Math.min(scale.right(), scale.x(reed.fold()));
        String text = "sketch above the staple";
        if (to - from < measure.width(text, Size.SMALL, false) + 12) {
            text = "sketch";
        }
        if (to - from > measure.width(text, Size.SMALL, false) + 12) {
            pen.text(text, from + 8, cut.y() + 8, Anchor.START, Size.SMALL, Role.QUIET);
        }
    }

    private void problem(Pen pen, Box wide) {
        double line = wide.y() + 20;
        for (String text : Lines.of(reed.problem().map(options.unit()::told).orElse(""), measure, Size.BODY, false, wide.width())) {
            pen.text(text, wide.x(), line, Anchor.START, Size.BODY, Role.DOES_NOT);
            line += Lines.height(measure, Size.BODY);
        }
    }

    /** Leaders run through the drawings and pause where a caption stands. */
    private void leaders(Pen pen, Ruler ruler, Box wide, Box cut, double line) {
        pen.group(Part.MARKS, "", p -> {
            for (PlacedLabel label : ruler.labels()) {
                double x = label.label().x();
                Style style = Style.line(Ruler.leader(label), Style.THIN).broken(Dash.DASHED);
                p.shape(Path.line(x, wide.y() - 4, x, wide.bottom() + 6), style);
                p.shape(Path.line(x, cut.y() - 6, x, line), style);
            }
        });
    }

    private String describe() {
        return "Drawn on one axis from the bottom of the staple to the fold at " + options.unit().given(reed.fold(), 1) + " " + options.unit().sign() + ".";
    }
}

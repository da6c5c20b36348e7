package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.parts.BoreArea;
import culm.figures.parts.Dimensions;
import culm.geometry.GeometryException;
import culm.geometry.section.Section;
import culm.geometry.staple.Staple;

/**
 * A staple alone: its wide side and the cut through its narrow one, both true to scale, with its lengths from the bottom and what it measures at both ends;
 * below them, where there is room, the area of its bore on the same axis.
 */
public final class StapleDrawing {
    private static final double TOP = 24;
    private static final double CAPTION = 22;
    private static final double ROW = 18;
    private static final double MARGIN = 24;
    private static final double LEAST_CHART = 160;
    private static final double MOST_CHART = 220;
    private static final double STEP = 0.25;
    /** So much of the width is given up for the sides to leave room for the chart, step by step down to the least part of it. */
    private static final double NARROWER = 0.97;
    private static final double LEAST_WIDE = 0.5;
    private final Staple staple;
    private final OptionalDouble cork;
    private final Lengths unit;
    private final TextMeasure measure;

    private StapleDrawing(Staple staple, OptionalDouble cork, TextMeasure measure, Lengths unit) {
        this.staple = staple;
        this.cork = cork;
        this.measure = measure;
        this.unit = unit;
    }

    /**
     * Draws it; where there is no such staple, says why. Where the bore's area would find no room below the sides, all is drawn narrower, down to half
     * of the width; where that does not help, the area is left out.
     *
     * @param blank  has the staple
     * @param width  the most it takes, at least 160, drawing units
     * @param height what there is room for, drawing units; the sides take more when they need it
     * @param unit   in what lengths are written
     */
    public static Drawing draw(Blank blank, double width, double height, TextMeasure measure, Lengths unit) {
        double w = Math.max(160, width);
        try {
            Staple staple = blank.parts().staple();
            staple.boreVolume();
            double top = blank.number(Inputs.CORK_TOP);
            OptionalDouble cork = top > 0 ? OptionalDouble.of(Math.min(top, staple.length())) : OptionalDouble.empty();
            return new StapleDrawing(staple, cork, measure, unit).run(blank, w, height);
        } catch (GeometryException e) {
            return BoreArea.draw(blank, w, Math.max(LEAST_CHART, height), measure, unit).drawing();
        }
    }

    private Drawing run(Blank blank, double width, double height) {
        for (double w = width; w >= Math.max(160, LEAST_WIDE * width); w *= NARROWER) {
            // The chart says where the heights lie, and what the sides leave decides how high it is.
            double left = height - above(scale(BoreArea.draw(blank, w, LEAST_CHART, measure, unit)).perMm());
            if (left >= LEAST_CHART) {
                return run(w, Optional.of(BoreArea.draw(blank, w, Math.min(MOST_CHART, left), measure, unit)));
            }
        }
        return run(width, Optional.empty());
    }

    private Drawing run(double width, Optional<ChartDrawing> chart) {
        Scale scale = chart.map(this::scale).orElse(new Scale(0, staple.length(), MARGIN, width - MARGIN));
        double perMm = scale.perMm();
        Pen pen = new Pen();
        double wide = TOP + half(Section::halfWide) * perMm;
        double cut = wide + half(Section::halfWide) * perMm + ROW + CAPTION + half(Section::halfNarrow) * perMm;
        double ends = cut + half(Section::halfNarrow) * perMm + ROW - 4;
        caption(pen, "Wide side, " + unit.sign(), 16);
        pen.text("drawn " + Numbers.fixed(scale.enlargement(), 1) + " : 1", width - 12, 16, Anchor.END, Size.SMALL, Role.QUIET);
        wide(pen, new Lane(scale, wide, 1));
        ends(pen, scale, Section::halfWide, wide + half(Section::halfWide) * perMm + ROW - 4);
        caption(pen, "Narrow side, cut through the middle, " + unit.sign(), cut - half(Section::halfNarrow) * perMm - 8);
        cut(pen, new Lane(scale, cut, 1));
        ends(pen, scale, Section::halfNarrow, ends);
        double y = ends + ROW;
        Dimensions lines = new Dimensions(measure);
        pen.group(Part.DIMENSIONS, "dimensions", p -> {
            cork.ifPresent(z -> lines.across(p, scale.x(0), scale.x(z), y, "cork top " + unit.given(z, 1)));
            lines.across(p, scale.x(0), scale.x(staple.length()), y + (cork.isPresent() ? ROW : 0), "staple length " + unit.given(staple.length(), 1));
        });
        chart.ifPresent(c -> pen.add(c.drawing().at(0, above(perMm))));
        return pen.drawing(width, above(perMm) + chart.map(c -> c.drawing().height()).orElse(0.0), "Staple", "A staple of " + unit.given(staple.length(), 1) + " " + unit.sign()
                + ", drawn true to scale" + (chart.isPresent() ? ", and its bore area over the height from its bottom." : "."));
    }

    private double above(double perMm) {
        return TOP + 2 * (half(Section::halfWide) + half(Section::halfNarrow)) * perMm + CAPTION + 2 * ROW + (cork.isPresent() ? 2 : 1) * ROW + 10;
    }

    private Scale scale(ChartDrawing chart) {
        return new Scale(0, staple.length(), chart.x().at(0), chart.x().at(unit.of(staple.length())));
    }

    private static void caption(Pen pen, String words, double y) {
        pen.text(words, 12, y, Anchor.START, Size.BODY, Role.INK);
    }

    /** One half-axis of a section. */
    private interface HalfAxis {
        double of(Section section);
    }

    private double half(HalfAxis axis) {
        return points(0, staple.length(), z -> axis.of(staple.outside(z))).stream().mapToDouble(p -> p[1]).max().orElse(0) + (cork.isPresent() ? WideSide.CORK : 0);
    }

    private void wide(Pen pen, Lane lane) {
        List<double[]> outside = points(0, staple.length(), z -> staple.outside(z).halfWide());
        pen.group(Part.STAPLE, "staple", p -> p.shape(lane.both(outside), Style.fill(Role.BRASS).edged(Role.BRASS_EDGE, 1)));
        cork(pen, lane, Section::halfWide, true);
    }

    private void cut(Pen pen, Lane lane) {
        cork(pen, lane, Section::halfNarrow, false);
        List<double[]> outside = points(0, staple.length(), z -> staple.outside(z).halfNarrow());
        List<double[]> bore = points(0, staple.length(), z -> staple.bore(z).halfNarrow());
        Style brass = Style.fill(Role.BRASS).edged(Role.BRASS_EDGE, Style.THIN);
        pen.group(Part.STAPLE, "staple", p -> {
            p.shape(lane.between(outside, bore), brass);
            p.shape(lane.between(Lane.mirrored(outside), Lane.mirrored(bore)), brass);
        });
    }

    /** The cork's thickness is not measured: it is only drawn, on the wide side so that the staple is seen through it. */
    private void cork(Pen pen, Lane lane, HalfAxis axis, boolean through) {
        cork.ifPresent(top -> pen.group(Part.CORK, "cork", p -> {
            double outer = Math.max(axis.of(staple.outside(0)), axis.of(staple.outside(top))) + WideSide.CORK;
            List<double[]> edge = points(0, top, z -> outer);
            List<double[]> inner = points(0, top, z -> axis.of(staple.outside(z)));
            Style style = Style.fill(Role.CORK).edged(Role.CORK_EDGE, Style.THIN);
            p.shape(lane.between(edge, inner), style);
            p.shape(lane.between(Lane.mirrored(edge), Lane.mirrored(inner)), style);
            if (through) {
                p.shape(lane.both(inner), Style.tint(Role.CORK, 0.35));
            }
        }));
    }

    /** What it measures at the bottom and at the top; only outside where there is no room for more. */
    private void ends(Pen pen, Scale scale, HalfAxis axis, double y) {
        String[] words = new String[4];
        for (int i = 0; i < 2; i++) {
            double z = i * staple.length();
            words[i] = unit.fixed(2 * axis.of(staple.outside(z)), 2) + " outside";
            words[i + 2] = words[i] + ", " + unit.fixed(2 * axis.of(staple.bore(z)), 2) + " inside";
        }
        boolean all = measure.width(words[2], Size.SMALL, false) + measure.width(words[3], Size.SMALL, false) + 12 < scale.right() - scale.left();
        pen.group(Part.MARKS, "ends", p -> {
            p.text(words[all ? 2 : 0], scale.left(), y, Anchor.START, Size.SMALL, Role.INK);
            p.text(words[all ? 3 : 1], scale.right(), y, Anchor.END, Size.SMALL, Role.INK);
        });
    }

    private static List<double[]> points(double from, double to, DoubleUnaryOperator f) {
        List<double[]> points = new ArrayList<>();
        int n = (int) Math.max(1, Math.ceil((to - from) / STEP));
        for (int i = 0; i <= n; i++) {
            double z = from + (to - from) * i / n;
            points.add(new double[] {z, f.applyAsDouble(z)});
        }
        return points;
    }
}

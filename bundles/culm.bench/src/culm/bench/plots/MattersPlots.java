package culm.bench.plots;

import java.util.List;
import java.util.function.ToDoubleFunction;

import culm.explore.Effect;
import culm.explore.Sensitivities;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.BarChart;
import culm.figures.chart.ChartDrawing;
import culm.geometry.profile.Quantity;
import culm.geometry.words.LengthText;

/** What moves turns left, as ranked bars; brass for what was measured, thread for what was assumed. */
public final class MattersPlots {
    /** Most bars. */
    public static final int BARS = 18;

    private static final double LEAST = 0.005;
    private static final double HUNDREDTH = 0.01;
    private static final double NAMELESS = 0.32;
    /** The caption and the numbers at both sides need as much. */
    private static final double NAMELESS_LEAST = 215;

    private MattersPlots() {
    }

    /** The effects that are drawn, the largest first: those of at least half a hundredth of a turn. */
    public static List<Effect> drawn(Sensitivities s) {
        return s.effects().stream().filter(e -> Math.abs(e.perTolerance()) >= LEAST).limit(BARS).toList();
    }

    /** Turns for each input's own give or take, without sign. */
    public static ChartDrawing perTolerance(Sensitivities s, double width, TextMeasure measure) {
        return bars("Turns for each input's own give or take", s, e -> Math.abs(e.perTolerance()), 2).draw(width, measure);
    }

    /** Turns for 0.01 mm (or one percent) more, with sign, in the same order. */
    public static ChartDrawing perHundredth(Sensitivities s, double width, TextMeasure measure) {
        return steps(s, Lengths.MM).draw(width, measure);
    }

    /** Both beside each other; the names stand once. @param unit of one hundredth or one of which the right one tells, see {@link #step} */
    public static Drawing both(Sensitivities s, double width, TextMeasure measure, Lengths unit) {
        BarChart right = steps(s, unit);
        BarChart nameless = new BarChart(right.caption(), right.unit(), right.digits(), right.bars().stream().map(b -> new BarChart.Bar("", b.value(), b.role())).toList());
        double narrow = Math.max(NAMELESS_LEAST, width * NAMELESS);
        return Sheets.beside("What matters", List.of(perTolerance(s, width - narrow, measure).drawing(), nameless.draw(narrow, measure).drawing()));
    }

    /** How much more of an input the second chart tells of: 0.01 mm, or one thousandth of an inch; of a share 1 %. */
    public static String step(Lengths unit) {
        return unit.number(length(unit), LengthText.AS_GIVEN) + " " + unit.sign() + " or 1 %";
    }

    /** A caliper's step, mm. */
    private static double length(Lengths unit) {
        return unit.fewerDigits() == 0 ? HUNDREDTH : unit.mm();
    }

    private static BarChart steps(Sensitivities s, Lengths unit) {
        String lengths = Quantity.LENGTH.unit();
        return bars("Turns for " + step(unit) + " more", s, e -> e.unit().equals(lengths) ? e.perHundredth() * (length(unit) / HUNDREDTH) : e.perHundredth(), 3 - unit.fewerDigits());
    }

    private static BarChart bars(String caption, Sensitivities s, ToDoubleFunction<Effect> value, int digits) {
        return new BarChart(caption, "", digits, drawn(s).stream()
                .map(e -> new BarChart.Bar(e.label() + (e.measured() ? "" : " (assumed)"), value.applyAsDouble(e), e.measured() ? Role.BRASS : Role.THREAD)).toList());
    }
}

package culm.bench.plots;

import java.util.List;
import java.util.function.ToDoubleFunction;

import culm.explore.Effect;
import culm.explore.Sensitivities;
import culm.figures.Drawing;
import culm.figures.Role;
import culm.figures.TextMeasure;
import culm.figures.chart.BarChart;
import culm.figures.chart.ChartDrawing;

/** What moves turns left, as ranked bars; brass for what was measured, thread for what was assumed. */
public final class MattersPlots {
    /** Most bars. */
    public static final int BARS = 18;

    private static final double LEAST = 0.005;
    private static final double NAMED = 0.68;

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
        return hundredths(s).draw(width, measure);
    }

    /** Both beside each other; the names stand once. */
    public static Drawing both(Sensitivities s, double width, TextMeasure measure) {
        BarChart right = hundredths(s);
        BarChart nameless = new BarChart(right.caption(), right.unit(), right.digits(), right.bars().stream().map(b -> new BarChart.Bar("", b.value(), b.role())).toList());
        return Sheets.beside("What matters", List.of(perTolerance(s, width * NAMED, measure).drawing(), nameless.draw(width * (1 - NAMED), measure).drawing()));
    }

    private static BarChart hundredths(Sensitivities s) {
        return bars("Turns for 0.01 mm or 1 % more", s, Effect::perHundredth, 3);
    }

    private static BarChart bars(String caption, Sensitivities s, ToDoubleFunction<Effect> value, int digits) {
        return new BarChart(caption, "", digits, drawn(s).stream()
                .map(e -> new BarChart.Bar(e.label() + (e.measured() ? "" : " (assumed)"), value.applyAsDouble(e), e.measured() ? Role.BRASS : Role.THREAD)).toList());
    }
}

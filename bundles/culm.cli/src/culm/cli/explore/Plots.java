package culm.cli.explore;

import java.util.LinkedHashMap;
import java.util.Map;

import culm.bench.plots.ChoicePlot;
import culm.bench.plots.MapPlot;
import culm.bench.plots.MattersPlots;
import culm.bench.plots.TolerancePlots;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.explore.Chosen;
import culm.explore.Sensitivities;
import culm.explore.ToleranceResult;
import culm.explore.TwoWayMap;
import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.svg.SvgWriter;

/** What exploring found, as SVG by file name. */
final class Plots {
    private static final double WIDTH = 640;
    private static final double HEIGHT = 400;
    private static final double ROW = 24;
    private static final int CAUSES = 16;

    private Plots() {
    }

    static Map<String, String> tolerances(ToleranceResult r, Limits limits) {
        TextMeasure measure = ShippedFont.load();
        Map<String, String> all = new LinkedHashMap<>();
        all.put("turns-left.svg", svg(TolerancePlots.turns(r, limits, WIDTH, HEIGHT, measure).drawing()));
        all.put("rules.svg", svg(TolerancePlots.shares(r).draw(WIDTH, ROW, measure)));
        all.put("causes.svg", svg(TolerancePlots.causes(r.causes(), CAUSES, WIDTH, measure).drawing()));
        return all;
    }

    static Map<String, String> matters(Sensitivities s) {
        TextMeasure measure = ShippedFont.load();
        Map<String, String> all = new LinkedHashMap<>();
        all.put("what-matters.svg", svg(MattersPlots.perTolerance(s, WIDTH, measure).drawing()));
        all.put("per-hundredth.svg", svg(MattersPlots.perHundredth(s, WIDTH, measure).drawing()));
        return all;
    }

    static Map<String, String> map(Blank base, TwoWayMap m) {
        return Map.of("map.svg", svg(MapPlot.draw(base, m, MapPlot.Lines.TURNS, WIDTH, HEIGHT + 80, ShippedFont.load()).drawing()));
    }

    static Map<String, String> chosen(Chosen c) {
        return Map.of("best-choice.svg", svg(ChoicePlot.draw(c, WIDTH, ShippedFont.load())));
    }

    private static String svg(Drawing drawing) {
        return SvgWriter.write(drawing, Palette.PRINT);
    }
}

package culm.bench.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

import culm.bench.Blanks;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Rules;
import culm.explore.Axis;
import culm.explore.Study;
import culm.explore.TwoWayMap;
import culm.explore.VariantPlan;
import culm.explore.VariantTable;
import culm.explore.Variants;
import culm.explore.Varied;
import culm.explore.Watcher;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.chart.ChartDrawing;
import culm.figures.font.ShippedFont;

/** What explores writes its lengths in the unit it is given, and draws the same in both. */
class PlotUnitTest {
    private static final TextMeasure FONT = ShippedFont.load();
    private static final Blank BASE = Blanks.check();
    private static final Axis.Numbers TIE = Axis.Numbers.spaced(Inputs.TIE_LENGTH, "tie length", 68, 76, 33);
    private static final Axis.Numbers WIDTHS = Axis.Numbers.spaced(Varied.WIDTH, "all widths", -0.4, 0.4, 17);
    private static final Axis.Numbers SHARE = Axis.Numbers.spaced(Inputs.COMPRESSION, "thickness lost", 0, 0.2, 3);

    private static List<String> words(Drawing drawing) {
        return drawing.flat().stream().filter(Text.class::isInstance).map(t -> ((Text) t).text()).toList();
    }

    private static Study study() {
        return new Study(BASE, List.of(), Limits.STANDARD, Rules.load());
    }

    @Test
    void aMapFollowsTheUnit() {
        TwoWayMap map = TwoWayMap.of(study(), TIE, WIDTHS, 1, Watcher.none());
        ChartDrawing mm = MapPlot.draw(BASE, map, MapPlot.Lines.CLOSES, 640, 420, FONT);
        ChartDrawing thou = MapPlot.draw(BASE, map, MapPlot.Lines.CLOSES, 640, 420, FONT, Lengths.THOU);
        assertTrue(words(mm.drawing()).containsAll(List.of("tie length, mm", "all widths, mm")), words(mm.drawing()).toString());
        assertTrue(words(thou.drawing()).containsAll(List.of("tie length, thou", "all widths, thou")), words(thou.drawing()).toString());
        assertTrue(words(mm.drawing()).stream().anyMatch(t -> t.matches("\\d+(\\.\\d)? mm")), "heights at which the sides close");
        assertTrue(words(thou.drawing()).stream().anyMatch(t -> t.matches("\\d{4} thou")), words(thou.drawing()).toString());
        assertFalse(words(thou.drawing()).stream().anyMatch(t -> t.contains("mm")), words(thou.drawing()).toString());
        assertEquals(mm.x().to() / 0.0254, thou.x().to(), 1e-6);
        assertEquals(mm.y().from() / 0.0254, thou.y().from(), 1e-6);
    }

    @Test
    void parallelAxesFollowTheUnitAndSharesDoNot() throws IOException {
        VariantTable table = new VariantTable();
        Variants.run(study(), List.of(TIE, SHARE), new VariantPlan.Grid(), 1, table, Watcher.none());
        int[] rows = IntStream.range(0, table.rows()).toArray();
        List<String> mm = words(VariantPlot.parallel(BASE, table, rows, 3, 640, 420, FONT, Lengths.MM).drawing());
        List<String> thou = words(VariantPlot.parallel(BASE, table, rows, 3, 640, 420, FONT, Lengths.THOU).drawing());
        assertTrue(mm.contains("tie length, mm") && mm.contains("72"), mm.toString());
        assertTrue(thou.contains("tie length, thou") && thou.contains("2800"), thou.toString());
        assertEquals(mm.stream().filter(t -> t.startsWith("0.")).toList(), thou.stream().filter(t -> t.startsWith("0.")).toList());
    }

    @Test
    void fewTriedValuesHaveTheirNumbersAndTheChosenLineIsNamed() throws IOException {
        VariantTable table = new VariantTable();
        Variants.run(study(), List.of(Axis.Numbers.stepped(Inputs.TIE_LENGTH, "tie length", 70, 74, 0.5), SHARE), new VariantPlan.Grid(), 1, table, Watcher.none());
        int[] rows = IntStream.range(0, table.rows()).toArray();
        List<String> mm = words(VariantPlot.parallel(BASE, table, rows, 3, 640, 420, FONT, Lengths.MM).drawing());
        assertTrue(mm.containsAll(List.of("70.0", "70.5", "71.0", "71.5", "74.0", "0.0", "0.1", "0.2")) && !mm.contains("70.2"), mm.toString());
        assertEquals("Every variant shown; green passes every rule, the thick line is the chosen one", mm.get(0));
        List<String> thou = words(VariantPlot.parallel(BASE, table, rows, -1, 640, 420, FONT, Lengths.THOU).drawing());
        assertTrue(thou.containsAll(List.of("2756", "2776", "2795")), thou.toString());
        assertEquals("Every variant shown; green passes every rule", thou.get(0));
    }

    @Test
    void aValueCarriesItsUnit() {
        assertEquals("tie length 71.5 mm", PlotWords.value(BASE, TIE, 71.500000001, Lengths.MM));
        assertEquals("tie length 2815 thou", PlotWords.value(BASE, TIE, 71.5, Lengths.THOU));
        assertEquals("thickness lost 0.1", PlotWords.value(BASE, SHARE, 0.1, Lengths.THOU));
    }
}

package culm.bench.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import culm.bench.Blanks;
import culm.blank.Limits;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;

class TieChartTest {
    private static final TextMeasure FONT = ShippedFont.load();

    private static BatchPlan plan(int count) {
        List<StapleReadings> staples = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            staples.add(StapleReadings.of("no. " + (i + 1), 46.6 + 0.9 * i / count, 3.30 + 0.14 * i / count, 2.09));
        }
        return new BatchPlanner(Limits.STANDARD, 0.1, 0).plan(Blanks.check(), new StapleBatch("b", staples, Caliper.ASSUMED, 0.5));
    }

    private static List<Text> texts(Drawing drawing) {
        return drawing.flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 24, 81, 700})
    void everyTextStaysInsideAndNoneLiesOnAnother(int count) {
        BatchPlan plan = plan(count);
        for (double width : new double[] {340, 420, 900}) {
            Drawing drawing = TieChart.draw(plan, width, FONT, Lengths.MM);
            List<Text> texts = texts(drawing);
            for (int i = 0; i < texts.size(); i++) {
                var box = texts.get(i).box(FONT);
                assertTrue(box.x() >= 0 && box.right() <= drawing.width() && box.bottom() <= drawing.height(), texts.get(i).text() + " at " + width);
                for (int j = 0; j < i; j++) {
                    var inner = new culm.figures.Box(box.x(), box.y() + box.height() * 0.3, box.width(), box.height() * 0.4);
                    assertTrue(!inner.overlaps(texts.get(j).box(FONT)), texts.get(i).text() + " lies on " + texts.get(j).text() + " at " + width);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {24, 700})
    void everySettingIsNamedAndOfManyStaplesSomeAreDrawn(int count) {
        BatchPlan plan = plan(count);
        Drawing drawing = TieChart.draw(plan, 420, FONT, Lengths.MM);
        assertEquals(plan.settings().size(), texts(drawing).stream().filter(t -> t.text().startsWith("tie at ")).count());
        assertEquals(count > 80 ? 0 : plan.served(), texts(drawing).stream().filter(t -> t.text().endsWith(" left")).count());
        assertEquals(count > 240, texts(drawing).stream().anyMatch(t -> t.text().contains("1 of 3 staples is drawn")));
        assertTrue(drawing.height() < 1800);
    }
}

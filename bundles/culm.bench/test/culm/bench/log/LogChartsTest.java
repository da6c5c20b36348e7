package culm.bench.log;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import culm.bench.Blanks;
import culm.bench.learn.LearnChart;
import culm.bench.learn.Learned;
import culm.bench.learn.Learner;
import culm.blank.Limits;
import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;

/** Charts whose axis counts blanks. */
class LogChartsTest {
    private static final TextMeasure FONT = ShippedFont.load();

    private static List<Tied> log(int blanks) {
        List<Tied> log = new ArrayList<>();
        for (int i = 1; i <= blanks; i++) {
            log.add(new Tied(Integer.toString(i), Optional.empty(), "Ines", "", TiedFrom.NOTHING, TiedHow.NOTHING, Seen.closing(72, 46.5, 1.5 + 0.1 * (i % 3), 1.5), "", 0));
        }
        return log;
    }

    private static void assertCounts(Drawing drawing) {
        List<String> across = drawing.flat().stream().filter(i -> i instanceof Text t && t.anchor() == Anchor.MIDDLE).map(i -> ((Text) i).text()).toList();
        assertTrue(across.size() > 1 && across.stream().allMatch(t -> t.matches("[1-9]\\d*")), across.toString());
    }

    @Test
    void blanksHaveWholeNumbersFromOneOn() {
        for (int blanks : new int[] {5, 9, 26}) {
            Learned learned = new Learner(t -> Optional.of(Blanks.check())).learn(log(blanks)).get(0);
            for (double width : new double[] {420, 1100}) {
                assertCounts(LogCharts.turns(log(blanks), GroupBy.PERSON, Limits.STANDARD, width, 220, FONT));
                assertCounts(LearnChart.draw(learned, width, 170, FONT));
            }
        }
    }
}

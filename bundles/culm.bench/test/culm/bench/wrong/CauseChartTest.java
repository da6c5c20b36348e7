package culm.bench.wrong;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;

/** The causes as bars. */
class CauseChartTest {
    private static final TextMeasure FONT = ShippedFont.load();

    @Test
    void digitsStayInLineWhereSomeCausesLieBeyondTheAxis() {
        List<Cause> causes = List.of(cause("swelling", 0.7), cause("wrap", 3.4), cause("tie", 7.9), cause("staple", 46.5));
        Explanation explanation = new Explanation(Verdict.WITHIN_GIVE_OR_TAKE, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.5, List.of(), Optional.empty(), causes, 1,
                1, List.of());
        List<Text> texts = CauseChart.draw(explanation, 480, FONT).flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
        List<Text> numbers = texts.stream().filter(t -> t.text().matches("\\d+\\.\\d")).toList();
        assertEquals(List.of("0.7", "3.4", "7.9", "46.5"), numbers.stream().map(Text::text).toList());
        assertEquals(1, numbers.stream().map(t -> Math.round(t.box(FONT).right())).distinct().count(), "one right end");
        List<Text> arrows = texts.stream().filter(t -> t.text().contains("\u25b8")).toList();
        assertEquals(2, arrows.size());
        assertTrue(arrows.stream().allMatch(a -> a.box(FONT).right() <= 480 && a.x() >= numbers.get(0).box(FONT).right() - 1e-9));
    }

    private static Cause cause(String words, double units) {
        return new Cause(words, words, units, "more", "mm", 1, "");
    }
}

package culm.figures.reed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.figures.Blanks;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Shape;
import culm.figures.Text;
import culm.figures.font.ShippedFont;

/** Two reeds on one axis. */
class OverlayViewTest {
    private static Drawing draw(Blank first, Blank second, double width) {
        return OverlayView.draw(Reed.of(Blanks.assessed(first)), "one", Reed.of(Blanks.assessed(second)), "other", Limits.STANDARD, width, ShippedFont.load(), culm.figures.Lengths.MM);
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.flat().stream().filter(Text.class::isInstance).map(i -> ((Text) i).text()).toList();
    }

    @Test
    void bothHaveTheirMarksWithTheirNumbers() {
        List<String> texts = texts(draw(Blanks.example(), Blanks.example().with(Inputs.TIE_LENGTH, 70), 900));
        assertTrue(texts.contains("fold 72.0") && texts.contains("fold 70.0"), texts.toString());
        assertTrue(texts.contains("one, filled") && texts.contains("other, broken lines"), texts.toString());
        assertEquals(2, texts.stream().filter(t -> t.startsWith("sides close")).count());
    }

    @Test
    void theSecondOneIsOnlyBrokenLines() {
        long alone = broken(draw(Blanks.example(), Blanks.example(), 900));
        assertTrue(alone >= 5, alone + " broken outlines");
    }

    private static long broken(Drawing drawing) {
        return drawing.flat().stream().filter(i -> i instanceof Shape s && s.style().dash() == Dash.DASHED && s.style().width() > 1.2 && s.style().fill().isEmpty()).count();
    }

    /** What cannot be drawn is left out, and the other one is drawn all the same. */
    @ParameterizedTest
    @ValueSource(doubles = { 300, 760, 1500 })
    void aBrokenOneDoesNoHarm(double width) {
        Blank broken = Blanks.example().with(Inputs.TUBE, 6.9);
        for (Drawing drawing : List.of(draw(broken, Blanks.example(), width), draw(Blanks.example(), broken, width), draw(Blanks.open(), Blanks.noCork(), width))) {
            assertTrue(drawing.height() > 100 && Double.isFinite(drawing.height()));
        }
    }
}

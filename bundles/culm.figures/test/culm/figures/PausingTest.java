package culm.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import culm.blank.Inputs;
import culm.blank.Limits;
import culm.figures.font.ShippedFont;
import culm.figures.reed.OverlayView;
import culm.figures.reed.Reed;
import culm.figures.reed.ReedDrawing;
import culm.figures.reed.ReedOptions;
import culm.figures.reed.ReedView;

/** Lines up the page that pause behind labels. */
class PausingTest {
    private static final TextMeasure FONT = ShippedFont.load();

    private static Text text(double x, double y, double turn) {
        return new Text("a label", x, y, Anchor.MIDDLE, Size.BODY, false, Role.INK, turn);
    }

    @Test
    void theLinePausesBehindWhatItMeetsAndNowhereElse() {
        Text met = text(50, 40, 0);
        Text beside = text(300, 70, 0);
        Text inGroup = text(0, 0, 0);
        List<Item> items = List.of(met, beside, new Group(Part.MARKS, "", 50, 120, Optional.empty(), List.of(inGroup)));
        List<double[]> runs = runs(Pausing.up(50, 0, 200, items, FONT));
        assertEquals(3, runs.size());
        assertEquals(0, runs.get(0)[0]);
        assertEquals(met.box(FONT).y() - Pausing.AROUND, runs.get(0)[1], 1e-9);
        assertEquals(met.box(FONT).bottom() + Pausing.AROUND, runs.get(1)[0], 1e-9);
        assertEquals(120 + inGroup.box(FONT).y() - Pausing.AROUND, runs.get(1)[1], 1e-9);
        assertEquals(200, runs.get(2)[1]);
    }

    @Test
    void aTurnedLabelTakesItsTurnedRoom() {
        Text up = text(50, 100, -90);
        List<double[]> runs = runs(Pausing.up(50 - FONT.ascent(Size.BODY) / 2, 0, 200, List.of(up), FONT));
        double half = FONT.width("a label", Size.BODY, false) / 2 + Pausing.AROUND;
        assertEquals(100 - half, runs.get(0)[1], 1e-6);
        assertEquals(100 + half, runs.get(1)[0], 1e-6);
        assertEquals(1, runs(Pausing.up(50 + FONT.descent(Size.BODY) + 20, 0, 200, List.of(up), FONT)).size());
    }

    @Test
    void noStubIsLeftBetweenTwoLabels() {
        double high = text(50, 0, 0).box(FONT).height() + 2 * Pausing.AROUND;
        assertEquals(2, runs(Pausing.up(50, 0, 200, List.of(text(50, 60, 0), text(50, 60 + high + Pausing.SHORTEST - 1, 0)), FONT)).size());
        assertEquals(3, runs(Pausing.up(50, 0, 200, List.of(text(50, 60, 0), text(50, 60 + high + Pausing.SHORTEST + 1, 0)), FONT)).size());
    }

    @Test
    void lettersThatTakeAllOfItLeaveNothing() {
        assertTrue(Pausing.up(50, 38, 41, List.of(text(50, 40, 0)), FONT).isEmpty());
        assertEquals(1, runs(Pausing.up(50, 40, 200, List.of(text(50, 40, 0), text(50, 42, 0)), FONT)).size());
    }

    /** The pointer at any height, in a drawing of any width. */
    @ParameterizedTest
    @ValueSource(doubles = {400, 760, 1300})
    void thePointerRunsThroughNoLabel(double width) {
        Reed reed = Reed.of(Blanks.assessed(Blanks.example()));
        ReedDrawing view = ReedView.draw(reed, Limits.STANDARD, ReedView.fitting(reed, width), FONT, ReedOptions.WINDOW);
        List<Text> labels = texts(view.drawing());
        int paused = 0;
        for (double z = 0.3; z < reed.top(); z += 0.7) {
            Shape line = (Shape) view.pointer(z, FONT).items().get(0);
            runThroughNone(line, labels);
            paused += runs(line.path()).size() - 1;
        }
        assertTrue(paused > 30, "it pauses somewhere: " + paused);
    }

    @Test
    void theClosingOfTwoDesignsRunsThroughNoLabel() {
        Reed one = Reed.of(Blanks.assessed(Blanks.example()));
        Reed other = Reed.of(Blanks.assessed(Blanks.example().with(Inputs.TIE_LENGTH, 70)));
        for (double width = 400; width < 1400; width += 60) {
            Drawing drawing = OverlayView.draw(one, "one", other, "the other one with a long name", Limits.STANDARD, width, FONT, Lengths.MM);
            List<Item> all = drawing.flat();
            List<Item> lines = all.subList(all.size() - 2, all.size());
            for (Item line : lines) {
                assertEquals(1, ((Shape) line).style().width());
                assertFalse(((Shape) line).path().isEmpty());
                runThroughNone((Shape) line, texts(drawing));
            }
        }
    }

    private static void runThroughNone(Shape line, List<Text> labels) {
        double x = line.path().bounds().x();
        for (double[] run : runs(line.path())) {
            Box thin = new Box(x - 0.5, run[0], 1, run[1] - run[0]);
            for (Text label : labels) {
                assertFalse(thin.overlaps(label.box(FONT)), () -> label.text() + " at " + label.x() + ", line at " + x + " from " + run[0] + " to " + run[1]);
            }
        }
    }

    private static List<Text> texts(Drawing drawing) {
        return drawing.flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
    }

    private static List<double[]> runs(Path path) {
        List<double[]> runs = new ArrayList<>();
        path.walk(new PathSink() {
            private double from;

            @Override
            public void move(double x, double y) {
                from = y;
            }

            @Override
            public void line(double x, double y) {
                runs.add(new double[] {from, y});
            }

            @Override
            public void curve(double x1, double y1, double x2, double y2, double x, double y) {
                throw new AssertionError("no curves");
            }

            @Override
            public void close() {
                throw new AssertionError("nothing to close");
            }
        });
        return runs;
    }
}

package culm.figures.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.figures.Role;
import culm.figures.Size;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;

/** Labels never overlap, no leader runs through a text, nothing leaves its space: over many seeded layouts and widths. */
class LabelRowsTest {
    private static final TextMeasure FONT = ShippedFont.load();
    private static final String[] WORDS = {"sides close", "top of the wrap", "staple top", "fold", "finished", "end of the cane", "cork", "bottom of the wrap"};
    private static final double[] USUAL = {46.05, 46.5, 47, 72, 70, 35, 25, 24.5};

    private static List<Label> labels(double[] heights, double left, double right) {
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            String number = String.format(java.util.Locale.ROOT, "%.1f", heights[i]);
            labels.add(new Label("m" + i, left + heights[i] / 75 * (right - left), WORDS[i % WORDS.length] + " " + number, number, i % 3 == 0, Role.INK));
        }
        return labels;
    }

    private static void check(List<PlacedLabel> placed, double left, double right) {
        for (PlacedLabel a : placed) {
            assertTrue(a.from() >= left && a.to() <= right, () -> a + " leaves " + left + " to " + right);
            assertEquals(FONT.width(a.text(), Size.BODY, a.label().bold()), a.to() - a.from(), 1e-9);
            for (PlacedLabel b : placed) {
                if (a != b) {
                    assertTrue(a.row() != b.row() || a.to() <= b.from() || b.to() <= a.from(), () -> a + " lies on " + b);
                    boolean crossed = b.label().x() > a.from() && b.label().x() < a.to() && b.row() >= a.row();
                    assertTrue(!crossed, () -> "the leader of " + b + " runs through " + a);
                }
            }
        }
    }

    @Test
    void usualMarksAtEveryWidthAreAllThere() {
        for (double width = 300; width < 3000; width *= 1.07) {
            List<PlacedLabel> placed = new LabelRows(FONT, Size.BODY, 0, width).place(labels(USUAL, 12, width - 12));
            assertEquals(USUAL.length, placed.size(), "width " + width);
            check(placed, 0, width);
        }
    }

    @Test
    void anyMarksAtAnyWidth() {
        SplittableRandom random = new SplittableRandom(20);
        for (int run = 0; run < 3000; run++) {
            double[] heights = new double[random.nextInt(1, run % 50 == 0 ? 25 : 9)];
            double cluster = random.nextDouble(10, 70);
            for (int i = 0; i < heights.length; i++) {
                heights[i] = random.nextInt(3) == 0 ? random.nextDouble(0, 75) : Math.rint(cluster * 10 + random.nextInt(-8, 9)) / 10;
            }
            double width = 30 + 1500 * random.nextDouble() * random.nextDouble();
            List<PlacedLabel> placed = new LabelRows(FONT, Size.BODY, 0, width).place(labels(heights, 0.05 * width, 0.95 * width));
            check(placed, 0, width);
            if (width > 250) {
                assertEquals(heights.length, placed.size(), "run " + run + ", width " + width);
            }
        }
    }

    @Test
    void inANarrowSpaceTheNumberStays() {
        List<PlacedLabel> placed = new LabelRows(FONT, Size.BODY, 0, 130).place(labels(USUAL, 12, 118));
        check(placed, 0, 130);
        assertTrue(placed.size() >= 6, "only " + placed.size());
        assertTrue(placed.stream().anyMatch(p -> p.text().equals(p.label().brief())));
    }

    @Test
    void theSameMarkTwiceKeepsBothLabels() {
        List<PlacedLabel> placed = new LabelRows(FONT, Size.BODY, 0, 700).place(labels(new double[] {47, 47, 47}, 0, 700));
        assertEquals(3, placed.size());
        check(placed, 0, 700);
    }
}

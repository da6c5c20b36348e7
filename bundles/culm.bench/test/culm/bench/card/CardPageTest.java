package culm.bench.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import culm.bench.Blanks;
import culm.bench.PdfLines;
import culm.bench.batch.BatchPlan;
import culm.bench.batch.BatchPlanner;
import culm.bench.batch.Caliper;
import culm.bench.batch.StapleBatch;
import culm.bench.batch.StapleReadings;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Rules;
import culm.figures.Drawing;
import culm.figures.Item;
import culm.figures.Palette;
import culm.figures.Shape;
import culm.figures.Text;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.paper.Paper;
import culm.figures.pdf.PdfWriter;

class CardPageTest {
    private static final TextMeasure FONT = ShippedFont.load();
    private final Cards cards = new Cards(Limits.STANDARD, Rules.load());
    private final CardHead head = new CardHead("Harbour Row, trial 14", "Ines", "oboe", "27", "47, class set, 3", "reed bank 12", "mooring", "FF, 0.41", "thinned");

    private static Blank blank() {
        return Blanks.check().edit().set(Inputs.FINISHED, 70).tolerance(Inputs.TIE_LENGTH, 0.3, true).tolerance(Inputs.STAPLE_LENGTH, 0.05, true).build();
    }

    private static byte[] pdf(Drawing page) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfWriter.write(List.of(page), Palette.PRINT, out);
        return out.toByteArray();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void rulerAndStripAreTrueToATenthOfAMillimetreInThePdf(Paper paper) throws Exception {
        byte[] pdf = pdf(CardPage.draw(cards.of(blank(), head), paper, FONT));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(paper.width(false) / Drawing.UNITS_PER_MM, document.getPage(0).getMediaBox().getWidth() / PdfLines.POINTS_PER_MM, 0.01);
            PdfLines lines = PdfLines.of(document.getPage(0));
            List<double[]> ruler = lines.horizontal().stream().filter(l -> Math.abs(l[2] - l[0] - 100) < 0.1).toList();
            assertEquals(1, ruler.size());
            double left = ruler.get(0)[0];
            double y = ruler.get(0)[1];
            for (int i = 0; i <= 100; i++) {
                double x = left + i;
                assertTrue(lines.vertical().stream().anyMatch(l -> Math.abs(l[0] - x) < 0.02 && (Math.abs(l[1] - y) < 0.02 || Math.abs(l[3] - y) < 0.02)), "tick " + i);
            }
            double bottom = lines.boxes().stream().filter(b -> Math.abs(b[2] - 74.3) < 0.02).findFirst().orElseThrow()[0];
            double[] window = lines.boxes().stream().filter(b -> Math.abs(b[2] - 0.6) < 0.01 && b[3] > 6).findFirst().orElseThrow();
            assertEquals(72.0, window[0] + window[2] / 2 - bottom, 0.02);
            for (double mark : new double[] {46.5, 46.0489, 47, 35, 25, 70}) {
                assertTrue(lines.vertical().stream().anyMatch(l -> Math.abs(l[0] - bottom - mark) < 0.02), "mark " + mark);
            }
        }
    }

    @Test
    void theTextSaysEveryNumberInTheOrderOfTheWork() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf(CardPage.draw(cards.of(blank(), head), Paper.A4, FONT)))) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            int at = 0;
            for (String word : List.of("27", "Ines", "Soak", "Pencil mark", "Line it up with the oval", "Tie length", "Start 5 turns below", "Sides close with", "Both sides early or late",
                    "STOP", "Cross over", "Measure the tie again", "Leak test, the fold still closed", "Clip the ears", "finished length", "100 mm")) {
                int found = text.indexOf(word, at);
                assertTrue(found >= 0, word + " is not behind what comes before: " + text);
                at = found;
            }
            for (String number : List.of("47.0", "25.0", "72.0", "\u00b1 0.3", "44.5", "1.1", "46.5", "70.0", "allowed 0 to 2", "0.9 mm for one turn")) {
                assertTrue(text.contains(number), number + " in " + text);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void noTextLeavesThePageOrLiesOnAnother(Paper paper) {
        BatchPlan plan = plan(40);
        List<Card> all = new ArrayList<>(List.of(cards.of(blank(), head), cards.of(blank(), CardHead.of("A design with a rather long name that has to be cut somewhere on the page")),
                cards.of(blank().with(Inputs.WRAP_TOP, 47.4), head), cards.of(blank().with(Inputs.TIE_LENGTH, 76), head), cards.forClass(blank(), plan, head),
                cards.of(blank(), new CardHead(LONG, LONG, LONG, "2026-117b", LONG, LONG, LONG, LONG, LONG)), wordy(cards.of(blank(), head)), cards.of(noCork(), head)));
        all.addAll(cards.perSetting(blank(), plan, head));
        for (Card card : all) {
            Drawing page = CardPage.draw(card, paper, FONT);
            List<Text> texts = new ArrayList<>();
            for (Item item : page.flat()) {
                if (item instanceof Text t) {
                    texts.add(t);
                } else if (item instanceof Shape s) {
                    assertFalse(s.path().isEmpty());
                }
            }
            for (int i = 0; i < texts.size(); i++) {
                var box = texts.get(i).box(FONT);
                assertTrue(box.x() > 20 && box.right() < page.width() - 20 && box.y() > 5 && box.bottom() < page.height() - 5, texts.get(i).text());
                for (int j = 0; j < i; j++) {
                    var other = texts.get(j).box(FONT);
                    var inner = new culm.figures.Box(box.x(), box.y() + box.height() * 0.3, box.width(), box.height() * 0.4);
                    assertFalse(inner.overlaps(other), texts.get(i).text() + " lies on " + texts.get(j).text());
                }
            }
        }
    }

    private static final String LONG = "Something with a name that is a good deal longer than there is room for on any card, as names at a bench sometimes are";

    /** What is said of it takes three lines. */
    private static Card wordy(Card card) {
        return new Card(card.head(), card.numbers(), "Sides close with 3.1 turns left, give or take 2.3; but overwrapped: the wrap stops at 46.5 mm, above the "
                + "staple's top at 46.0 mm; they may not close at all.", false, card.staples(), card.wrapBelow(), card.measured(), card.example());
    }

    /** An English horn's staple has no cork: one more line of words in the steps. */
    private static Blank noCork() {
        return blank().edit().clear(Inputs.CORK_TOP).set(Inputs.WRAP_BOTTOM, 30).build();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void everyStepStaysAboveTheFoot(Paper paper) {
        for (Card card : List.of(cards.of(blank(), head), cards.of(noCork(), head), wordy(cards.of(noCork(), CardHead.of("x"))), cards.forClass(blank(), plan(40), head))) {
            Drawing page = CardPage.draw(card, paper, FONT);
            double foot = page.flat().stream().filter(Text.class::isInstance).map(Text.class::cast).filter(t -> t.text().equals("100 mm")).findFirst().orElseThrow().box(FONT).y();
            List<Text> last = page.flat().stream().filter(Text.class::isInstance).map(Text.class::cast)
                    .filter(t -> t.text().contains("leak test again") || t.text().contains("finished length, leak")).toList();
            assertFalse(last.isEmpty());
            last.forEach(t -> assertTrue(t.box(FONT).bottom() < foot - 4, t.text() + " at " + t.box(FONT).bottom() + ", the foot at " + foot));
        }
    }

    private static BatchPlan plan(int count) {
        List<StapleReadings> staples = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            staples.add(StapleReadings.of("no. " + i, 46.4 + 0.03 * i, 3.30 + 0.004 * i, 2.09));
        }
        return new BatchPlanner(Limits.STANDARD, 0.1, 0).plan(blank(), new StapleBatch("b", staples, Caliper.ASSUMED, 0.5));
    }

    @Test
    void oneCardAStapleOneASettingOneForAll() {
        BatchPlan plan = plan(12);
        assertEquals(plan.served(), cards.perStaple(blank(), plan, head).size());
        assertEquals(plan.settings().size(), cards.perSetting(blank(), plan, head).size());
        Card all = cards.forClass(blank(), plan, head);
        assertEquals(plan.served(), all.staples().size());
        for (StapleLine line : all.staples()) {
            assertEquals(0.5, line.tie() - line.pencilMark() - line.wrapTop(), 1e-9);
        }
        for (Card card : cards.perStaple(blank(), plan, head)) {
            assertTrue(card.works(), card.verdict());
            assertEquals(card.numbers().tie() - card.numbers().stapleLength(), card.numbers().pencilMark(), 1e-9);
        }
    }

    @Test
    void anOverwrappedDesignIsNotMadeToLookReady() throws Exception {
        Card card = cards.of(blank().with(Inputs.WRAP_TOP, 47.4), head);
        assertFalse(card.works());
        try (PDDocument document = Loader.loadPDF(pdf(CardPage.draw(card, Paper.A4, FONT)))) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Do not tie it like this") && text.contains("The design's 47.4 is above the staple."), text);
        }
    }

    @Test
    void theMovesBringTheTurnsWanted() {
        CardNumbers n = cards.of(blank(), head).numbers();
        List<Moves> moves = Moves.of(n);
        assertEquals("4", moves.get(0).seen());
        assertEquals("still open", moves.get(moves.size() - 1).seen());
        assertEquals(3 * n.perTurn().getAsDouble(), moves.get(0).move(), 1e-12);
        Blank low = blank().with(Inputs.TIE_LENGTH, 71);
        double seen = culm.blank.Assessor.assess(low).turnsLeft().getAsDouble();
        double moved = 71 + (seen - n.wanted()) * n.perTurn().getAsDouble();
        assertEquals(1, culm.blank.Assessor.assess(blank().with(Inputs.TIE_LENGTH, moved)).turnsLeft().getAsDouble(), 0.1);
    }
}

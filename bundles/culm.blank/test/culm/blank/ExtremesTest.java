package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.OffsetCircle;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.Waisted;
import culm.geometry.shape.WidthMeasure;

/** The ends of what can be made, and a little beyond. */
class ExtremesTest {
    private static Blank staple(double bottom, double wide, double narrow) {
        Blank b = Sample.blank();
        return b.edit().staple(b.staple().with(b.staple().values().with("bottom", bottom).with("topWide", wide).with("topNarrow", narrow))).build();
    }

    private static void assertAgrees(Blank blank) {
        Seam seam = new Seam(blank);
        Reference reference = new Reference(blank);
        for (double z = 35.5; z <= 47; z += 1.3) {
            assertEquals(reference.needed(z), seam.needed(z), 1e-9);
            assertEquals(reference.given(z), seam.given(z), 1e-9);
        }
    }

    @Test
    void aRoundStaple() {
        Blank round = staple(5.4, 2.6, 2.6);
        assertAgrees(round);
        double z = 46;
        double radius = 2.7 + (1.3 - 2.7) * z / 47;
        Blank even = round.edit().gouge(new Profile<>(new Concentric(), Values.NONE.with("middle", 0.58))).build();
        assertEquals(Math.PI / 2 * (radius + 0.29), new Seam(even).needed(z), 1e-12, "a quarter of the circle half a thickness further out");
        assertTrue(ClosingFinder.find(round).at().isPresent());
    }

    @Test
    void equalTopAndBottom() {
        Blank tube = staple(2.8, 2.8, 2.8);
        assertAgrees(tube);
        Seam seam = new Seam(tube);
        assertEquals(seam.needed(36), seam.needed(46), 1e-12, "without a taper the half-width needed is the same everywhere");
        assertTrue(ClosingFinder.find(tube).problem().isEmpty());
    }

    /** 1 to 20: there is no room for a wall, but cane goes around. */
    @Test
    void aFlatOval() {
        Blank flat = staple(5.4, 4.4, 0.22);
        assertAgrees(flat);
        Assessment a = Assessor.assess(flat);
        assertTrue(a.sidesCloseAt().isPresent());
        assertTrue(a.boreVolume().isEmpty());
        Trouble trouble = a.troubles().stream().filter(t -> t.result().equals("boreVolume")).findFirst().orElseThrow();
        assertEquals(Inputs.WALL, trouble.path());
        assertTrue(trouble.sentence().startsWith("A wall of 0.25 mm does not fit inside an oval of"), trouble.sentence());
    }

    @Test
    void aGougeNearlyNothingAtTheSide() {
        Blank thin = Sample.blank().with("gouge.side", 0.01).with("gouge.sideAt", 4.2);
        assertAgrees(thin);
        assertTrue(ClosingFinder.find(thin).problem().isEmpty());
        Blank gone = Sample.builder().gouge(new Profile<>(new OffsetCircle(), Values.NONE.with("middle", 0.3).with("radius", 30))).build();
        Closing refused = ClosingFinder.find(gone);
        assertEquals("gouge", refused.path());
        assertTrue(refused.problem().orElseThrow().startsWith("The gouge leaves no cane inside the blade"), refused.problem().get());
    }

    /** The bark side may be as wide as the tube; with square edges the inside ends before. */
    @Test
    void widthsNearTheTubesDiameter() {
        BlankBuilder wide = Sample.builder().shape(new Profile<>(new StraightTaper(), Values.NONE.with("fold", 10.49).with("end", 10.49)))
                .set("staple.bottom", 12).set("staple.topWide", 11).set("staple.topNarrow", 9);
        Blank radial = wide.cut(new Cut(WidthMeasure.CHORD, EdgeKind.RADIAL, true, true)).build();
        assertAgrees(radial);
        assertTrue(ClosingFinder.find(radial).problem().isEmpty());
        Blank square = wide.cut(Cut.STANDARD).gouge(new Profile<>(new Concentric(), Values.NONE.with("middle", 0.58))).build();
        String why = ClosingFinder.find(square).problem().orElseThrow();
        assertTrue(why.startsWith("The inside of a tube of 10.50 mm is too narrow for a blade 10.49 mm wide with square edges."), why);
        String wider = ClosingFinder.find(radial.with("shape.fold", 10.8)).problem().orElseThrow();
        assertTrue(wider.contains("does not fit on a tube of 10.50 mm"), wider);
    }

    /** Closed over two stretches: both are told, the one that reaches the top counts. */
    @Test
    void closesOpensAndClosesAgain() {
        Table rows = Table.of(new double[] {0, 7}, new double[] {25, 4.85}, new double[] {26.5, 4.75}, new double[] {28.5, 4.95}, new double[] {31, 5.6},
                new double[] {33, 5.5}, new double[] {37, 4.6});
        Blank blank = Sample.builder().shape(new Profile<>(new MeasuredShape(), Values.NONE.with("places", rows))).build();
        Closing closing = ClosingFinder.find(blank);
        assertEquals(2, closing.closed().size(), () -> "closed " + closing.closed());
        Stretch lower = closing.closed().get(0);
        assertTrue(closing.at().getAsDouble() > lower.to());
        Seam seam = new Seam(blank);
        for (double z : new double[] {lower.from(), lower.to(), closing.at().getAsDouble()}) {
            assertEquals(0, seam.open(z), 1e-9);
        }
        assertTrue(seam.open((lower.from() + lower.to()) / 2) < 0);
        assertTrue(seam.open((lower.to() + closing.at().getAsDouble()) / 2) > 0);
        assertEquals(47, closing.closed().get(1).to());
    }

    @Test
    void closedAllAlongAndNever() {
        Blank tight = Sample.builder().set("staple.bottom", 3.2).set("staple.topWide", 2.4).set("staple.topNarrow", 1.5)
                .shape(new Profile<>(new Waisted(), Values.NONE.with("fold", 7.0).with("throatAt", 26).with("throat", 5.2).with("end", 5.2))).build();
        Assessment a = Assessor.assess(tight);
        assertTrue(a.closing().closedEverywhere());
        assertEquals(72 - 37, a.sidesCloseAt().orElseThrow(), 1e-12, "the end of the cane");
        assertFalse(a.closeBand().orElseThrow().open());
        assertEquals(35, a.closeBand().get().low(), 0.5);
        Closing never = ClosingFinder.find(staple(5.4, 4.4, 3.4));
        assertTrue(never.at().isEmpty() && never.problem().isEmpty() && never.openAtTop().getAsDouble() > 0);
    }

    /** A seam that only just touches: found whether it passes by a millionth or misses by one. */
    @Test
    void aTouchIsSeen() {
        Table rows = Table.of(new double[] {0, 7}, new double[] {25, 4.85}, new double[] {26.5, 4.75}, new double[] {28.5, 4.95}, new double[] {31, 5.6},
                new double[] {33, 5.5}, new double[] {37, 4.6});
        Blank blank = Sample.builder().shape(new Profile<>(new MeasuredShape(), Values.NONE.with("places", rows))).build();
        Closing closing = ClosingFinder.find(blank);
        Seam seam = new Seam(blank);
        double peak = 0;
        for (double z = closing.closed().get(0).to(); z < closing.at().getAsDouble(); z += 1e-4) {
            peak = Math.max(peak, seam.open(z));
        }
        assertEquals(2, ClosingFinder.find(blank, 1e-6 - peak).closed().size(), "just open in between");
        assertEquals(1, ClosingFinder.find(blank, -1e-6 - peak).closed().size(), "just closed in between");
    }

    @Test
    void partsThatDoNotMeetAreRefusedWithTheirReason() {
        assertRefused(Sample.blank().with(Inputs.TIE_LENGTH, 85), Inputs.TIE_LENGTH, "The cane ends at 48.0 mm, above the staple's top at 47.0 mm");
        assertRefused(Sample.blank().with(Inputs.TIE_LENGTH, 36), Inputs.TIE_LENGTH, "The end of the cane would lie 1.0 mm below the bottom of the staple.");
        assertRefused(Sample.blank().with(Inputs.TIE_LENGTH, 46), Inputs.TIE_LENGTH, "The fold at 46.0 mm is not above the staple's top at 47.0 mm.");
        assertRefused(Sample.blank().with(Inputs.FOLDED_LENGTH, 39), "shape", "The widths reach from 0.0 to 37.0 mm from the fold; needed are 25.0 to 39.0 mm.");
        assertRefused(Sample.blank().with(Inputs.TIE_LENGTH, Double.NaN), Inputs.TIE_LENGTH, "Tie length is not a number: NaN.");
        assertRefused(Sample.blank().with(Inputs.TUBE, -3), Inputs.TUBE, "Tube -3 is outside 5 to 30 mm.");
    }

    private static void assertRefused(Blank blank, String path, String sentence) {
        Closing closing = ClosingFinder.find(blank);
        assertTrue(closing.problem().orElseThrow().startsWith(sentence), closing.problem().get());
        assertEquals(path, closing.path());
        assertEquals(closing.problem().get(), Assessor.assess(blank).troubles().stream().filter(t -> t.result().equals("sidesCloseAt")).findFirst().orElseThrow().sentence());
    }

    /** Absurd numbers, as a side five times as thick as the middle, can make the seam jump; it is told where, and nothing is thrown. */
    @Test
    void aSeamThatJumps() {
        SplittableRandom random = new SplittableRandom(7);
        for (int trial = 0; trial < 2000; trial++) {
            double jump = random.nextDouble(36, 46.9);
            double above = random.nextDouble(0.001, 1) * (trial % 2 == 0 ? 1 : 1e-4);
            double below = random.nextDouble(0.001, 1);
            double slope = random.nextDouble(0.001, 0.01);
            Closing closing = SeamCourse.of(z -> z < jump ? above + slope * (jump - z) : -below - slope * (z - jump), 35, 47, new double[0]).closing(0);
            assertEquals(jump, closing.at().orElseThrow(), 1e-3, "trial " + trial);
        }
    }
}

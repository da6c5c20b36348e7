package culm.bench.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;

import org.junit.jupiter.api.Test;

import culm.bench.Blanks;
import culm.bench.log.Seen;
import culm.bench.log.Tied;
import culm.bench.log.TiedFrom;
import culm.bench.log.TiedHow;
import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Fit;
import culm.blank.Inputs;
import culm.blank.Seam;
import culm.figures.Lengths;
import culm.geometry.numeric.Roots;

/** Simulated makers with known lengths: what is learned, how often its interval holds, what is noticed. */
class LearnerTest {
    private static final boolean LONG = Boolean.getBoolean("culm.long");
    private static final int TRIALS = LONG ? 500 : 60;
    private static final Blank DESIGN = Blanks.check();

    /** A blank of a maker whose cane is wider by 2 delta than the model says; blanks differ by a little, and turns are read half a turn either way. */
    private static Tied tie(int number, String cane, double delta, SplittableRandom random) {
        double tie = 72 + 0.3 * either(random);
        double own = delta + 0.004 * (either(random) + either(random) + either(random));
        Seam seam = new Seam(DESIGN.edit().set(Inputs.TIE_LENGTH, tie).set(Inputs.DELTA, own).build());
        double closes = seam.open(47) > 0 ? 47 : Roots.between(seam::open, 40, 47);
        double turns = (46.5 - closes) / 0.41;
        Seen seen = Seen.closing(tie + 0.05 * either(random), 46.5, turns + 0.5 * either(random), turns + 0.5 * either(random));
        TiedFrom from = new TiedFrom("design", "", "May", "", cane, "mooring", "");
        return new Tied(Integer.toString(number), Optional.of(LocalDate.of(2026, 3, 1).plusDays(number)), "Ines", "", from, TiedHow.NOTHING, seen, "", 0);
    }

    /** The long run's figures are those of the guide. */
    private static void say(String figures) {
        if (LONG) {
            System.out.println(figures);
        }
    }

    private static double either(SplittableRandom random) {
        return 2 * random.nextDouble() - 1;
    }

    private static Learned learn(int blanks, IntToDoubleFunction delta, SplittableRandom random) {
        List<Tied> log = new ArrayList<>();
        for (int i = 0; i < blanks; i++) {
            log.add(tie(i + 1, i < blanks / 2 ? "bank 12" : "bank 13", delta.applyAsDouble(i), random));
        }
        List<Learned> learned = new Learner(t -> Optional.of(DESIGN)).learn(log);
        assertEquals(1, learned.size());
        return learned.get(0);
    }

    @Test
    void oneBlankTeachesWhatTheFitToABlankThatWorkedDoes() {
        Tied tied = new Tied("1", Optional.empty(), "", "", TiedFrom.NOTHING, TiedHow.NOTHING, Seen.closing(72, 46.5, 1.5, 1.5), "", 0);
        Lesson lesson = Lesson.of(tied, DESIGN).lesson().orElseThrow();
        assertEquals(0.012104603, lesson.delta(), 1e-9);
        assertEquals(Fit.to(DESIGN, 1.5, 0.5).delta(), lesson.delta(), 1e-12);
        double moved = ClosingFinder.find(DESIGN.with(Inputs.DELTA, lesson.perTurn())).at().getAsDouble();
        assertEquals(0.41, ClosingFinder.find(DESIGN).at().getAsDouble() - moved, 0.01);
        Tied crooked = new Tied("1", Optional.empty(), "", "", TiedFrom.NOTHING, TiedHow.NOTHING, Seen.closing(72, 46.5, 2.5, 0.5), "", 0);
        assertEquals(lesson.delta(), Lesson.of(crooked, DESIGN).lesson().orElseThrow().delta(), 5e-4);
    }

    @Test
    void theIntervalHoldsTheTruthInTheShareItClaims() {
        SplittableRandom random = new SplittableRandom(11);
        int held = 0;
        double claimed = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double truth = 0.03 * either(random) + 0.02;
            Learned learned = learn(5 + random.nextInt(16), i -> truth, random);
            if (learned.said()) {
                claimed++;
                held += Math.abs(learned.delta() - truth) <= learned.half() ? 1 : 0;
            }
        }
        double share = held / claimed;
        say("interval of 95 % held the truth in " + held + " of " + claimed);
        double sigma = Math.sqrt(0.95 * 0.05 / claimed);
        assertTrue(share > 0.95 - 3 * sigma && share < 0.995, "held in " + share);
    }

    @Test
    void whatIsLearnedIsToldInMmAndInThousandths() {
        Learned learned = learn(12, i -> 0.03, new SplittableRandom(21));
        assertTrue(LearnedText.of(learned).get(0).matches("from 12 blanks: \\+0\\.0\\d\\d mm, give or take 0\\.0\\d\\d; that is .*"), LearnedText.of(learned).get(0));
        String thou = Lengths.THOU.told(LearnedText.told(learned).get(0));
        assertTrue(thou.matches("from 12 blanks: \\+\\d\\.\\d\\d thou, give or take \\d\\.\\d\\d; that is .*"), thou);
    }

    @Test
    void aMakerWithNoneGetsNone() {
        SplittableRandom random = new SplittableRandom(12);
        int offered = 0;
        int changes = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Learned learned = learn(5 + random.nextInt(16), i -> 0, random);
            offered += learned.worthIt() ? 1 : 0;
            changes += learned.change().isEmpty() && learned.drift().isEmpty() ? 0 : 1;
        }
        say("offered to makers with none: " + offered + ", changes or drifts seen where there are none: " + changes + " of " + TRIALS);
        assertTrue(offered <= Math.max(2, 0.02 * TRIALS), offered + " of " + TRIALS);
        assertTrue(changes <= Math.max(3, 0.05 * TRIALS), changes + " of " + TRIALS);
    }

    @Test
    void aMakerWithAnOffsetIsFoundAndPredictedBetter() {
        SplittableRandom random = new SplittableRandom(13);
        int offered = 0;
        for (int trial = 0; trial < TRIALS / 5; trial++) {
            Learned learned = learn(12, i -> 0.03, random);
            offered += learned.worthIt() ? 1 : 0;
            assertTrue(!learned.worthIt() || learned.with() < learned.without());
        }
        assertTrue(offered >= 0.95 * (TRIALS / 5), offered + " of " + TRIALS / 5);
    }

    @Test
    void aChangeOfBatchIsNoticedAndOnlyWhatCameSinceIsUsed() {
        SplittableRandom random = new SplittableRandom(14);
        int noticed = 0;
        int named = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            Learned learned = learn(16, i -> i < 8 ? 0 : 0.045, random);
            noticed += learned.change().isEmpty() ? 0 : 1;
            named += learned.change().contains("The cane batch changed there from bank 12 to bank 13") ? 1 : 0;
            if (!learned.change().isEmpty() && learned.said()) {
                assertTrue(learned.lessons().size() < 16);
                assertEquals(0.045, learned.delta(), 0.02);
            }
        }
        say("change by 1.5 turns after 8 of 16 noticed in " + noticed + ", at the very place in " + named + " of " + TRIALS);
        assertTrue(noticed >= 0.95 * TRIALS, noticed + " of " + TRIALS);
        assertTrue(named >= 0.8 * TRIALS, named + " of " + TRIALS);
    }

    @Test
    void aBatchThatIsNotedIsToldFromFewerBlanks() {
        Learned learned = learn(8, i -> i < 4 ? 0 : 0.05, new SplittableRandom(18));
        assertTrue(learned.change().contains("The cane batch changed there from bank 12 to bank 13"), learned.change());
        assertEquals("4 blanks since the change; at least 5 are needed before anything is learned.", learned.refused());
    }

    @Test
    void aDriftIsToldFromAChange() {
        Learned learned = learn(24, i -> 0.004 * i - 0.03, new SplittableRandom(15));
        assertEquals("", learned.change());
        assertEquals(0.004, learned.drift().orElseThrow().perBlank(), 0.002);
    }

    @Test
    void fewBlanksAreRefused() {
        Learned learned = learn(4, i -> 0.03, new SplittableRandom(16));
        assertFalse(learned.said());
        assertEquals("4 blanks; at least 5 are needed before anything is learned.", learned.refused());
        assertTrue(new Learner(t -> Optional.empty()).learn(List.of(tie(1, "", 0, new SplittableRandom(1)))).get(0).refused().startsWith("0 blanks"));
    }

    @Test
    void groupsAreKeptApartAndOrderedByDate() {
        SplittableRandom random = new SplittableRandom(17);
        List<Tied> log = new ArrayList<>();
        for (int i = 12; i >= 1; i--) {
            Tied t = tie(i, "bank 12", 0.02, random);
            log.add(i % 2 == 0 ? t : new Tied(t.number(), t.on(), "Tomas", "", t.from(), t.how(), t.seen(), "", 0));
        }
        List<Learned> learned = new Learner(t -> Optional.of(DESIGN)).learn(log);
        assertEquals(List.of("Ines", "Tomas"), learned.stream().map(l -> l.group().maker()).toList());
        assertEquals(List.of("2", "4", "6", "8", "10", "12"), learned.get(0).lessons().stream().map(l -> l.tied().number()).toList());
    }
}

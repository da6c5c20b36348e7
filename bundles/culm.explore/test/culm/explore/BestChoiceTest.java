package culm.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Cut;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.blank.rules.Rules;
import culm.explore.internal.run.Paired;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.Waisted;
import culm.geometry.shape.WidthMeasure;
import culm.geometry.staple.MeasuredStaple;

class BestChoiceTest {
    private static final Study LONG_TIE = new Study(Designs.example().with(Inputs.TIE_LENGTH, 73.5), Designs.nine(), Limits.STANDARD, Rules.load());

    @Test
    void fewCombinationsAreAllTried() {
        Axis ties = Axis.Numbers.stepped(Inputs.TIE_LENGTH, "tie length", 70, 75, 0.5);
        Chosen chosen = BestChoice.search(LONG_TIE, List.of(Free.among(ties)), 5, 2, Watcher.none());
        assertTrue(chosen.every() && chosen.certain(), chosen.texts().toString());
        assertEquals(11, chosen.tried());
        double best = 0;
        for (double tie : ((Axis.Numbers) ties).values()) {
            best = Math.max(best, ToleranceRun.run(LONG_TIE.about(LONG_TIE.base().with(Inputs.TIE_LENGTH, tie)), 20_000, 99, 2, Watcher.none()).passed().value());
        }
        assertEquals(best, chosen.best().passed().value(), 0.015);
        assertEquals(ToleranceRun.run(LONG_TIE, chosen.baseline().blanks(), 5, 2, Watcher.none()).passed(), chosen.baseline().passed(), "as a run of the same seed tells it");
        assertEquals(chosen.gain(), chosen.best().passed().value() - chosen.baseline().passed().value());
        assertTrue(chosen.gainLow() < chosen.gain() && chosen.gain() < chosen.gainHigh());
    }

    @Test
    void manyAreSearched() {
        List<Free> free = List.of(Free.between(Inputs.TIE_LENGTH, "tie length", 70.5, 75), Free.between(Inputs.WRAP_TOP, "top of the wrap", 45.5, 46.9));
        Chosen searched = BestChoice.search(LONG_TIE, free, 5, 2, Watcher.none());
        Chosen tried = BestChoice.search(LONG_TIE, List.of(Free.among(Axis.Numbers.spaced(Inputs.TIE_LENGTH, "", 70.5, 75, 10)),
                Free.among(Axis.Numbers.spaced(Inputs.WRAP_TOP, "", 45.5, 46.9, 8))), 5, 2, Watcher.none());
        assertTrue(!searched.every());
        assertTrue(searched.best().passed().value() > tried.best().passed().value() - 0.01, searched.best().passed() + " against " + tried.best().passed());
    }

    /** A staple of another kind has other inputs; it varies as is usual for it, and brings how it was measured. */
    @Test
    void partsOfOtherKindsAreChosenAmong() {
        Blank base = LONG_TIE.base();
        Blank rolled = new BlankBuilder(Profile.standard(new MeasuredStaple()), base.gouge(), base.shape()).set(Inputs.STAPLE_LENGTH, 46.5)
                .tolerance(Inputs.STAPLE_LENGTH, 0.3, true).build();
        Blank round = new BlankBuilder(base.staple(), base.gouge(), Profile.standard(new Waisted())).cut(new Cut(WidthMeasure.ARC, EdgeKind.RADIAL, false, true)).build();
        Axis staples = new Axis.Parts("staple", "staple", List.of(Axis.Choice.of("as it is", "staple", base), Axis.Choice.of("measured", "staple", rolled)));
        Axis shapes = new Axis.Parts("shape", "shape", List.of(Axis.Choice.of("as it is", "shape", base), Axis.Choice.of("round", "shape", round)));
        Study study = new Study(base, Usual.of(base), Limits.STANDARD, Rules.load());
        Chosen chosen = BestChoice.search(study, List.of(Free.among(staples), Free.among(shapes)), 5, 1, Watcher.none());
        assertEquals(4, chosen.tried());
        Blank both = ((Axis.Parts) shapes).choices().get(1).into().apply(((Axis.Parts) staples).choices().get(1).into().apply(base));
        assertEquals(new Cut(WidthMeasure.ARC, EdgeKind.RADIAL, false, base.cut().gougeDry()), both.cut());
        assertEquals(0.3, both.inputs().stream().filter(i -> i.path().equals(Inputs.STAPLE_LENGTH)).findFirst().orElseThrow().tolerance().plusMinus());
        assertEquals(base.number(Inputs.TIE_LENGTH), both.number(Inputs.TIE_LENGTH));
        double alone = ToleranceRun.run(new Study(both, Usual.of(both), Limits.STANDARD, Rules.load()), 50_000, 6, 1, Watcher.none()).passed().value();
        double found = ToleranceRun.run(study.about(both, List.of("staple", "shape")), 50_000, 6, 1, Watcher.none()).passed().value();
        assertEquals(alone, found, 0.01);
    }

    /** Newcombe 1998, table II, method 10: 36 both, 12 and 2, 0 neither, of 50: difference 0.2, interval 0.0569 to 0.3404; from memory. */
    @Test
    void pairedIntervalsAreNewcombes() {
        double[] interval = Paired.interval(new long[] {36, 12, 2, 0});
        assertEquals(0.0569, interval[0], 5e-4);
        assertEquals(0.3404, interval[1], 5e-4);
    }
}

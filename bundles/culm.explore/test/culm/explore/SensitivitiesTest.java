package culm.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Fit;
import culm.blank.Inputs;

class SensitivitiesTest {
    private static double turns(Blank blank) {
        return (blank.number(Inputs.WRAP_TOP) - ClosingFinder.find(blank).at().orElseThrow()) / blank.number(Inputs.THREAD_PITCH);
    }

    @Test
    void saysHowFarTurnsMove() {
        Blank blank = Designs.example();
        List<Effect> effects = Sensitivities.of(Assessor.assess(blank)).effects();
        assertEquals(1, effects.stream().mapToDouble(Effect::share).sum(), 1e-12);
        for (String path : List.of(Inputs.TIE_LENGTH, Inputs.TUBE, "gouge.side", "shape.places[5].width", Inputs.WRAP_TOP, Inputs.THREAD_PITCH)) {
            Effect effect = effects.stream().filter(e -> e.path().equals(path)).findFirst().orElseThrow();
            double value = blank.value(path).getAsDouble();
            double moved = (turns(blank.with(path, value + 0.001)) - turns(blank.with(path, value - 0.001))) * 5;
            assertEquals(moved, effect.perHundredth(), 1e-4 * Math.max(1, Math.abs(moved)), path);
        }
        for (int i = 1; i < effects.size(); i++) {
            assertTrue(Math.abs(effects.get(i - 1).perTolerance()) >= Math.abs(effects.get(i).perTolerance()));
        }
    }

    /** The same parts again: only the reading counts. One part changed: what is listed adds up to the give or take of the verdict. */
    @Test
    void withAFitTheyAddUpToTheVerdict() {
        Blank worked = Designs.example();
        Fit fit = Fit.to(worked, turns(worked) - 0.3, Fit.HALF_A_TURN);
        List<Effect> again = Sensitivities.of(Assessor.assess(worked.edit().fit(fit).build())).effects();
        assertEquals(0.5, Math.abs(again.get(0).perTolerance()), 1e-6, again.get(0).label());
        assertTrue(again.stream().skip(1).allMatch(e -> Math.abs(e.perTolerance()) < 1e-6), again.toString());
        Blank changed = worked.edit().fit(fit).build().with("shape.places[5].width", worked.value("shape.places[5].width").getAsDouble() + 0.05).with(Inputs.TIE_LENGTH, 71.5);
        List<Effect> effects = Sensitivities.of(Assessor.assess(changed)).effects();
        assertTrue(effects.stream().anyMatch(e -> e.label().endsWith("of the blank that worked")), effects.toString());
        double deviation = Math.sqrt(effects.stream().mapToDouble(e -> e.perTolerance() * e.perTolerance() / 3).sum());
        double half = Assessor.assess(changed).turnsBand().orElseThrow().half();
        assertEquals(half, 1.96 * deviation, 0.12 * half);
    }

    @Test
    void withoutAClosingItSaysWhy() {
        Sensitivities none = Sensitivities.of(Assessor.assess(Designs.example().with(Inputs.TIE_LENGTH, 83)));
        assertTrue(none.effects().isEmpty() && !none.why().isEmpty());
    }

    @Test
    void usualSpreadsRun() {
        Blank blank = Designs.example().with(Inputs.COMPRESSION, 0.05).with(Inputs.TIE_LENGTH, 70.5);
        List<Varied> usual = Usual.of(blank);
        Varied folded = usual.stream().filter(v -> v.path().equals(Inputs.FOLDED_LENGTH)).findFirst().orElseThrow();
        assertEquals(List.of("shape.places[7].fromFold"), folded.also());
        assertTrue(usual.stream().noneMatch(v -> v.path().equals("shape.places[0].fromFold")));
        ToleranceResult result = ToleranceRun.run(new Study(blank, usual, culm.blank.Limits.STANDARD, culm.blank.rules.Rules.load()), 20_000, 1, 2, Watcher.none());
        assertEquals(0, result.refused());
        assertEquals(0, result.reference());
        assertEquals(0, result.never());
        double half = Assessor.assess(blank).turnsBand().orElseThrow().half();
        assertEquals(half, 1.96 * result.turns().deviation(), 0.1 * half);
    }
}

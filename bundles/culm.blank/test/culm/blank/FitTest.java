package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import culm.geometry.GeometryException;
import culm.geometry.profile.Values;
import culm.geometry.shape.Outline;
import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.WidthMeasure;
import culm.geometry.words.Told;

/** Fit to a blank that works; what hangs on a blank besides. */
class FitTest {
    private static final Blank WORKED = Sample.blank();

    /** Whatever was seen on the overlap, the fitted model meets it; a fit on top of a fit starts from the bare blank. */
    @Test
    void theFittedModelMeetsWhatWasSeen() {
        for (double turns = 0.2; turns < 4; turns += 0.3) {
            Fit fit = Fit.to(WORKED, turns, Fit.HALF_A_TURN);
            Blank fitted = WORKED.edit().fit(fit).build();
            assertEquals(turns, Assessor.outline(fitted).turnsLeft().orElseThrow(), 1e-8);
            assertEquals(fit.delta(), fitted.number(Inputs.DELTA));
            assertEquals(fit.delta(), Fit.to(fitted, turns, Fit.HALF_A_TURN).delta(), 1e-12);
            assertEquals(0, fitted.edit().fit(null).build().number(Inputs.DELTA));
        }
    }

    /** Swelling and a bias of the widths are absorbed alike: their fitted answers to another tie agree within a twentieth of a turn. */
    @Test
    void whatTheFitAbsorbsCannotBeToldApart() {
        Blank swollen = WORKED.with(Inputs.SWELL_WIDTH, 0.02);
        double turns = Assessor.outline(swollen).turnsLeft().getAsDouble();
        Blank fitted = WORKED.edit().fit(Fit.to(WORKED, turns, 0.5)).build();
        for (double tie : new double[] {71.5, 72.5}) {
            assertEquals(Assessor.outline(swollen.with(Inputs.TIE_LENGTH, tie)).turnsLeft().getAsDouble(),
                    Assessor.outline(fitted.with(Inputs.TIE_LENGTH, tie)).turnsLeft().getAsDouble(), 0.05);
        }
    }

    @Test
    void whatCannotHaveBeenSeenIsRefused() {
        GeometryException above = assertThrows(GeometryException.class, () -> Fit.to(WORKED, -2, 0.5));
        assertEquals(Inputs.WRAP_TOP, above.path());
        assertTrue(above.getMessage().startsWith("-2.0 turns left put the closing at 47.3 mm"), above.getMessage());
        assertTrue(above.told().startsWith("-2.0 turns left put the closing at " + Told.length(46.5 + 2 * 0.41, 1) + ", which"), "its lengths can be told in another unit");
        assertThrows(GeometryException.class, () -> Fit.to(WORKED, 40, 0.5));
        assertThrows(GeometryException.class, () -> Fit.to(WORKED.with(Inputs.TUBE, 6), 1, 0.5));
    }

    @Test
    void aBlankIsNotChangedByWhatIsMadeFromIt() {
        Blank other = WORKED.with("shape.places[5].width", 4.9).with(Inputs.TIE_LENGTH, 71);
        assertEquals(4.83, WORKED.value("shape.places[5].width").orElseThrow());
        assertEquals(72, WORKED.number(Inputs.TIE_LENGTH));
        assertEquals(4.9, other.value("shape.places[5].width").orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> WORKED.with("shape.places[99].width", 1));
        assertThrows(IllegalArgumentException.class, () -> WORKED.with("staple.nothing", 1));
    }

    @Test
    void theOutlineOfTheCane() {
        Blank eared = Sample.builder().shape(new Profile<>(new StraightTaper(), Values.NONE.with("fold", 7.0).with("end", 4.35)))
                .set(Inputs.EARS_WIDTH, 0.8).set(Inputs.EARS_LENGTH, 3).build();
        Outline outline = CaneOutline.of(eared);
        assertEquals(8.6, outline.widthAt(0, WidthMeasure.CHORD), 1e-12);
        assertTrue(outline.complete());
        assertEquals(37, outline.to());
        assertEquals(0, CaneOutline.of(WORKED).earsWidth());
    }

    /** A top measured with thread scales the oval; one that contradicts its axes is refused with both numbers. */
    @Test
    void aTopMeasuredWithThread() {
        Blank measured = WORKED.edit().set(Inputs.CHECK_TURNS, 10).set(Inputs.CHECK_THREAD, 0.1).set(Inputs.CHECK_LENGTH, 92).build();
        double perimeter = Math.sqrt(9.2 * 9.2 - 0.01) - 0.1 * Math.PI;
        assertEquals(perimeter, measured.parts().staple().outside(47).perimeter(), 1e-12);
        assertEquals(3.38 / 2.09, measured.parts().staple().outside(47).halfWide() / measured.parts().staple().outside(47).halfNarrow(), 1e-12);
        Closing wrong = ClosingFinder.find(measured.with(Inputs.CHECK_LENGTH, 180));
        assertEquals("The thread says the staple's top measures 17.69 mm around, its two axes say 8.71 mm; one of them is wrong.", wrong.problem().orElseThrow());
        Closing half = ClosingFinder.find(WORKED.with(Inputs.CHECK_TURNS, 10));
        assertEquals(Inputs.CHECK_LENGTH, half.path());
    }
}

package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.geometry.GeometryException;

/** A blank is what is said of it. */
class BlankTest {
    @Test
    void twoOfWhichTheSameIsSaidAreEqual() {
        Blank blank = Sample.blank();
        assertEquals(blank, blank.edit().build());
        assertEquals(blank.hashCode(), blank.edit().build().hashCode());
        assertEquals(blank, blank.with(Inputs.TIE_LENGTH, 71).with(Inputs.TIE_LENGTH, blank.number(Inputs.TIE_LENGTH)));
    }

    @Test
    void oneDifferenceAnywhereMakesAnother() {
        Blank blank = Sample.blank();
        List<Blank> others = List.of(blank.with(Inputs.TIE_LENGTH, 71), blank.with("shape.places[3].width", 5.8), blank.with("gouge.side", 0.46),
                blank.edit().tolerance(Inputs.TIE_LENGTH, 0.25, true).build(), blank.edit().fit(Fit.to(blank, 1.3, Fit.HALF_A_TURN)).build());
        others.forEach(other -> assertNotEquals(blank, other));
    }

    /** A number changed on a blank whose parts are made gives what the same number gives on one that was never computed. */
    @Test
    void whatIsTakenFromTheBlankBeforeIsWhatWouldBeMade() {
        Blank made = Sample.blank();
        made.parts();
        for (Input input : made.inputs()) {
            Blank moved = made.with(input.path(), input.value() + 1e-3);
            Blank alone = Sample.builder().set(input.path(), input.value() + 1e-3).build();
            assertEquals(told(alone), told(moved), input.path());
            Blank twice = made.with(input.path(), input.value() + 2e-3).with(Inputs.TIE_LENGTH, 71.5).with(input.path(), input.value() + 1e-3);
            assertEquals(told(Sample.builder().set(Inputs.TIE_LENGTH, 71.5).set(input.path(), input.value() + 1e-3).build()), told(twice), input.path());
        }
        assertSame(made.parts().gouge(), made.with(Inputs.STAPLE_LENGTH, 46.9).parts().gouge());
        assertNotSame(made.parts().gouge(), made.with(Inputs.TUBE, 10.6).parts().gouge());
    }

    @Test
    void aNumberThatIsWrongIsRefusedOnWhateverItWasChanged() {
        Blank made = Sample.blank();
        made.parts();
        for (String path : List.of(Inputs.TUBE, "gouge.middle", "shape.places[3].width", Inputs.STAPLE_LENGTH, "staple.bottom")) {
            GeometryException alone = assertThrows(GeometryException.class, () -> Sample.builder().set(path, -1).build().parts());
            GeometryException moved = assertThrows(GeometryException.class, () -> made.with(path, -1).parts());
            assertEquals(alone.getMessage(), moved.getMessage());
            assertEquals(path, moved.path());
            assertEquals(made.parts().foldedLength(), made.with(path, -1).with(path, made.value(path).getAsDouble()).parts().foldedLength());
        }
    }

    private static String told(Blank blank) {
        try {
            Assessment a = Assessor.outline(blank);
            return a.sidesCloseAt() + " " + a.openAtStapleTop() + " " + a.troubles().stream().map(Trouble::sentence).toList();
        } catch (GeometryException e) {
            return e.path() + ": " + e.getMessage();
        }
    }
}

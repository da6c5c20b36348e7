package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

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
}

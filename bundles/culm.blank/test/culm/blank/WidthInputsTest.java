package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.Waisted;

/** Which numbers are widths, found without knowing the type. */
class WidthInputsTest {
    @Test
    void everyWidthOfATableAndNoPlace() {
        Blank blank = Sample.blank();
        List<String> paths = WidthInputs.of(blank);
        assertEquals(8, paths.size());
        assertTrue(paths.stream().allMatch(p -> p.startsWith("shape.places[") && p.endsWith("].width")), paths.toString());
    }

    @Test
    void widthsGivenAsNumbers() {
        assertWidens(Sample.blank().edit().shape(Profile.standard(new StraightTaper())).build());
        assertWidens(Sample.blank().edit().shape(Profile.standard(new Waisted())).build());
    }

    /** The numbers found widen the blank as one length added to every width does. */
    private static void assertWidens(Blank blank) {
        List<String> paths = WidthInputs.of(blank);
        assertTrue(paths.size() >= 2, paths.toString());
        Blank wider = blank;
        for (String path : paths) {
            wider = wider.with(path, blank.value(path).orElseThrow() + 0.07);
        }
        Blank added = Widened.of(blank, 0.07);
        for (double s = 0; s < blank.parts().foldedLength(); s += 1.3) {
            assertEquals(added.parts().width().at(s), wider.parts().width().at(s), 1e-9);
        }
    }
}

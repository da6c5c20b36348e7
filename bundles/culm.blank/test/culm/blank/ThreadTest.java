package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import culm.geometry.staple.StraightSidedOval;

class ThreadTest {
    @ParameterizedTest
    @CsvFileSource(files = "test/values/thread.csv", numLinesToSkip = 1)
    void values(String what, double first, double second, double third, double expected, double tolerance, String source) {
        double found = what.equals("helix") ? ThreadSize.helix(first, second, third) : ThreadSize.diameter(first, second, third);
        assertEquals(expected, found, tolerance, source);
    }

    /** On a round straight staple, below the cane, the way is a helix: one layer on brass, diameter D + d. */
    @Test
    void onBareBrassTheWayIsAHelix() {
        Blank tube = Sample.builder().staple(new Profile<>(new StraightSidedOval(), Sample.blank().staple().values().with("bottom", 5.0)
                .with("topWide", 5.0).with("topNarrow", 5.0))).set(Inputs.WRAP_TOP, 34).set(Inputs.START_TURNS, 0).build();
        ThreadPath path = ThreadPath.along(new Seam(tube), 25, 34, 0.41, 0.5, 0);
        assertEquals(ThreadSize.helix(5.41, 18, 0.5), path.length(), 1e-9);
        assertEquals(18, path.turnsDown(), 1e-12);
    }

    /** Over the turns that go up, those that come down lie two threads further out. */
    @Test
    void turnsOnTurnsAreLonger() {
        Blank tube = Sample.builder().staple(new Profile<>(new StraightSidedOval(), Sample.blank().staple().values().with("bottom", 5.0)
                .with("topWide", 5.0).with("topNarrow", 5.0))).build();
        ThreadPath path = ThreadPath.along(new Seam(tube), 25, 34, 0.41, 0.5, 6);
        assertEquals(ThreadSize.helix(5.41, 6, 0.5), path.lengthUp(), 1e-9);
        assertEquals(ThreadSize.helix(5.41, 12, 0.5) + ThreadSize.helix(5 + 3 * 0.41, 6, 0.5), path.lengthDown(), 1e-9);
    }

    @Test
    void aSpool() {
        ThreadPath path = Assessor.assess(Sample.blank()).thread().orElseThrow();
        Spool spool = new Spool(100_000, 300);
        assertEquals(806.885 + 300, spool.perBlank(path), 5e-4);
        assertEquals(90, spool.blanks(path));
        assertTrue(spool.left(path, 90) >= 0 && spool.left(path, 91) < 0);
        assertThrows(IllegalArgumentException.class, () -> new Spool(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> ThreadSize.diameter(135, 1140, 1.2));
        assertThrows(IllegalArgumentException.class, () -> ThreadSize.diameter(0, 1140, 0.75));
    }
}

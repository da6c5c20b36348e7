package culm.geometry.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;

import org.junit.jupiter.api.Test;

import culm.geometry.GeometryException;

class ToldTest {
    private static final LengthText INCHES = new LengthText() {
        @Override
        public String number(double mm, int digits) {
            return String.format(Locale.ROOT, "%.3f", mm / 25.4);
        }

        @Override
        public String sign() {
            return "in";
        }
    };

    @Test
    void aSentenceIsToldInMmOrInAnotherUnitFromTheWholeValue() {
        String told = "From " + Told.number(25.44, 1) + " to " + Told.length(50.8, 1) + ", $1 | 3.0 mm.";
        assertEquals("From 25.4 to 50.8 mm, $1 | 3.0 mm.", Told.mm(told));
        assertEquals("From 1.002 to 2.000 in, $1 | 3.0 mm.", Told.in(told, INCHES));
        assertEquals("no length", Told.in("no length", INCHES));
    }

    @Test
    void nothingIsLessThanNothing() {
        assertEquals("0.0 mm", Told.mm(Told.length(-0.04, 1)));
        assertEquals("-0.1 mm", Told.mm(Told.length(-0.06, 1)));
    }

    @Test
    void aRefusalIsHeardInMmAndKeepsItsLengths() {
        GeometryException refused = new GeometryException("wall", "A wall of " + Told.given(-0.5) + " " + Told.UNIT + " is not possible.").under("staple");
        assertEquals("A wall of -0.5 mm is not possible.", refused.getMessage());
        assertEquals("A wall of -0.020 in is not possible.", Told.in(refused.told(), INCHES));
    }
}

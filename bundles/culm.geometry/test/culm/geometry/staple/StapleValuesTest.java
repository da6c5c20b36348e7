package culm.geometry.staple;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

import culm.geometry.GeometryException;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;

class StapleValuesTest {
    private static final List<StapleType> ROUND_BELOW = List.of(new StraightSidedOval(), new RolledSheet());

    private static Staple staple(StapleType type, double bottom, double wide, double narrow, double wall, double length) {
        return new Staple(type.outside(Values.NONE.with("bottom", bottom).with("topWide", wide).with("topNarrow", narrow), length), wall);
    }

    @ParameterizedTest
    @CsvFileSource(files = "test/values/outside-volume.csv", numLinesToSkip = 1)
    void outsideVolume(String type, double bottom, double wide, double narrow, double length, double from, double to, double expected, double tolerance,
            String source) {
        StapleType kind = ROUND_BELOW.stream().filter(t -> t.id().equals(type)).findFirst().orElseThrow();
        assertEquals(expected, staple(kind, bottom, wide, narrow, 0.25, length).outsideVolume(from, to), tolerance, source);
    }

    @ParameterizedTest
    @CsvFileSource(files = "test/values/bore-volume.csv", numLinesToSkip = 1)
    void boreVolume(double bottom, double wide, double narrow, double wall, double length, double from, double to, double expected, double tolerance,
            String source) {
        assertEquals(expected, staple(new StraightSidedOval(), bottom, wide, narrow, wall, length).boreVolume(from, to), tolerance, source);
    }

    @ParameterizedTest
    @CsvFileSource(files = "test/values/half-angles.csv", numLinesToSkip = 1)
    void halfAngles(double bottom, double wide, double narrow, double wall, double length, double expectedWide, double expectedNarrow, double bore,
            double boreAt20, double tolerance, String source) {
        Staple staple = staple(new StraightSidedOval(), bottom, wide, narrow, wall, length);
        HalfAngles ends = staple.halfAngles();
        assertEquals(expectedWide, ends.wide(), tolerance, source);
        assertEquals(expectedNarrow, ends.narrow(), tolerance, source);
        assertEquals(bore, ends.bore().orElseThrow(), tolerance, source);
        HalfAngles local = staple.halfAnglesAt(20);
        assertEquals(expectedWide, local.wide(), 1e-7, source);
        assertEquals(expectedNarrow, local.narrow(), 1e-7, source);
        assertEquals(boreAt20, local.bore().orElseThrow(), 1e-7, source);
        assertEquals(expectedWide, staple.halfAnglesAt(0).wide(), 1e-7, source);
        assertEquals(expectedWide, staple.halfAnglesAt(length).wide(), 1e-7, source);
    }

    /** Where the wall is refused, the outside still has its angles. */
    @Test
    void halfAnglesWithoutABore() {
        Staple flat = staple(new StraightSidedOval(), 5.4, 8, 0.4, 0.25, 47);
        assertTrue(flat.halfAngles().bore().isEmpty());
        assertEquals(Math.atan((2.7 - 4) / 47), flat.halfAngles().wide(), 1e-15);
        GeometryException refused = assertThrows(GeometryException.class, flat::boreVolume);
        assertEquals("wall", refused.path());
        assertTrue(refused.getMessage().contains("does not fit inside an oval"), refused.getMessage());
        assertTrue(flat.boreVolume(0, 20) > 0, "lower down the wall fits");
    }

    /** The top type 3 with two rows is the straight-sided oval; its numerical volume meets the closed one. */
    @Test
    void twoMeasuredPlacesAreTheStraightSidedOval() {
        StapleOutside measured = new MeasuredStaple().outside(
                Values.NONE.with("places", Table.of(new double[] {0, 5.4, 5.4}, new double[] {47, 3.38, 2.09})), 47);
        Staple straight = staple(new StraightSidedOval(), 5.4, 3.38, 2.09, 0.25, 47);
        assertTrue(measured.closedVolume().isEmpty());
        assertEquals(straight.outsideVolume(0, 47), new Staple(measured, 0.25).outsideVolume(0, 47), 1e-10);
        assertEquals(straight.boreVolume(), new Staple(measured, 0.25).boreVolume(), 1e-10);
    }

    /** Rows keep their distance from the top when the length is varied; the first stays at the bottom. */
    @Test
    void measuredRowsKeepTheirDistanceFromTheTop() {
        Values rows = Values.NONE.with("places", Table.of(new double[] {0, 5.4, 5.2}, new double[] {30, 4.2, 3.2}, new double[] {47, 3.38, 2.09}));
        StapleOutside shorter = new MeasuredStaple().outside(rows, 46);
        assertEquals(2.1, shorter.section(29).halfWide(), 1e-15);
        assertEquals(1.69, shorter.section(46).halfWide(), 1e-15);
        assertEquals(2.7, shorter.section(0).halfWide(), 1e-15);
        assertThrows(GeometryException.class, () -> new MeasuredStaple().outside(rows, 16));
    }

    @Test
    void aScaledTopHasTheMeasuredPerimeter() {
        double perimeter = ThreadMeasure.perimeter(10, 0.1, 90.0);
        assertEquals(90.0, ThreadMeasure.unwound(10, 0.1, perimeter), 1e-12);
        assertEquals(Math.sqrt(81 - 0.01) - 0.1 * Math.PI, perimeter, 1e-12);
        for (StapleType type : ROUND_BELOW) {
            Values plain = type.standard();
            double k = perimeter / type.outside(plain, 47).section(47).perimeter();
            assertEquals(perimeter, type.outside(type.topScaled(plain, k), 47).section(47).perimeter(), 1e-12);
        }
        assertThrows(GeometryException.class, () -> ThreadMeasure.perimeter(10, 0.1, 0.9));
    }

    /** A round mandrel of half-angle 1/20 in a round bore of the same taper goes in until it touches all along. */
    @ParameterizedTest
    @CsvSource({"4.0,2.0,40,47,30.0", "3.0,1.0,40,47,40.0"})
    void aRoundMandrelOfTheSameTaper(double base, double tip, double mandrelLength, double length, double expected) {
        double wall = 0.5;
        Staple staple = staple(new StraightSidedOval(), 4.5, 4.5 - length / 20, 4.5 - length / 20, wall, length);
        MandrelFit fit = MandrelFit.of(staple, staple(new StraightSidedOval(), base, tip, tip, 0.1, mandrelLength).shape());
        assertEquals(expected, fit.tip(), 1e-5);
        assertEquals(expected < mandrelLength, fit.stops());
    }

    /** Bore 3.5 round, straight; mandrel from 5 to 2 over 60: it is 3.5 wide half way, so the tip goes in 30. */
    @Test
    void aMandrelStopsAtTheBottomOfAStraightTube() {
        Staple tube = staple(new StraightSidedOval(), 4, 4, 4, 0.25, 47);
        MandrelFit fit = MandrelFit.of(tube, staple(new StraightSidedOval(), 5, 2, 2, 0.1, 60).shape());
        assertEquals(30, fit.tip(), 2e-6);
        assertEquals(0, fit.touchesAt(), 1e-3);
        assertTrue(fit.stops());
        MandrelFit through = MandrelFit.of(tube, staple(new StraightSidedOval(), 3.4, 1, 1, 0.1, 60).shape());
        assertFalse(through.stops());
        assertEquals(60, through.tip());
        assertTrue(Double.isNaN(through.touchesAt()));
    }

    /** An oval mandrel made like the staple, but thinner by the wall and a little more: it touches at the narrow axis. */
    @Test
    void anOvalMandrelTouchesWhereItIsTooThick() {
        Staple staple = staple(new RolledSheet(), 5.4, 3.38, 2.09, 0.25, 47);
        MandrelFit fit = MandrelFit.of(staple, staple(new StraightSidedOval(), 5.2, 2.4, 1.7, 0.1, 60).shape());
        assertTrue(fit.stops() && fit.tip() > 20 && fit.tip() < 60);
        double touch = fit.touchesAt();
        double gap = staple.bore(touch).support(fit.direction())
                - staple(new StraightSidedOval(), 5.2, 2.4, 1.7, 0.1, 60).shape().section(60 - fit.tip() + touch).support(fit.direction());
        assertEquals(0, gap, 1e-6);
    }
}

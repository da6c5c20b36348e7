package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MeasuredGouge;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.gouge.OffsetCircle;
import culm.geometry.profile.MeasuredPlaces;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.Waisted;
import culm.geometry.staple.MeasuredStaple;
import culm.geometry.staple.RolledSheet;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/** A staple, gouge or shape that is told by places from now on closes where it did, as far as a caliper's hundredths tell. */
class OwnPlacesTest {
    /** Half a hundredth on both axes is 0.016 mm of perimeter, which changes by 0.18 mm on every mm of height. */
    private static final double ROUNDING = 0.09;

    private static double closes(Blank blank) {
        return ClosingFinder.find(blank).at().orElseThrow();
    }

    private static Values places(Blank blank, String part) {
        return Values.NONE.with(MeasuredPlaces.PLACES, OwnPlaces.of(blank, part).orElseThrow());
    }

    @Test
    void everyStapleClosesWhereItDid() {
        for (StapleType type : List.of(new StraightSidedOval(), new RolledSheet())) {
            for (double topWide : new double[] {3.3, 3.38, 3.47}) {
                Blank before = Sample.blank().edit().staple(new Profile<>(type, type.standard().with("topWide", topWide).with("topNarrow", 2.13))).build();
                Blank after = before.edit().staple(new Profile<>(new MeasuredStaple(), places(before, "staple"))).build();
                assertEquals(closes(before), closes(after), ROUNDING, type.id() + " " + topWide);
            }
        }
    }

    @Test
    void everyShapeClosesWhereItDid() {
        for (ShapeType type : List.of(new StraightTaper(), new Waisted())) {
            for (double end : new double[] {4.2, 4.35}) {
                Blank before = Sample.blank().edit().shape(new Profile<>(type, type.standard().with("end", end))).build();
                Blank after = before.edit().shape(new Profile<>(new MeasuredShape(), places(before, "shape"))).build();
                assertEquals(closes(before), closes(after), ROUNDING, type.id() + " " + end);
            }
        }
    }

    /** A twentieth thicker, 0.03 mm, closes 0.29 mm higher (geometry.md, section 11); half a hundredth 0.05 mm. */
    @Test
    void everyGougeClosesWhereItDid() {
        for (GougeType type : List.of(new Concentric(), new OffsetCircle(), new MiddleAndSide())) {
            for (double middle : new double[] {0.57, 0.6}) {
                Blank before = Sample.blank().edit().gouge(new Profile<>(type, type.standard().with("middle", middle))).build();
                Blank after = before.edit().gouge(new Profile<>(new MeasuredGouge(), places(before, "gouge"))).build();
                assertEquals(closes(before), closes(after), ROUNDING, type.id() + " " + middle);
            }
        }
    }

    @Test
    void theyAreReadAsACaliperReadsThem() {
        Table rows = OwnPlaces.of(Sample.blank(), "staple").orElseThrow();
        assertEquals(0, rows.cell(0, 0));
        assertEquals(Sample.blank().number(Inputs.STAPLE_LENGTH), rows.cell(rows.rows() - 1, 0), 0.005);
        for (int r = 0; r < rows.rows(); r++) {
            for (int c = 0; c < rows.columns(); c++) {
                assertEquals(Math.rint(rows.cell(r, c) * 100) / 100, rows.cell(r, c));
            }
        }
    }

    @Test
    void whatCannotBeComputedHasNone() {
        assertEquals(Optional.empty(), OwnPlaces.of(Sample.blank(), "thread"));
        Blank late = Sample.blank().edit().shape(new Profile<>(new Waisted(), new Waisted().standard().with("throatAt", 100))).build();
        assertTrue(OwnPlaces.of(late, "shape").isEmpty(), "its throat lies beyond the end of the cane");
    }
}

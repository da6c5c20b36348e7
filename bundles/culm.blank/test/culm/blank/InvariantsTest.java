package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import culm.blank.solve.WidthChange;
import culm.geometry.gouge.Concentric;
import culm.geometry.profile.Quantity;
import culm.geometry.profile.Table;
import culm.geometry.profile.Values;
import culm.geometry.shape.Waisted;

/** What has to hold whatever the numbers, over seeded designs. */
class InvariantsTest {
    private static final int DESIGNS = Boolean.getBoolean("culm.long") ? 5000 : 400;

    /** Never closes counts as higher than anything. */
    private static double closes(Blank blank) {
        Closing closing = ClosingFinder.find(blank);
        assertTrue(closing.problem().isEmpty(), () -> closing.problem().get());
        return closing.at().orElse(Double.POSITIVE_INFINITY);
    }

    @Test
    void everyLengthScaledByTheSameFactor() {
        double k = 1.07;
        for (int number = 0; number < DESIGNS / 4; number++) {
            Blank blank = Designs.number(number);
            Assessment a = Assessor.assess(blank);
            Assessment b = Assessor.assess(scaled(blank, k));
            assertEquals(a.closing().problem(), b.closing().problem(), "design " + number);
            assertScaled(a.sidesCloseAt(), b.sidesCloseAt(), k, 1e-8);
            assertScaled(a.turnsLeft(), b.turnsLeft(), 1, 1e-8);
            assertScaled(a.openAtStapleTop(), b.openAtStapleTop(), k, 1e-9);
            assertScaled(a.boreVolume(), b.boreVolume(), k * k * k, 1e-7);
            assertScaled(a.tieLengthPerTurn(), b.tieLengthPerTurn(), k, 1e-4);
            assertEquals(k * a.thread().orElseThrow().length(), b.thread().orElseThrow().length(), 1e-6);
            assertEquals(a.thread().get().turnsDown(), b.thread().get().turnsDown(), 1e-9);
            a.turnsBand().ifPresent(band -> {
                assertEquals(band.low(), b.turnsBand().orElseThrow().low(), 2e-3);
                assertEquals(band.high(), b.turnsBand().orElseThrow().high(), 2e-3);
            });
        }
    }

    private static void assertScaled(OptionalDouble a, OptionalDouble b, double k, double tolerance) {
        assertEquals(a.isPresent(), b.isPresent());
        a.ifPresent(value -> assertEquals(k * value, b.getAsDouble(), tolerance * Math.max(1, Math.abs(value))));
    }

    private static Blank scaled(Blank blank, double k) {
        BlankBuilder edit = blank.edit();
        for (Input input : blank.inputs()) {
            if (input.parameter().quantity() == Quantity.LENGTH) {
                edit.tolerance(input.path(), k * input.tolerance().plusMinus(), true);
            }
        }
        edit.staple(blank.staple().with(scaled(blank.staple().values(), k))).gouge(blank.gouge().with(scaled(blank.gouge().values(), k)))
                .shape(blank.shape().with(scaled(blank.shape().values(), k)));
        blank.gougeEnd().ifPresent(end -> edit.gougeEnd(end.with(scaled(end.values(), k))));
        blank.insideWidths().ifPresent(rows -> edit.insideWidths(scaled(rows, k)));
        Inputs.all().forEach((path, parameter) -> {
            if (parameter.quantity() == Quantity.LENGTH && !Double.isNaN(blank.number(path))) {
                edit.set(path, k * blank.number(path));
            }
        });
        return edit.build();
    }

    private static Values scaled(Values values, double k) {
        Values all = Values.NONE;
        for (String id : values.numbers().keySet()) {
            all = all.with(id, k * values.number(id));
        }
        for (String id : values.tables().keySet()) {
            all = all.with(id, scaled(values.table(id), k));
        }
        return all;
    }

    private static Table scaled(Table rows, double k) {
        Table all = rows;
        for (int r = 0; r < rows.rows(); r++) {
            for (int c = 0; c < rows.columns(); c++) {
                all = all.with(r, c, k * rows.cell(r, c));
            }
        }
        return all;
    }

    @Test
    void thickerEverywhereNeverClosesLower() {
        int moved = 0;
        for (int number = 0; number < DESIGNS; number++) {
            Blank blank = Designs.number(number);
            double before = closes(blank);
            double after = closes(thicker(blank, 0.02));
            assertTrue(after >= before - 1e-9, "design " + number + ": " + before + " became " + after);
            moved += after > before + 1e-6 ? 1 : 0;
        }
        assertTrue(moved > DESIGNS / 2, "it has to matter: " + moved);
    }

    private static Blank thicker(Blank blank, double by) {
        BlankBuilder edit = blank.edit().gouge(blank.gouge().with(thicker(blank.gouge().values(), by)));
        blank.gougeEnd().ifPresent(end -> edit.gougeEnd(end.with(thicker(end.values(), by))));
        return edit.build();
    }

    private static Values thicker(Values values, double by) {
        Values all = values;
        for (String id : values.numbers().keySet()) {
            double change = switch (id) {
                case "middle", "side" -> by;
                case "radius" -> -by;
                default -> 0;
            };
            all = all.with(id, values.number(id) + change);
        }
        for (String id : values.tables().keySet()) {
            Table rows = values.table(id);
            for (int r = 0; r < rows.rows(); r++) {
                rows = rows.with(r, 1, rows.cell(r, 1) + by);
            }
            all = all.with(id, rows);
        }
        return all;
    }

    @Test
    void aWiderShapeNeverClosesHigher() {
        int moved = 0;
        for (int number = 0; number < DESIGNS; number++) {
            Blank blank = Designs.number(number);
            double before = closes(blank);
            double after = closes(WidthChange.widened(blank, 0.04));
            assertTrue(after <= before + 1e-9, "design " + number + ": " + before + " became " + after);
            moved += after < before - 1e-6 ? 1 : 0;
        }
        assertTrue(moved > DESIGNS / 2, "it has to matter: " + moved);
    }

    /** The same gouge all along, and widths that only fall towards the end of the cane. */
    @Test
    void aLongerTieNeverClosesLowerWhereTheShapeNarrowsAllTheWay() {
        int asked = 0;
        for (int number = 0; number < 2 * DESIGNS; number++) {
            Blank blank = Designs.number(number);
            if (blank.gougeEnd().isPresent() || !narrows(blank)) {
                continue;
            }
            double before = closes(blank);
            double after = closes(blank.with(Inputs.TIE_LENGTH, blank.number(Inputs.TIE_LENGTH) + 0.3));
            assertTrue(after >= before - 1e-9, "design " + number + ": " + before + " became " + after);
            asked++;
        }
        assertTrue(asked > DESIGNS / 4, "too few designs narrow all the way: " + asked);
    }

    private static boolean narrows(Blank blank) {
        Parts parts = blank.parts();
        boolean falls = true;
        for (double s = 15; s + 0.1 <= parts.foldedLength(); s += 0.1) {
            double here = s;
            falls &= parts.width().at(here + 0.1) < parts.width().at(here);
            falls &= parts.inside().map(w -> w.at(here + 0.1) < w.at(here)).orElse(true);
        }
        return falls;
    }

    /** A shape that widens again below a high throat: there a longer tie brings wider cane to each height, and closes lower. */
    @Test
    void onAWaistedShapeALongerTieMayCloseLower() {
        Blank waisted = Sample.builder().shape(new Profile<>(new Waisted(), Values.NONE.with("fold", 7.0).with("throatAt", 22.0).with("throat", 4.5).with("end", 5.6)))
                .gouge(new Profile<>(new Concentric(), Values.NONE.with("middle", 0.58))).set("staple.topWide", 3.1).set("staple.topNarrow", 1.9).build();
        double shorter = closes(waisted.with(Inputs.TIE_LENGTH, 71));
        double longer = closes(waisted.with(Inputs.TIE_LENGTH, 72));
        assertTrue(Double.isFinite(shorter) && longer < shorter, shorter + " then " + longer);
    }

    /** A shorter tie closes lower, by about 0.4 mm for each mm; common practice, no source. */
    @Test
    void aShorterTieClosesLower() {
        double moved = closes(Sample.blank()) - closes(Sample.blank().with(Inputs.TIE_LENGTH, 71));
        assertTrue(moved > 0.3 && moved < 0.5, "moved " + moved);
        double perTurn = Assessor.assess(Sample.blank()).tieLengthPerTurn().getAsDouble();
        assertTrue(perTurn > 0.8 && perTurn < 1.1, "tie length for one turn " + perTurn);
    }

    @Test
    void crookedOpensOneSeamAndClosesTheOther() {
        Assessment a = Assessor.assess(Sample.blank().with(Inputs.CROOKED, 0.06));
        Blank straight = Sample.blank();
        double left = a.left().at().orElseThrow();
        double right = a.right().at().orElseThrow();
        assertEquals(-0.06, new Seam(straight).open(left), 1e-9);
        assertEquals(0.06, new Seam(straight).open(right), 1e-9);
        assertEquals(left, a.sidesCloseAt().getAsDouble());
        Assessment mirrored = Assessor.assess(straight.with(Inputs.CROOKED, -0.06));
        assertEquals(left, mirrored.right().at().getAsDouble());
        assertEquals(left, mirrored.sidesCloseAt().getAsDouble());
        assertEquals(closes(straight), closes(straight.with(Inputs.SLIPPED, 0.4)), "slipped leaves the closing as it is");
    }

    /** Sensitivities are slopes: each against the difference of two closings. */
    @Test
    void sensitivitiesAreSlopesOfTheClosing() {
        Blank blank = Sample.blank();
        for (Sensitivity s : Assessor.assess(blank).sensitivities()) {
            double h = s.input().parameter().quantity() == Quantity.SHARE ? 1e-4 : 1e-3;
            double up = closes(blank.with(s.input().path(), s.input().value() + h));
            Blank less = blank.with(s.input().path(), s.input().value() - h);
            Closing below = ClosingFinder.find(less);
            if (below.problem().isPresent()) {
                continue;
            }
            assertEquals((up - below.at().orElseThrow()) / (2 * h), s.closing(), 2e-3 * Math.max(1, Math.abs(s.closing())), s.input().path());
        }
    }
}

package culm.geometry.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import culm.geometry.GeometryException;
import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.MeasuredGouge;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.WiderShape;
import culm.geometry.staple.MeasuredStaple;
import culm.geometry.words.Told;

/** Described numbers: checked by what is written once. */
class ProfileTest {
    private static final Parameter TOP = Parameter.length("topWide", "top, wide", 0.5, 15, 3.38, 0.05, true, "Outside of the top.");

    @Test
    void aNumberIsRefusedInOneSentence() {
        assertEquals(Optional.empty(), TOP.refuse(0.5));
        assertEquals(Optional.empty(), TOP.refuse(15));
        assertEquals("top, wide 15.1 is outside 0.5 to 15 mm.", TOP.refuse(15.1).orElseThrow());
        assertEquals("top, wide " + Told.given(15.1, "15.1") + " is outside " + Told.given(0.5, "0.5") + " to " + Told.given(15, "15") + " " + Told.UNIT + ".",
                TOP.refusal(15.1).orElseThrow(), "its lengths can be told in another unit");
        assertEquals("top, wide is not a number: NaN.", TOP.refuse(Double.NaN).orElseThrow());
        assertTrue(TOP.refuse(Double.NEGATIVE_INFINITY).isPresent());
        Parameter share = new Parameter("swell", "swelling", Quantity.SHARE, 0, 0.3, 0.02, 0, false, "A share.");
        assertEquals("swelling 0.4 is outside 0 to 0.3.", share.refuse(0.4).orElseThrow());
    }

    @Test
    void aDescriptionMustNotContradictItself() {
        assertThrows(IllegalArgumentException.class, () -> Parameter.length("Top", "top", 0, 1, 0.5, 0, true, "Help."));
        assertThrows(IllegalArgumentException.class, () -> Parameter.length("top", "", 0, 1, 0.5, 0, true, "Help."));
        assertThrows(IllegalArgumentException.class, () -> Parameter.length("top", "top", 1, 0, 0.5, 0, true, "Help."));
        assertThrows(IllegalArgumentException.class, () -> Parameter.length("top", "top", 0, 1, 2, 0, true, "Help."));
        assertThrows(IllegalArgumentException.class, () -> Parameter.length("top", "top", 0, 1, 0.5, -1, true, "Help."));
        assertTrue(Parameter.length("top", "top", 0, 1, Double.NaN, 0, true, "Help.").optional());
    }

    @Test
    void everyRowThatIsWrongIsTold() {
        Table rows = Table.of(new double[] {0, 7}, new double[] {10, 40}, new double[] {8, 5}, new double[] {20, Double.NaN});
        List<GeometryException> wrong = new MeasuredShape().problems(Values.NONE.with("places", rows));
        assertEquals(List.of("places[1].width", "places[2].fromFold", "places[3].width"), wrong.stream().map(GeometryException::path).toList());
        assertEquals("Row 2: width 40 is outside 0.2 to 30 mm.", wrong.get(0).getMessage());
        assertEquals("Row 3 is out of order: from the fold 8.0 comes after 10.0.", wrong.get(1).getMessage());
        assertEquals("measured places: at least 2 rows are needed, not 0.", new MeasuredShape().problems(Values.NONE).get(0).getMessage());
        assertEquals("measured places: a row needs 2 numbers.",
                new MeasuredShape().problems(Values.NONE.with("places", Table.of(new double[] {0, 1, 2}, new double[] {1, 2, 3}))).get(0).getMessage());
    }

    @Test
    void firstRowsHaveTheirPlace() {
        Values gouge = Values.NONE.with("places", Table.of(new double[] {0.5, 0.6}, new double[] {3, 0.5}));
        assertEquals("The first row has to be in the middle, 0, not 0.5.", new MeasuredGouge().problems(gouge).get(0).getMessage());
        Values staple = Values.NONE.with("places", Table.of(new double[] {1, 5, 5}, new double[] {47, 3, 2}));
        assertEquals("places[0].height", new MeasuredStaple().problems(staple).get(0).path());
    }

    @Test
    void theTypesThatShipAreFoundAndAcceptTheirOwnDefaults() {
        Profiles profiles = Profiles.load();
        List<ProfileType> all = new ArrayList<>(profiles.staples().all());
        all.addAll(profiles.gouges().all());
        all.addAll(profiles.shapes().all());
        assertEquals(10, all.size());
        for (ProfileType type : all) {
            assertTrue(type.problems(type.standard()).isEmpty(), type.id());
            assertFalse(type.name().isBlank() || type.help().isBlank(), type.id());
            assertEquals(type.standard(), type.migrate(type.version(), type.standard()));
            assertThrows(GeometryException.class, () -> type.migrate(type.version() + 1, type.standard()));
        }
        assertEquals("straight-sided oval", profiles.staples().find("culm.staple.oval").orElseThrow().name());
        assertTrue(profiles.gouges().find("culm.gouge.none").isEmpty());
        assertThrows(IllegalArgumentException.class, () -> new Registry<ProfileType>().add(new Concentric()).add(new Concentric()));
    }

    @Test
    void valuesAndTablesNeverChange() {
        double[] row = {0, 7};
        Table table = Table.of(row, new double[] {37, 4});
        row[1] = 99;
        assertEquals(7, table.cell(0, 1));
        Table other = table.with(0, 1, 6);
        assertEquals(7, table.cell(0, 1));
        assertEquals(6, other.cell(0, 1));
        Values values = Values.NONE.with("a", 1).with("t", table);
        assertThrows(UnsupportedOperationException.class, () -> values.numbers().put("a", 2.0));
        assertEquals(values, Values.NONE.with("t", Table.of(new double[] {0, 7}, new double[] {37, 4})).with("a", 1));
        assertEquals(values.hashCode(), Values.NONE.with("t", table).with("a", 1).hashCode());
        assertThrows(IllegalArgumentException.class, () -> values.number("b"));
        assertThrows(IllegalArgumentException.class, () -> Table.of(new double[] {1}, new double[] {1, 2}));
    }

    @Test
    void aWiderShapeDescribesItselfLikeTheOneItWidens() {
        MeasuredShape inner = new MeasuredShape();
        WiderShape wider = new WiderShape(inner, 0.1);
        assertEquals(List.of(inner.id(), inner.name(), inner.help(), inner.tables()), List.of(wider.id(), wider.name(), wider.help(), wider.tables()));
        ShapeType older = (ShapeType) java.lang.reflect.Proxy.newProxyInstance(ShapeType.class.getClassLoader(), new Class<?>[] {ShapeType.class}, (proxy, method, given) -> switch (method.getName()) {
            case "origin" -> "before:" + given[1];
            case "standard" -> Values.NONE.with("a", 3);
            default -> inner.tables();
        });
        WiderShape of = new WiderShape(older, 0.1);
        assertEquals(List.of("before:x", Values.NONE.with("a", 3), inner.tables()), List.of(of.origin(1, "x"), of.standard(), of.tables(1)));
        assertEquals(inner.width(inner.standard(), 37).at(20) + 0.1, wider.width(inner.standard(), 37).at(20), 1e-15);
        assertThrows(GeometryException.class, () -> new WiderShape(inner, -9).width(inner.standard(), 37).at(20));
    }

    @Test
    void aRefusalKeepsItsPathBehindThePart() {
        GeometryException bare = new GeometryException("wall", "No.");
        assertEquals("staple.wall", bare.under("staple").path());
        assertEquals("staple.wall", bare.under("staple").under("staple").path());
        assertEquals("staple", new GeometryException("", "No.").under("staple").path());
    }
}

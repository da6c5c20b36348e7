package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.blank.Blank;
import culm.design.Bridge;
import culm.design.ProfileUpgrade;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Registry;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;
import culm.model.Design;
import culm.model.How;
import culm.model.ProfileData;
import culm.model.files.Loaded;

/** A type that changed what its numbers mean brings older files up itself; what was known of the numbers goes along. */
class ProfileUpgradeTest {
    /** In version 1 everything was half a width, and the fold's was called otherwise. */
    private static final class Widths implements ShapeType {
        private static Parameter width(String id) {
            return Parameter.length(id, id, 0.2, 30, 5, 0.05, true, "A width.");
        }

        private static TableParameter places(String column) {
            return new TableParameter("places", "places", List.of(Parameter.length("fromFold", "from the fold", 0, 120, 0, 0.2, true, "Where."), width(column)), 2,
                    Table.of(new double[] {0, 7}, new double[] {37, 4}), "Places.");
        }

        @Override
        public String id() {
            return "test.widths";
        }

        @Override
        public int version() {
            return 2;
        }

        @Override
        public String name() {
            return "widths";
        }

        @Override
        public String help() {
            return "Widths.";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(width("fold"));
        }

        @Override
        public List<TableParameter> tables() {
            return List.of(places("width"));
        }

        @Override
        public List<TableParameter> tables(int olderVersion) {
            return List.of(places("half"));
        }

        @Override
        public String origin(int olderVersion, String id) {
            return id.equals("width") ? "half" : id.equals("fold") ? "halfFold" : id;
        }

        @Override
        public Values migrate(int fromVersion, Values older) {
            Table rows = older.table("places");
            for (int r = 0; r < rows.rows(); r++) {
                rows = rows.with(r, 1, 2 * rows.cell(r, 1));
            }
            return Values.NONE.with("fold", 2 * older.number("halfFold")).with("places", rows);
        }

        @Override
        public ShapeWidth width(Values values, double foldedLength) {
            return new MeasuredShape().width(values, foldedLength);
        }
    }

    private static final Bridge BRIDGE = new Bridge(profiles());

    @TempDir
    private Path folder;

    private static Profiles profiles() {
        Profiles shipped = Profiles.load();
        return new Profiles(shipped.staples(), shipped.gouges(), new Registry<ShapeType>().add(new Widths()));
    }

    private Path olderFile() throws Exception {
        String text = Files.readString(Studios.file("trial-12.reed"));
        String shape = """
                <shape id="old">
                    <foldedLength value="37"/>
                    <profile type="test.widths" version="1">
                      <parameter name="halfFold" value="3.5" tolerance="0.02" how="measured"/>
                      <table name="places">
                        <column name="half" tolerance="0.01" how="measured"/>
                        <row id="rim" fromFold="0" half="3.5"/>
                        <row id="low" fromFold="37" half="2.1"/>
                      </table>
                    </profile>
                  </shape>""";
        Files.copy(Studios.file("harbour-row.parts"), folder.resolve("harbour-row.parts"));
        Path file = folder.resolve("old.reed");
        Files.writeString(file, text.replaceFirst("<shape link=[^>]*/>", shape));
        assertTrue(Files.readString(file).contains("test.widths"));
        return file;
    }

    @Test
    void isComputedInTodaysMeaning() throws Exception {
        Blank blank = BRIDGE.read(olderFile()).blank();
        assertEquals(7, blank.value("shape.fold").orElseThrow());
        assertEquals(4.2, blank.value("shape.places[1].width").orElseThrow());
        assertEquals(0.02, blank.tolerance("shape.fold").plusMinus());
        assertTrue(blank.tolerance("shape.fold").measured());
        assertEquals(0.01, blank.tolerance("shape.places[0].width").plusMinus());
    }

    @Test
    void isBroughtUpForEditingAndSavedSo() throws Exception {
        Path file = olderFile();
        Loaded<Design> loaded = Studios.FILES.load(file, Design.class);
        assertEquals(List.of("test.widths"), ProfileUpgrade.apply(loaded.document(), BRIDGE.profiles()));
        assertEquals(List.of(), ProfileUpgrade.apply(loaded.document(), BRIDGE.profiles()), "once is enough");
        Studios.FILES.save(loaded.document(), file, Optional.of(loaded.stamp()));
        ProfileData saved = Studios.FILES.load(file, Design.class).document().getShape().getProfile();
        assertEquals(2, saved.getVersion());
        assertEquals("fold", saved.getParameters().get(0).getName());
        assertEquals(How.MEASURED, saved.getParameters().get(0).getHow());
        assertEquals("rim", saved.getTables().get(0).getRows().get(0).getId());
        assertEquals(7, saved.getTables().get(0).getRows().get(0).getCells().get("width").orElseThrow());
        assertEquals(7, BRIDGE.read(file).blank().value("shape.fold").orElseThrow());
    }
}

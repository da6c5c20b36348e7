package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Fix;
import culm.design.edit.Edit;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.design.edit.RowEntry;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Table;
import culm.model.Design;
import culm.model.Edges;
import culm.model.How;
import culm.model.Moisture;
import culm.model.PartsFile;
import culm.model.StaplePart;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.model.text.Cells;

/** Every command: done, undone to the very same file, done again. */
class EditsTest {
    private static final int MANY = Boolean.getBoolean("culm.long") ? 20_000 : 1_000;
    private static final Profiles PROFILES = Profiles.load();

    /** A command by the name of the method that makes it. */
    private record Case(String file, String method, String what, Maker maker) {
        @Override
        public String toString() {
            return method + " " + what + " in " + file;
        }
    }

    @FunctionalInterface
    private interface Maker {
        Edit make(Edits edits) throws FileProblemException;
    }

    static Stream<Case> cases() {
        List<Case> all = new ArrayList<>();
        for (String file : List.of("trial-12.reed", "trial-14.reed", "trial-13-two-gouges.reed", "trial-11-measured-staple.reed")) {
            makers().forEach((name, maker) -> all.add(new Case(file, name.substring(0, name.indexOf(' ')), name.substring(name.indexOf(' ') + 1), maker)));
        }
        return all.stream();
    }

    private static Map<String, Maker> makers() {
        Map<String, Maker> m = new LinkedHashMap<>();
        m.put("setValue a height", e -> e.setValue(Inputs.TIE_LENGTH, 71.3));
        m.put("setValue an absent number", e -> e.setValue(Inputs.CROOKED, -0.1));
        m.put("setValue in a linked part", e -> e.setValue(Inputs.STAPLE_LENGTH, 46.5));
        m.put("setValue a new parameter", e -> e.setValue("gouge.unheardOf", 3));
        m.put("setValue a cell", e -> e.setValue("shape.places[2].width", 6.1));
        m.put("tryValue of a part", e -> e.tryValue(Inputs.TUBE, 10.3));
        m.put("tryValue of a tie", e -> e.tryValue(Inputs.WRAP_TOP, 46.1));
        m.put("apply a fix", e -> e.apply(new Fix(Inputs.TIE_LENGTH, 71.1, "Tie at 71.1 mm: 1.0 turns left.")));
        m.put("setQuantity whole", e -> e.setQuantity(Inputs.SWELL_WIDTH, OptionalDouble.of(0.03), OptionalDouble.of(0.01), How.MEASURED));
        m.put("setQuantity bare", e -> e.setQuantity(Inputs.WRAP_TOP, OptionalDouble.of(46), OptionalDouble.empty(), null));
        m.put("setTolerance given", e -> e.setTolerance(Inputs.TIE_LENGTH, OptionalDouble.of(0.15)));
        m.put("setTolerance taken away", e -> e.setTolerance(Inputs.TIE_LENGTH, OptionalDouble.empty()));
        m.put("setHow assumed", e -> e.setHow(Inputs.TIE_LENGTH, How.ASSUMED));
        m.put("setHow not said", e -> e.setHow(Inputs.TIE_LENGTH, null));
        m.put("clear a height", e -> e.clear(Inputs.FINISHED));
        m.put("clear a number of a linked part", e -> e.clear(Inputs.CORK_TOP));
        m.put("clear a parameter", e -> e.clear("gouge.side"));
        m.put("setRows of a linked shape", e -> e.setRows("shape.places", rows(0, 7, 20, 5.2, 37, 4.3)));
        m.put("setRows kept, moved and new", e -> e.setRows("shape.places", List.of(new RowEntry("h", cells(0, 7)), new RowEntry("a", cells(20, 5)),
                RowEntry.of(cells(37, 4.3)))));
        m.put("setRows of inside widths", e -> e.setRows("inside.places", rows(0, 6.5, 37, 3.9)));
        m.put("setColumn measured", e -> e.setColumn("shape.places", "width", OptionalDouble.of(0.01), How.MEASURED));
        m.put("setColumn of a new column", e -> e.setColumn("shape.places", "fromFold", OptionalDouble.empty(), null));
        m.put("setProfile of the staple", e -> e.setProfile("staple", PROFILES.staples().find("culm.staple.rolled").orElseThrow()));
        m.put("setProfile of the gouge", e -> e.setProfile("gouge", PROFILES.gouges().find("culm.gouge.offset").orElseThrow()));
        m.put("setProfile of the gouge's end", e -> e.setProfile("gougeEnd", PROFILES.gouges().find("culm.gouge.concentric").orElseThrow()));
        m.put("setProfile of the shape", e -> e.setProfile("shape", PROFILES.shapes().find("culm.shape.waisted").orElseThrow()));
        m.put("setProfile of the staple with rows of its own", e -> e.setProfile("staple", PROFILES.staples().find("culm.staple.measured").orElseThrow(),
                Optional.of(Table.of(new double[] {0, 5.4, 5.4}, new double[] {46, 3.4, 2.1}))));
        m.put("gougeTwice that begins as the first", Edits::gougeTwice);
        m.put("removeGougeEnd there or not", Edits::removeGougeEnd);
        m.put("edgesByTwoWidths with rows", e -> e.edgesByTwoWidths(rows(0, 6.5, 37, 3.9)));
        m.put("link another staple", e -> e.link("staple", new Link("harbour-row.parts", "staple-46")));
        m.put("unlink the shape", e -> e.unlink("shape"));
        m.put("setPart a staple", e -> e.setPart(EcoreUtil.copy(part("staple-46"))));
        m.put("use another setup", e -> e.use(Studios.design("horn-3.reed"), "as the horn"));
        m.put("keep a variant", e -> e.keep(Studios.design("horn-3.reed"), "as the horn"));
        m.put("dropVariant that is not there", e -> e.dropVariant("nobody"));
        m.put("set the name", e -> e.set("", "name", "Trial & error"));
        m.put("set no notes", e -> e.set("", "notes", null));
        m.put("set edges", e -> e.set("shape", "edges", Edges.RADIAL));
        m.put("set moisture", e -> e.set("gouge", "moisture", Moisture.WET));
        m.put("set a date", e -> e.set("staple", "measuredOn", LocalDate.of(2026, 11, 2)));
        m.put("setFit of another design", e -> e.setFit(Studios.design("trial-14.reed").getFit()));
        m.put("setFit dropped", e -> e.setFit(null));
        m.put("setLimit given", e -> e.setLimit(Limits.TURNS_MOST, OptionalDouble.of(2.5)));
        m.put("setLimit given back", e -> e.setLimit(Limits.TURNS_MOST, OptionalDouble.empty()));
        return m;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void doneUndoneAndDoneAgain(Case each) throws Exception {
        Design design = Studios.design(each.file());
        String before = Studios.FILES.text(design);
        assertEquals(before, Files.readString(Studios.file(each.file())), "an example is stored as it is saved");
        Edit edit = each.maker().make(edits(design));
        assertFalse(edit.getLabel().isBlank());
        assertEquals(before, Studios.FILES.text(design), "making a command changes nothing");
        BasicCommandStack stack = new BasicCommandStack();
        stack.execute(edit);
        String after = Studios.FILES.text(design);
        stack.undo();
        assertEquals(before, Studios.FILES.text(design));
        stack.redo();
        assertEquals(after, Studios.FILES.text(design));
        stack.undo();
        assertEquals(before, Studios.FILES.text(design));
        Design again = Studios.FILES.read(after.getBytes(java.nio.charset.StandardCharsets.UTF_8), "again", Design.class).document();
        assertEquals(after, Studios.FILES.text(again));
    }

    @Test
    void nearlyEveryCommandChangesTheFile() throws Exception {
        Set<String> unchanged = new TreeSet<>();
        for (Case each : cases().toList()) {
            Design design = Studios.design(each.file());
            String before = Studios.FILES.text(design);
            each.maker().make(edits(design)).execute();
            if (before.equals(Studios.FILES.text(design))) {
                unchanged.add(each.method() + " " + each.what());
            }
        }
        assertEquals(Set.of("dropVariant that is not there", "setFit dropped", "setFit of another design", "setLimit given back"), unchanged,
                "where there is nothing to drop, or the same is set again");
    }

    @Test
    void everyMethodThatMakesACommandIsTriedHere() {
        Set<String> all = Arrays.stream(Edits.class.getMethods()).filter(m -> m.getReturnType() == Edit.class).map(Method::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        Stream<String> ofWholeFiles = Stream.of("become", "addPart", "removePart"); // those are tried in WholeDocumentTest
        assertEquals(all, Stream.concat(cases().map(Case::method), ofWholeFiles).collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void manyEditsWithUndoAndRedoEndWhereTheyBegan() throws Exception {
        SplittableRandom random = new SplittableRandom(20261125);
        List<Maker> makers = List.copyOf(makers().values());
        Design design = Studios.design("trial-14.reed");
        Edits edits = edits(design);
        BasicCommandStack stack = new BasicCommandStack();
        List<String> texts = new ArrayList<>(List.of(Studios.FILES.text(design)));
        int at = 0;
        int refused = 0;
        for (int i = 0; i < MANY; i++) {
            int dice = random.nextInt(10);
            if (dice < 3 && stack.canUndo()) {
                stack.undo();
                at--;
            } else if (dice < 5 && stack.canRedo()) {
                stack.redo();
                at++;
            } else {
                Edit edit = makers.get(random.nextInt(makers.size())).make(edits);
                String before = Studios.FILES.text(design);
                stack.execute(edit);
                if (stack.getMostRecentCommand() != edit) {
                    assertEquals(before, Studios.FILES.text(design), "a refused command changes nothing");
                    refused++;
                    continue;
                }
                texts.subList(at + 1, texts.size()).clear();
                texts.add(Studios.FILES.text(design));
                at++;
            }
            assertEquals(texts.get(at), Studios.FILES.text(design), "step " + i);
        }
        while (stack.canUndo()) {
            stack.undo();
        }
        assertEquals(texts.get(0), Studios.FILES.text(design));
        assertTrue(refused < MANY / 4, "most edits were possible: " + refused);
    }

    @Test
    void aChangeInALinkedPartLeavesThePartsFileAlone() throws Exception {
        Design design = Studios.design("trial-12.reed");
        Edits edits = edits(design);
        assertTrue(edits.copiesLinkedPart(Inputs.STAPLE_LENGTH));
        assertFalse(edits.copiesLinkedPart(Inputs.TIE_LENGTH));
        edits.setValue(Inputs.STAPLE_LENGTH, 46.5).execute();
        assertEquals("staple-47", design.getStaple().getId());
        assertEquals(46.5, design.getStaple().getLength().getValue());
        assertEquals(47, ((StaplePart) part("staple-47")).getLength().getValue());
    }

    @Test
    void aTriedValueIsAssumedAndAnEnteredOneStaysMeasured() throws Exception {
        Design design = Studios.design("trial-12.reed");
        edits(design).setValue(Inputs.STAPLE_LENGTH, 46.5).execute();
        assertEquals(How.MEASURED, design.getStaple().getLength().getHow());
        edits(design).tryValue(Inputs.STAPLE_LENGTH, 46.4).execute();
        assertEquals(How.ASSUMED, design.getStaple().getLength().getHow());
    }

    @Test
    void aKeptVariantIsReadAgainUsedAndGivenUp() throws Exception {
        Design design = Studios.design("trial-12.reed");
        String before = Studios.FILES.text(design);
        edits(design).keep(Studios.design("trial-14.reed"), "Wider, \"soft\" cane").execute();
        edits(design).keep(Studios.design("trial-12.reed"), "Wider, \"soft\" cane").execute();
        String kept = Studios.FILES.text(design);
        Design again = Studios.FILES.read(kept.getBytes(java.nio.charset.StandardCharsets.UTF_8), "again", Design.class).document();
        assertEquals(kept, Studios.FILES.text(again));
        assertEquals(List.of("wider-soft-cane", "wider-soft-cane-2"), again.getVariants().stream().map(v -> v.getId()).toList());
        edits(again).use(again.getVariants().get(0), "use it").execute();
        Design wanted = Studios.design("trial-14.reed");
        assertTrue(EcoreUtil.equals(wanted.getTie(), again.getTie()) && EcoreUtil.equals(wanted.getShape(), again.getShape()));
        assertEquals(2, again.getVariants().size());
        edits(again).use(again.getVariants().get(1), "as it was").execute();
        edits(again).dropVariant("wider-soft-cane").execute();
        edits(again).dropVariant("wider-soft-cane-2").execute();
        assertEquals(before, Studios.FILES.text(again));
    }

    @Test
    void aNewTypeKeepsNumbersOfTheSameName() throws Exception {
        Design design = Studios.design("trial-12.reed");
        edits(design).setProfile("staple", PROFILES.staples().find("culm.staple.rolled").orElseThrow()).execute();
        var profile = design.getStaple().getProfile();
        assertEquals("culm.staple.rolled", profile.getType());
        assertEquals(3.4, profile.getParameters().stream().filter(p -> p.getName().equals("topWide")).findFirst().orElseThrow().getValue());
        Studios.BRIDGE.of(design, Studios.file("trial-12.reed"), "trial-12.reed", Studios.studio());
    }

    @Test
    void aPartInAPartsFileIsEditedAlone() throws Exception {
        PartsFile parts = Studios.FILES.load(Studios.file("harbour-row.parts"), PartsFile.class).document();
        String before = Studios.FILES.text(parts);
        Edits edits = Edits.of(parts.getParts().get(0), new SplittableRandom(1));
        List<Edit> done = List.of(edits.setValue("staple.length", 46.9), edits.setValue("staple.topWide", 3.5), edits.set("", "name", "47, second"),
                edits.set("staple", "source", "a friend"));
        done.forEach(Edit::execute);
        assertNotEquals(before, Studios.FILES.text(parts));
        for (int i = done.size() - 1; i >= 0; i--) {
            done.get(i).undo();
        }
        assertEquals(before, Studios.FILES.text(parts));
    }

    @Test
    void aLabelSaysWhatInTheBenchsWords() throws Exception {
        Edits edits = edits(Studios.design("trial-12.reed"));
        assertEquals("tie length to 71.3 mm", edits.setValue(Inputs.TIE_LENGTH, 71.3).getLabel());
        assertEquals("staple top wide to 3.4", edits.setValue("staple.topWide", 3.4).getLabel());
        assertEquals("shape width, row 3 to 6.1", edits.setValue("shape.places[2].width", 6.1).getLabel());
        assertEquals("shape edges", edits.set("shape", "edges", Edges.RADIAL).getLabel());
        assertEquals("gouge end as concentric", edits.setProfile("gougeEnd", PROFILES.gouges().find("culm.gouge.concentric").orElseThrow()).getLabel());
    }

    @Test
    void whatFailsHalfWayChangesNothing() throws Exception {
        Design design = Studios.design("trial-12.reed");
        String before = Studios.FILES.text(design);
        Edit edit = edits(design).setValue("shape.places[99].width", 6);
        assertThrows(IllegalArgumentException.class, edit::execute);
        assertEquals(before, Studios.FILES.text(design));
    }

    @Test
    void whatCannotBeIsRefused() throws Exception {
        Edits edits = edits(Studios.design("trial-12.reed"));
        assertThrows(IllegalArgumentException.class, () -> edits.setValue(Inputs.TIE_LENGTH, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> edits.setValue("tie", 1));
        assertThrows(IllegalArgumentException.class, () -> edits.setValue("mouth.length", 1));
        assertThrows(IllegalArgumentException.class, () -> edits.setTolerance(Inputs.TIE_LENGTH, OptionalDouble.of(-1)));
        assertThrows(IllegalArgumentException.class, () -> edits.setHow("shape.places[1].width", How.MEASURED));
        Design lost = Studios.design("trial-12.reed");
        lost.getStaple().setLink("gone.parts#a");
        assertThrows(FileProblemException.class, () -> edits(lost).setValue(Inputs.STAPLE_LENGTH, 47));
    }

    private static Edits edits(Design design) {
        return Edits.of(design, PartResolver.in(Studios.studio(), Studios.file("trial-12.reed"), "trial-12.reed"), new SplittableRandom(7));
    }

    private static culm.model.Part part(String id) throws FileProblemException {
        return Studios.FILES.load(Studios.file("harbour-row.parts"), PartsFile.class).document().getParts().stream()
                .filter(p -> p.getId().equals(id)).findFirst().orElseThrow();
    }

    private static List<RowEntry> rows(double... placesAndWidths) {
        List<RowEntry> rows = new ArrayList<>();
        for (int i = 0; i < placesAndWidths.length; i += 2) {
            rows.add(RowEntry.of(cells(placesAndWidths[i], placesAndWidths[i + 1])));
        }
        return rows;
    }

    private static Cells cells(double fromFold, double width) {
        return Cells.NONE.with("fromFold", fromFold).with("width", width);
    }
}

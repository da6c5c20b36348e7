package culm.design.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import culm.blank.Input;
import culm.design.compare.Choice;
import culm.design.compare.Difference;
import culm.design.compare.Side;
import culm.design.compare.ThreeWay;
import culm.design.edit.Edits;
import culm.design.edit.PartResolver;
import culm.design.edit.RowEntry;
import culm.model.Design;
import culm.model.Row;
import culm.model.text.Cells;

/** Two people change copies of a design at random: whatever they did, putting the copies together loses nothing and invents nothing. */
class MergedAtRandomTest {
    private static final int PAIRS = Boolean.getBoolean("culm.long") ? 2000 : 150;

    @Test
    void nothingIsLostAndNothingInvented() throws Exception {
        SplittableRandom random = new SplittableRandom(5);
        int conflicts = 0;
        for (int i = 0; i < PAIRS; i++) {
            Design before = own(Studios.design("trial-12.reed"));
            Design yours = changed(before, random);
            Design theirs = changed(before, random);
            ThreeWay three = ThreeWay.compare(before, yours, theirs, Studios.BRIDGE.profiles());
            conflicts += three.conflicts().size();
            Choice choice = random.nextBoolean() ? Choice.THEIRS : Choice.YOURS;
            Map<String, Choice> choices = three.conflicts().stream().collect(Collectors.toMap(Difference::path, d -> choice));
            Design merged = (Design) three.merged(choices);
            check(three, choice, ThreeWay.changes(before, merged, Studios.BRIDGE.profiles()));
            ThreeWay other = ThreeWay.compare(before, theirs, yours, Studios.BRIDGE.profiles());
            Map<String, Choice> opposite = other.conflicts().stream().collect(Collectors.toMap(Difference::path, d -> choice == Choice.YOURS ? Choice.THEIRS : Choice.YOURS));
            assertEquals(Studios.FILES.text(merged), Studios.FILES.text(other.merged(opposite)), "whoever merges, with the same choices");
        }
        assertTrue(conflicts > PAIRS / 4, "only " + conflicts + " conflicts were tried");
    }

    private static void check(ThreeWay three, Choice choice, List<Difference> now) {
        Map<String, Difference> byPath = now.stream().collect(Collectors.toMap(Difference::path, Function.identity()));
        for (Difference d : three.differences()) {
            boolean takeTheirs = d.side() == Side.THEIRS || d.side() == Side.CONFLICT && choice == Choice.THEIRS;
            String expected = takeTheirs ? d.theirs() : d.yours();
            Difference found = byPath.remove(d.path());
            // A row that one removed and the other changed is one difference here, and one for each number once it is kept.
            if (found == null && !expected.isEmpty() && byPath.keySet().removeIf(path -> path.startsWith(d.path() + "."))) {
                continue;
            }
            assertEquals(expected, found == null ? d.before() : found.yours(), d.toString());
        }
        assertEquals(Map.of(), byPath, "something was changed that nobody changed");
    }

    /** The design with its parts in it, so that there is more to change. */
    private static Design own(Design design) throws Exception {
        Edits edits = edits(design, new SplittableRandom(1));
        for (String part : List.of("staple", "gouge", "shape", "thread")) {
            edits.unlink(part).execute();
        }
        return design;
    }

    private static Edits edits(Design design, SplittableRandom random) {
        return Edits.of(design, PartResolver.in(Studios.studio(), Studios.file("trial-12.reed"), "trial-12.reed"), random);
    }

    private static Design changed(Design before, SplittableRandom random) throws Exception {
        Design design = EcoreUtil.copy(before);
        Edits edits = edits(design, random);
        int changes = random.nextInt(1, 5);
        for (int i = 0; i < changes; i++) {
            List<Input> inputs = Studios.BRIDGE.of(design, Studios.file("trial-12.reed"), "trial-12.reed", Studios.studio()).blank().inputs().stream()
                    .filter(input -> !input.path().contains("fromFold") && !input.path().startsWith("fit.")).toList();
            Input input = inputs.get(random.nextInt(inputs.size()));
            switch (random.nextInt(4)) {
                case 0, 1 -> edits.setValue(input.path(), Math.rint(1000 * input.value() * (1 + random.nextInt(1, 9) * 1e-3)) / 1000).execute();
                case 2 -> edits.set("", "notes", "note " + random.nextInt(3)).execute();
                default -> rows(design, edits, random);
            }
        }
        return design;
    }

    private static void rows(Design design, Edits edits, SplittableRandom random) throws Exception {
        List<RowEntry> rows = new ArrayList<>();
        for (Row row : design.getShape().getProfile().getTables().get(0).getRows()) {
            rows.add(new RowEntry(row.getId(), row.getCells()));
        }
        if (random.nextBoolean() && rows.size() > 4) {
            rows.remove(random.nextInt(1, rows.size() - 1));
        } else {
            double place = 1 + random.nextInt(35) + random.nextInt(1, 99) / 100.0;
            rows.add(RowEntry.of(Cells.of(Map.of("fromFold", place)).with("width", 5 + random.nextInt(100) / 100.0)));
            rows.sort(java.util.Comparator.comparingDouble(r -> r.cells().get("fromFold").orElseThrow()));
        }
        edits.setRows("shape.places", rows).execute();
    }
}

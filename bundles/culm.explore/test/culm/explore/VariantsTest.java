package culm.explore;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.ClosingFinder;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.blank.rules.Rules;
import culm.geometry.staple.RolledSheet;

class VariantsTest {
    private static final Study STUDY = new Study(Designs.example(), List.of(), Limits.STANDARD, Rules.load());
    private static final Axis TIE = Axis.Numbers.stepped(Inputs.TIE_LENGTH, "tie length", 71, 73, 0.5);
    private static final Axis WIDTH = Axis.Numbers.spaced(Varied.WIDTH, "all widths", -0.1, 0.1, 3);
    private static final Axis STAPLES = new Axis.Parts("staple", "staple", List.of(new Axis.Choice("A-1", b -> b),
            new Axis.Choice("=B", b -> b.edit().staple(new Profile<>(new RolledSheet(), b.staple().values())).build())));

    private static String csv(List<Axis> axes, VariantPlan plan, int threads) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Variants.run(STUDY, axes, plan, threads, new VariantCsv(out), Watcher.none());
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aGridHoldsEveryCombinationClosedAsAlone() throws IOException {
        VariantTable table = new VariantTable();
        assertEquals(30, Variants.run(STUDY, List.of(STAPLES, TIE, WIDTH), new VariantPlan.Grid(), 2, table, Watcher.none()));
        for (int row = 0; row < 30; row++) {
            double added = new double[] {-0.1, 0, 0.1}[row % 3];
            double tie = 71 + 0.5 * (row / 3 % 5);
            assertEquals(tie, table.value(row, 1));
            assertEquals(added, table.value(row, 2), 1e-15);
            var blank = Varied.with((row < 15 ? Designs.example() : ((Axis.Parts) STAPLES).choices().get(1).into().apply(Designs.example()))
                    .with(Inputs.TIE_LENGTH, tie), Varied.WIDTH, added);
            assertEquals(ClosingFinder.find(blank).at().orElse(Double.NaN), table.result(row, VariantTable.Result.CLOSES_AT), 1e-7);
        }
        int[] sorted = table.sorted(row -> table.value(row, 0) == 0, VariantTable.Result.TURNS_LEFT, true);
        assertEquals(15, sorted.length);
        for (int i = 1; i < sorted.length; i++) {
            assertTrue(!(table.result(sorted[i], VariantTable.Result.TURNS_LEFT) > table.result(sorted[i - 1], VariantTable.Result.TURNS_LEFT)));
        }
    }

    @Test
    void threadsDoNotShowInTheFile() throws IOException {
        List<Axis> axes = List.of(Axis.Numbers.spaced(Inputs.TIE_LENGTH, "", 70, 74, 100), Axis.Numbers.spaced(Inputs.TUBE, "", 10, 11, 120));
        assertEquals(csv(axes, new VariantPlan.Grid(), 1), csv(axes, new VariantPlan.Grid(), 3));
        assertEquals(csv(axes, new VariantPlan.Sample(10_000), 1), csv(axes, new VariantPlan.Sample(10_000), 3));
    }

    @Test
    void oneAtATimeStartsWithTheBase() throws IOException {
        String[] lines = csv(List.of(STAPLES, TIE), new VariantPlan.OneAtATime(), 1).split("\n");
        assertEquals(1 + 1 + 2 + 5, lines.length);
        assertEquals("staple,tie.length,sidesCloseAt,turnsLeft,openAtStapleTop,failed", lines[0]);
        assertEquals(",72,46.048896,1.100253,-0.144595,", lines[1]);
        assertTrue(lines[3].startsWith("'=B,72,46.064229,"), "a cell that begins like a formula is disarmed: " + lines[3]);
    }

    @Test
    void cellsAreQuotedWhereNeeded() {
        assertEquals("\"a,b\"", VariantCsv.cell("a,b"));
        assertEquals("\"say \"\"oh\"\"\"", VariantCsv.cell("say \"oh\""));
        assertEquals("'+1", VariantCsv.cell("+1"));
    }

    @Test
    void stepsReachTheirEnd() {
        assertArrayEquals(new double[] {0.1, 0.2, 0.3}, Axis.Numbers.stepped("x", "x", 0.1, 0.3, 0.1).values());
    }

    @Test
    void aMapNamesItsRegions() {
        TwoWayMap map = TwoWayMap.of(STUDY, Axis.Numbers.spaced(Inputs.TIE_LENGTH, "tie length", 69, 75, 61), Axis.Numbers.spaced(Varied.WIDTH, "all widths", -0.4, 0.4, 41), 2,
                Watcher.none());
        int cells = map.regions().stream().mapToInt(TwoWayMap.Region::cells).sum();
        assertEquals(61 * 41, cells);
        TwoWayMap.Region good = map.regions().stream().filter(r -> r.failed().isEmpty()).findFirst().orElseThrow();
        assertTrue(good.bounds().containsAll(List.of("sidesOpen", "turnsLeft")), good.toString());
        assertEquals(0, map.failed()[good.labelY()][good.labelX()]);
        assertEquals(1.1002525, map.turns()[20][30], 1e-6);
    }
}

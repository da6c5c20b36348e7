package culm.bench.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;

import culm.bench.Blanks;
import culm.blank.Blank;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;
import culm.blank.Limits;

class BatchPlannerTest {
    private final BatchPlanner planner = new BatchPlanner(Limits.STANDARD, 0.1, 0);

    static StapleBatch batch(long seed, int count) {
        SplittableRandom random = new SplittableRandom(seed);
        List<StapleReadings> staples = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double[] r = {random.nextDouble(), random.nextDouble(), random.nextDouble()};
            staples.add(StapleReadings.of(Integer.toString(i), round(46.3 + 1.4 * r[0]), round(3.30 + 0.16 * r[1]), round(2.03 + 0.12 * r[2])));
        }
        return new StapleBatch("invented batch", staples, Caliper.ASSUMED, 0.5);
    }

    private static double round(double value) {
        return Math.rint(value * 100) / 100;
    }

    @Test
    void everyStapleIsServedWithinTheLimitsAndNoneIsLost() {
        StapleBatch batch = batch(3, 60);
        BatchPlan plan = planner.plan(Blanks.check(), batch);
        assertTrue(plan.fewest());
        assertEquals(batch.staples().size(), plan.served() + plan.aside().size());
        for (Setting setting : plan.settings()) {
            for (Served served : setting.staples()) {
                Blank blank = StapleOnBlank.put(Blanks.check(), served.staple(), batch.caliper(), 0.5).with(Inputs.TIE_LENGTH, setting.tie());
                double closes = ClosingFinder.find(blank).at().orElseThrow();
                double turns = (served.wrapTop() - closes) / 0.41;
                assertEquals(turns, served.turnsLeft(), 1e-5);
                assertTrue(turns >= 0 && turns <= 2, served.toString());
                assertEquals(served.staple().length().getAsDouble() - 0.5, served.wrapTop(), 1e-12);
            }
        }
    }

    @Test
    void bruteForceOverAllTieLengthsFindsNoFewerSettings() {
        SplittableRandom seeds = new SplittableRandom(9);
        for (int trial = 0; trial < 4; trial++) {
            StapleBatch batch = batch(seeds.nextLong(), 6);
            BatchPlan plan = planner.plan(Blanks.check(), batch);
            List<Served> served = plan.settings().stream().flatMap(s -> s.staples().stream()).toList();
            int fewer = plan.settings().size() - 1;
            assertFalse(servedBy(fewer, served, new double[0]), "fewer settings than " + plan.settings().size() + " serve all");
        }
    }

    /** Whether some choice of so many tie lengths from 69.5, 69.6 ... 75.5 serves all; asks the reference path. */
    private boolean servedBy(int count, List<Served> served, double[] chosen) {
        if (count == 0) {
            return served.stream().allMatch(s -> java.util.Arrays.stream(chosen).anyMatch(t -> fits(s, t)));
        }
        for (int k = 695; k <= 755; k++) {
            double[] more = java.util.Arrays.copyOf(chosen, chosen.length + 1);
            more[chosen.length] = k / 10.0;
            if (servedBy(count - 1, served, more)) {
                return true;
            }
        }
        return false;
    }

    private final java.util.Map<String, Boolean> known = new java.util.HashMap<>();

    private boolean fits(Served s, double tie) {
        return known.computeIfAbsent(s.staple() + "@" + tie, key -> {
            Blank blank = StapleOnBlank.put(Blanks.check(), s.staple(), Caliper.ASSUMED, 0.5).with(Inputs.TIE_LENGTH, tie);
            var closing = ClosingFinder.find(blank);
            double turns = (blank.number(Inputs.WRAP_TOP) - closing.at().orElse(1000)) / 0.41;
            return turns >= 0 && turns <= 2 && closing.openAtTop().getAsDouble() >= -0.4 && blank.number(Inputs.FINISHED) < tie;
        });
    }

    @Test
    void whatDoesNotFitIsSetAsideWithItsReason() {
        List<StapleReadings> staples = new ArrayList<>(batch(3, 8).staples());
        staples.add(StapleReadings.of("wide", 47, 4.4, 3.0));
        staples.add(new StapleReadings("blank row", List.of(47.0), List.of(), List.of(2.09), "", ""));
        staples.add(new StapleReadings("bent", List.of(47.0), List.of(3.38), List.of(2.09), "Bent, goes back.", ""));
        BatchPlan plan = planner.plan(Blanks.check(), new StapleBatch("b", staples, Caliper.ASSUMED, 0.5));
        assertEquals(List.of("wide", "blank row", "bent"), plan.aside().stream().map(a -> a.staple().label()).toList());
        assertTrue(plan.aside().get(0).why().contains("too large"), plan.aside().get(0).why());
        assertEquals("There is no reading of top wide.", plan.aside().get(1).why());
        assertEquals("Bent, goes back.", plan.aside().get(2).why());
    }

    @Test
    void aSettingIsMovedTowardsTheTurnsWanted() {
        StapleBatch one = new StapleBatch("b", List.of(StapleReadings.of("1", 47, 3.38, 2.09)), Caliper.ASSUMED, 0.5);
        Setting setting = planner.plan(Blanks.check(), one).settings().get(0);
        assertEquals(72.1, setting.tie(), 1e-9);
        assertEquals(1.0, setting.staples().get(0).turnsLeft(), 0.06);
        assertTrue(setting.giveOrTake() > 0.5);
    }

    @Test
    void staplesThatAreNotMeasuredYetAreSetAsideAndSaySo() {
        StapleReadings begun = new StapleReadings("1", List.of(), List.of(), List.of(), "", "");
        StapleReadings half = new StapleReadings("2", List.of(47.0), List.of(), List.of(), "", "");
        StapleReadings slip = StapleReadings.of("3", 4.7, 3.38, 2.09);
        for (List<StapleReadings> staples : List.of(List.of(begun), List.of(begun, half), List.of(slip), List.of(begun, half, slip, StapleReadings.of("4", 47, 3.38, 2.09)))) {
            BatchPlan plan = new BatchPlanner(Limits.STANDARD, 0.1, 0).plan(Blanks.check(), new StapleBatch("b", staples, Caliper.ASSUMED, 0.5));
            assertEquals(staples.size() == 4 ? 1 : 0, plan.served());
            assertEquals("There is no reading of length.", plan.aside().stream().filter(a -> a.staple() == begun).map(SetAside::why).findFirst().orElse("There is no reading of length."));
            assertTrue(plan.aside().stream().noneMatch(a -> a.why().isBlank()));
        }
    }
}

package culm.blank.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Limits;
import culm.blank.Profile;
import culm.blank.Widened;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.geometry.GeometryException;
import culm.geometry.gouge.GougeType;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.guard.Budget;
import culm.geometry.guard.Guard;
import culm.geometry.guard.Guarded;
import culm.geometry.guard.GuardedGougeType;
import culm.geometry.guard.GuardedShapeType;
import culm.geometry.guard.GuardedStapleType;
import culm.geometry.guard.Supervised;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;
import culm.geometry.staple.StraightSidedOval;

/** Whatever a plug-in's profile type does, an assessment comes back, and a finding names the plug-in. */
class HostilePlugInTest {
    private static final String WHO = "the plug-in Hostile 1.0";
    private static final Rules RULES = Rules.load();

    @ParameterizedTest
    @EnumSource
    void isNamedInAFinding(Hostile.Way way) {
        StapleType staple = new GuardedStapleType(Hostile.staple(way), guard());
        GougeType gouge = new GuardedGougeType(Hostile.gouge(way), guard());
        ShapeType shape = new GuardedShapeType(Hostile.shape(way), guard());
        Stream.of(blank(staple, new MiddleAndSide(), new MeasuredShape()), blank(new StraightSidedOval(), gouge, new MeasuredShape()),
                blank(new StraightSidedOval(), new MiddleAndSide(), shape), Widened.of(blank(new StraightSidedOval(), new MiddleAndSide(), shape), 0.05)).forEach(blank -> {
                    List<Finding> findings = judged(blank);
                    assertTrue(findings.stream().anyMatch(f -> f.text().contains(WHO)), () -> way + ": " + texts(findings));
                    findings.forEach(f -> f.value().ifPresent(v -> assertTrue(Double.isFinite(v), f.text())));
                });
    }

    /** A failure in the middle of something: while slopes are taken, the thread measured, the bore integrated. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 10, 40, 100, 160, 200, 300, 500, 800, 1300, 2100, 3400, 5500, 8900, 14400, 23300, 37700})
    void aSingleFailureAnywhereIsNamed(int call) {
        for (Blank blank : List.of(blank(new GuardedStapleType(Hostile.staple(Hostile.onlyAt(call)), guard()), new MiddleAndSide(), new MeasuredShape()),
                blank(new StraightSidedOval(), new GuardedGougeType(Hostile.gouge(Hostile.onlyAt(call)), guard()), new MeasuredShape()),
                blank(new StraightSidedOval(), new MiddleAndSide(), new GuardedShapeType(Hostile.shape(Hostile.onlyAt(call)), guard())))) {
            List<Finding> findings = judged(blank);
            boolean failed = Stream.of(blank.staple().type(), blank.gouge().type(), blank.shape().type())
                    .anyMatch(t -> t instanceof Guarded g && g.guard().health().failures() > 0);
            assertEquals(failed, findings.stream().anyMatch(f -> f.text().contains(WHO)), () -> texts(findings).toString());
        }
    }

    @Test
    void aSoundOneBehindItsGuardChangesNothing() {
        Blank bare = blank(new StraightSidedOval(), new MiddleAndSide(), new MeasuredShape());
        Blank guarded = blank(new GuardedStapleType(new StraightSidedOval(), guard()), new GuardedGougeType(new MiddleAndSide(), guard()),
                new GuardedShapeType(new MeasuredShape(), guard()));
        Assessment a = Assessor.assess(bare);
        Assessment b = Assessor.assess(guarded);
        assertEquals(a.sidesCloseAt(), b.sidesCloseAt());
        assertEquals(a.turnsBand(), b.turnsBand());
        assertEquals(a.boreVolume(), b.boreVolume());
        assertEquals(texts(judged(bare)), texts(judged(guarded)));
    }

    @Test
    void oneThatNeverComesBackIsLeftBehindAndNamed() {
        CountDownLatch never = new CountDownLatch(1);
        Guard guard = guard();
        Supervised.Overdue overdue = assertThrows(Supervised.Overdue.class, () -> Supervised.call(Duration.ofMillis(200), () -> guard.call(() -> wait(never))));
        assertTrue(overdue.getMessage().contains(WHO), overdue.getMessage());
        assertTrue(guard.health().stopped());
        assertThrows(IllegalArgumentException.class, () -> guard.call(() -> 1), "it is not asked again");
        never.countDown();
    }

    @Test
    void aCheckThatNeverComesBackIsLeftBehindAndNamed() {
        CountDownLatch never = new CountDownLatch(1);
        GougeType gouge = new GuardedGougeType(Hostile.gouge(good -> wait(never)), guard());
        List<GeometryException> said = gouge.check(Profile.standard(gouge).values());
        assertEquals(1, said.size());
        assertTrue(said.get(0).getMessage().contains(WHO) && said.get(0).getMessage().contains("not come back"), said.get(0).getMessage());
        never.countDown();
    }

    @Test
    void workThatEndsInTimeGivesItsResult() throws InterruptedException {
        Guard guard = guard();
        assertEquals(7, Supervised.call(Duration.ofSeconds(20), () -> guard.call(() -> 7)));
        assertFalse(guard.health().stopped());
    }

    private static int wait(CountDownLatch latch) {
        boolean done = false;
        while (!done) {
            try {
                latch.await();
                done = true;
            } catch (InterruptedException e) {
                done = false; // a plug-in that takes no notice
            }
        }
        return 0;
    }

    private static Guard guard() {
        return new Guard("A type of " + WHO, Budget.GEOMETRY);
    }

    private static Blank blank(StapleType staple, GougeType gouge, ShapeType shape) {
        return new BlankBuilder(Profile.standard(staple), Profile.standard(gouge), Profile.standard(shape)).build();
    }

    private static List<Finding> judged(Blank blank) {
        return RULES.judge(Assessor.assess(blank), Limits.STANDARD);
    }

    private static List<String> texts(List<Finding> findings) {
        return new ArrayList<>(findings.stream().map(Finding::text).toList());
    }
}

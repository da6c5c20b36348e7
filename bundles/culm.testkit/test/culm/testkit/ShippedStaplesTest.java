package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

import culm.geometry.staple.StraightSidedOval;
import culm.geometry.staple.RolledSheet;
import culm.geometry.staple.MeasuredStaple;
import culm.geometry.staple.StapleType;
import culm.geometry.profile.Profiles;

/** Every kind of staple that ships keeps the contract. */
class ShippedStaplesTest {
    @Test
    void everyOneIsHere() {
        assertEquals(Profiles.load().staples().all().stream().map(t -> "Of" + t.getClass().getSimpleName()).collect(Collectors.toSet()),
                Set.of(getClass().getDeclaredClasses()).stream().map(Class::getSimpleName).collect(Collectors.toSet()));
    }

    @Nested
    class OfStraightSidedOval extends StapleTypeContract {
        @Override
        protected StapleType type() {
            return new StraightSidedOval();
        }
    }

    @Nested
    class OfRolledSheet extends StapleTypeContract {
        @Override
        protected StapleType type() {
            return new RolledSheet();
        }
    }

    @Nested
    class OfMeasuredStaple extends StapleTypeContract {
        @Override
        protected StapleType type() {
            return new MeasuredStaple();
        }
    }
}

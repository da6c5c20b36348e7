package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.gouge.OffsetCircle;
import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.MeasuredGouge;
import culm.geometry.gouge.GougeType;
import culm.geometry.profile.Profiles;

/** Every kind of gouge that ships keeps the contract. */
class ShippedGougesTest {
    @Test
    void everyOneIsHere() {
        assertEquals(Profiles.load().gouges().all().stream().map(t -> "Of" + t.getClass().getSimpleName()).collect(Collectors.toSet()),
                Set.of(getClass().getDeclaredClasses()).stream().map(Class::getSimpleName).collect(Collectors.toSet()));
    }

    @Nested
    class OfMiddleAndSide extends GougeTypeContract {
        @Override
        protected GougeType type() {
            return new MiddleAndSide();
        }
    }

    @Nested
    class OfOffsetCircle extends GougeTypeContract {
        @Override
        protected GougeType type() {
            return new OffsetCircle();
        }
    }

    @Nested
    class OfConcentric extends GougeTypeContract {
        @Override
        protected GougeType type() {
            return new Concentric();
        }
    }

    @Nested
    class OfMeasuredGouge extends GougeTypeContract {
        @Override
        protected GougeType type() {
            return new MeasuredGouge();
        }
    }
}

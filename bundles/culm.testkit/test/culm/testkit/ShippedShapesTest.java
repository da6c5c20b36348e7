package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.Waisted;
import culm.geometry.shape.StraightTaper;
import culm.geometry.shape.ShapeType;
import culm.geometry.profile.Profiles;

/** Every kind of shape that ships keeps the contract. */
class ShippedShapesTest {
    @Test
    void everyOneIsHere() {
        assertEquals(Profiles.load().shapes().all().stream().map(t -> "Of" + t.getClass().getSimpleName()).collect(Collectors.toSet()),
                Set.of(getClass().getDeclaredClasses()).stream().map(Class::getSimpleName).collect(Collectors.toSet()));
    }

    @Nested
    class OfMeasuredShape extends ShapeTypeContract {
        @Override
        protected ShapeType type() {
            return new MeasuredShape();
        }
    }

    @Nested
    class OfWaisted extends ShapeTypeContract {
        @Override
        protected ShapeType type() {
            return new Waisted();
        }
    }

    @Nested
    class OfStraightTaper extends ShapeTypeContract {
        @Override
        protected ShapeType type() {
            return new StraightTaper();
        }
    }
}

package culm.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Profile;
import culm.blank.rules.Assumed;
import culm.blank.rules.ChangedOver;
import culm.blank.rules.Crooked;
import culm.blank.rules.EndOfCane;
import culm.blank.rules.FinishedLength;
import culm.blank.rules.NotComputed;
import culm.blank.rules.OpensAgain;
import culm.blank.rules.Overwrapped;
import culm.blank.rules.Pinched;
import culm.blank.rules.PlugIns;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.blank.rules.SidesOpen;
import culm.blank.rules.TiePerTurn;
import culm.blank.rules.TurnsLeft;
import culm.geometry.guard.Budget;
import culm.geometry.guard.Guard;
import culm.geometry.guard.GuardedShapeType;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;

/** Every rule that ships keeps the contract. */
class ShippedRulesTest {
    private static Assessment sample(String name) {
        return Optional.ofNullable(Sample.assessments().get(name)).orElseThrow();
    }

    @Test
    void everyOneIsHere() {
        assertEquals(Rules.load().all().stream().map(t -> "Of" + t.getClass().getSimpleName()).collect(Collectors.toSet()),
                Set.of(getClass().getDeclaredClasses()).stream().map(Class::getSimpleName).collect(Collectors.toSet()));
    }

    @Nested
    class OfOverwrapped extends RuleContract {
        @Override
        protected Rule rule() {
            return new Overwrapped();
        }

        @Override
        protected Assessment spoken() {
            return sample("overwrapped");
        }
    }

    @Nested
    class OfChangedOver extends RuleContract {
        @Override
        protected Rule rule() {
            return new ChangedOver();
        }

        @Override
        protected Assessment spoken() {
            return sample("top changed over");
        }
    }

    @Nested
    class OfSidesOpen extends RuleContract {
        @Override
        protected Rule rule() {
            return new SidesOpen();
        }

        @Override
        protected Assessment spoken() {
            return sample("sides never close");
        }
    }

    @Nested
    class OfTurnsLeft extends RuleContract {
        @Override
        protected Rule rule() {
            return new TurnsLeft();
        }

        @Override
        protected Assessment spoken() {
            return sample("works");
        }
    }

    @Nested
    class OfPinched extends RuleContract {
        @Override
        protected Rule rule() {
            return new Pinched();
        }

        @Override
        protected Assessment spoken() {
            return sample("pinched");
        }
    }

    @Nested
    class OfEndOfCane extends RuleContract {
        @Override
        protected Rule rule() {
            return new EndOfCane();
        }

        @Override
        protected Assessment spoken() {
            return sample("no overlap");
        }
    }

    @Nested
    class OfFinishedLength extends RuleContract {
        @Override
        protected Rule rule() {
            return new FinishedLength();
        }

        @Override
        protected Assessment spoken() {
            return sample("fold below the staple's top");
        }
    }

    @Nested
    class OfNotComputed extends RuleContract {
        @Override
        protected Rule rule() {
            return new NotComputed();
        }

        @Override
        protected Assessment spoken() {
            return sample("no overlap");
        }
    }

    @Nested
    class OfOpensAgain extends RuleContract {
        @Override
        protected Rule rule() {
            return new OpensAgain();
        }

        @Override
        protected Assessment spoken() {
            return sample("closes, opens, closes again");
        }
    }

    @Nested
    class OfCrooked extends RuleContract {
        @Override
        protected Rule rule() {
            return new Crooked();
        }

        @Override
        protected Assessment spoken() {
            return sample("crooked");
        }
    }

    @Nested
    class OfAssumed extends RuleContract {
        @Override
        protected Rule rule() {
            return new Assumed();
        }

        @Override
        protected Assessment spoken() {
            return sample("works");
        }
    }

    @Nested
    class OfTiePerTurn extends RuleContract {
        @Override
        protected Rule rule() {
            return new TiePerTurn();
        }

        @Override
        protected Assessment spoken() {
            return sample("works");
        }
    }

    @Nested
    class OfPlugIns extends RuleContract {
        @Override
        protected Rule rule() {
            return new PlugIns();
        }

        @Override
        protected Assessment spoken() {
            Guard guard = new Guard("The shape type \"bent\" of the plug-in Example 1.0", Budget.GEOMETRY);
            Profile<ShapeType> shape = Profile.standard(new GuardedShapeType(new MeasuredShape(), guard));
            guard.failed("failed: IllegalStateException");
            return Assessor.assess(Sample.works().edit().shape(shape).build());
        }
    }
}

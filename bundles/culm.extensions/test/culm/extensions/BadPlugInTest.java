package culm.extensions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;

/** A plug-in that cannot be used is named, with what it offered and why, and the rest goes on. */
class BadPlugInTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "shapeTypes | shapeType | bad.shape.throws    | ThrowsWhenMade    | fails at once: IllegalStateException: no licence",
            "shapeTypes | shapeType | bad.shape.static    | ThrowsWhenLoaded  | fails at once: ArithmeticException: / by zero",
            "shapeTypes | shapeType | bad.shape.missing   | NotThere          | cannot be loaded: ClassNotFoundException",
            "shapeTypes | shapeType | bad.shape.rule      | Mute              | is no culm.geometry.shape.ShapeType",
            "shapeTypes | shapeType | bad.shape.other     | Straight          | Its class says its id is bad.shape.straight",
            "shapeTypes | shapeType | bad.shape.described | BadlyDescribed    | every such part has one of that name",
            "shapeTypes | rule      | bad.shape.element   | Straight          | The element rule has no place here",
            "rules      | rule      | overwrapped         | Taken             | is taken already by culm.blank",
            "rules      | rule      | bad.rule.asked      | ThrowsWhenAsked   | fails at once: StackOverflowError"})
    void isReportedAndLeftOut(String point, String element, String id, String type, String why) throws Exception {
        int rules = TestRegistry.shipped().read().rules().all().size();
        Extensions read = TestRegistry.shipped().add("bad.plugin", """
                <plugin><extension point="culm.extensions.%s"><%s id="%s" class="%s$%s"/></extension></plugin>
                """.formatted(point, element, id, BadPlugInTest.class.getName(), type)).read();
        assertEquals(1, read.failed().size());
        Contribution failed = read.failed().get(0);
        assertEquals("bad.plugin", failed.plugIn().id());
        assertTrue(failed.failure().orElseThrow().contains(why), failed.failure().orElseThrow());
        assertEquals(rules, read.rules().all().size());
        assertEquals(3, read.profiles().shapes().all().size());
        Finding finding = read.findings().get(0);
        assertTrue(finding.text().contains(id) && finding.text().contains("bad.plugin"), finding.text());
    }

    @Test
    void oneThatHangsWhenItIsMadeIsLeftBehind() throws Exception {
        TestRegistry registry = TestRegistry.shipped().add("bad.plugin", """
                <plugin><extension point="culm.extensions.shapeTypes"><shapeType id="bad.shape.hangs" class="%s$Hangs"/></extension></plugin>
                """.formatted(BadPlugInTest.class.getName()));
        Extensions read = Extensions.read(registry.registry, List.of(), Duration.ofMillis(200));
        assertTrue(read.failed().get(0).failure().orElseThrow().contains("has not come back"), read.failed().toString());
        assertEquals(3, read.profiles().shapes().all().size());
        Hangs.LET_GO.countDown();
    }

    @Test
    void aGoodOneComesAfterThoseThatShip() throws Exception {
        Extensions read = TestRegistry.shipped().add("a.good.plugin", """
                <plugin><extension point="culm.extensions.shapeTypes"><shapeType id="bad.shape.straight" class="%s$Straight"/></extension></plugin>
                """.formatted(BadPlugInTest.class.getName())).read();
        assertEquals(List.of(), read.failed());
        assertEquals("bad.shape.straight", read.profiles().shapes().all().stream().toList().get(3).id());
    }

    /** Sound in itself. */
    public static class Straight implements ShapeType {
        @Override
        public String id() {
            return "bad.shape.straight";
        }

        @Override
        public String name() {
            return "straight";
        }

        @Override
        public String help() {
            return "One width.";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(Parameter.length("all", "width", 1, 10, 5, 0.1, true, "Width everywhere."));
        }

        @Override
        public ShapeWidth width(Values values, double foldedLength) {
            return new ShapeWidth() {
                @Override
                public double to() {
                    return foldedLength;
                }

                @Override
                public double at(double s) {
                    return values.number("all");
                }
            };
        }
    }

    public static class ThrowsWhenMade extends Straight {
        public ThrowsWhenMade() {
            throw new IllegalStateException("no licence");
        }

        @Override
        public String id() {
            return "bad.shape.throws";
        }
    }

    public static class Hangs extends Straight {
        static final CountDownLatch LET_GO = new CountDownLatch(1);

        public Hangs() throws InterruptedException {
            LET_GO.await();
        }
    }

    public static class ThrowsWhenLoaded extends Straight {
        static final int NUMBER = 1 / Integer.parseInt("0");
    }

    public static class BadlyDescribed extends Straight {
        @Override
        public String id() {
            return "bad.shape.described";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(Parameter.length("foldedLength", "folded", 1, 50, 37, 0.1, true, "Clashes with the part's own."));
        }
    }

    public static class Mute implements Rule {
        @Override
        public String id() {
            return "bad.rule.asked";
        }

        @Override
        public String name() {
            return "says nothing";
        }

        @Override
        public List<Finding> judge(Assessment assessment, Limits limits) {
            return List.of();
        }
    }

    public static class Taken extends Mute {
        @Override
        public String id() {
            return "overwrapped";
        }
    }

    public static class ThrowsWhenAsked extends Mute {
        @Override
        public String name() {
            return name();
        }
    }
}

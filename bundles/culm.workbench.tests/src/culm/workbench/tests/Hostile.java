package culm.workbench.tests;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.ShapeWidth;

/** Kinds of shape as a bad plug-in brings them; contributed by the plugin.xml of these tests. */
abstract class Hostile implements ShapeType {
    private final String id;

    Hostile(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return "tests.shape." + id;
    }

    @Override
    public String name() {
        return "hostile, " + id;
    }

    @Override
    public String help() {
        return "Behaves badly on purpose.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(Parameter.length("width", "width", 0.5, 30, 6, 0.05, true, "Width of the cane as cut."));
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
                return wrong(values.number("width"));
            }
        };
    }

    abstract double wrong(double width);

    /** Throws. */
    public static final class Throwing extends Hostile {
        /** Made by the registry. */
        public Throwing() {
            super("throwing");
        }

        @Override
        double wrong(double width) {
            throw new IllegalStateException("out of cane");
        }
    }

    /** Gives NaN. */
    public static final class NoNumber extends Hostile {
        /** Made by the registry. */
        public NoNumber() {
            super("noNumber");
        }

        @Override
        double wrong(double width) {
            return Double.NaN;
        }
    }

    /** Takes its time. */
    public static final class Slow extends Hostile {
        /** Made by the registry. */
        public Slow() {
            super("slow");
        }

        @Override
        double wrong(double width) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20));
            return width;
        }
    }
}

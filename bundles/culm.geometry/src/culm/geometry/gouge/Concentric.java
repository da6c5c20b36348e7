package culm.geometry.gouge;

import java.util.List;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Values;

/** The same thickness everywhere: the cutter's circle shares the tube's centre. */
public final class Concentric implements GougeType {
    @Override
    public String id() {
        return "culm.gouge.concentric";
    }

    @Override
    public String name() {
        return "concentric";
    }

    @Override
    public String help() {
        return "The same thickness from the middle to the sides.";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of(GougeParameters.MIDDLE);
    }

    @Override
    public GougeSection section(Values values, double tubeRadius) {
        return new Constant(values.number("middle"));
    }

    private record Constant(double thickness) implements GougeSection {
        @Override
        public double thickness(double phi) {
            return thickness;
        }

        @Override
        public double integral(double phi) {
            return thickness * phi;
        }

        @Override
        public double smallest(double phi) {
            return thickness;
        }
    }
}

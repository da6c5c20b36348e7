package culm.bench.batch;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One staple of a batch as it was measured. Every reading may be repeated; what counts is the middle one (of two, their mean), which a
 * single slip does not move.
 *
 * @param label    what is written on the staple or its place in the box
 * @param lengths  bottom to top, mm
 * @param wides    wide axis of the top on the mandrel, mm
 * @param narrows  narrow axis of the top on the mandrel, mm
 * @param setAside why it is not to be used; empty when it is
 * @param notes    anything else
 */
public record StapleReadings(String label, List<Double> lengths, List<Double> wides, List<Double> narrows, String setAside, String notes) {
    /** Copies the lists. */
    public StapleReadings {
        lengths = List.copyOf(lengths);
        wides = List.copyOf(wides);
        narrows = List.copyOf(narrows);
    }

    /** One reading each. */
    public static StapleReadings of(String label, double length, double wide, double narrow) {
        return new StapleReadings(label, List.of(length), List.of(wide), List.of(narrow), "", "");
    }

    /** Staple length; empty when it was not measured. */
    public OptionalDouble length() {
        return middle(lengths);
    }

    /** Wide axis of the top; empty when it was not measured. */
    public OptionalDouble topWide() {
        return middle(wides);
    }

    /** Narrow axis of the top; empty when it was not measured. */
    public OptionalDouble topNarrow() {
        return middle(narrows);
    }

    /** The readings of one dimension. */
    public List<Double> readings(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> lengths;
            case TOP_WIDE -> wides;
            case TOP_NARROW -> narrows;
        };
    }

    /** The middle reading of one dimension. */
    public OptionalDouble middle(Dimension dimension) {
        return middle(readings(dimension));
    }

    /** {@return the middle of some numbers, the mean of both middle ones for an even count; empty for none} */
    public static OptionalDouble middle(List<Double> readings) {
        if (readings.isEmpty()) {
            return OptionalDouble.empty();
        }
        double[] sorted = readings.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return OptionalDouble.of(sorted.length % 2 == 1 ? sorted[half] : Math.rint((sorted[half - 1] + sorted[half]) / 2 * 1e6) / 1e6);
    }
}

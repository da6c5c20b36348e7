package culm.explore;

import java.util.List;

import culm.blank.Blank;

/**
 * One thing that may be chosen freely: a number between two ends, in the steps of real parts or anywhere; or one of several parts.
 *
 * @param axis what may be chosen: for numbers the values that are to be had, or just the two ends
 * @param any  numbers only: whether every value between the ends is to be had
 */
public record Free(Axis axis, boolean any) {
    /** @throws IllegalArgumentException when parts are to be had in between */
    public Free {
        if (any && !(axis instanceof Axis.Numbers)) {
            throw new IllegalArgumentException("Between parts there is nothing to choose.");
        }
    }

    /** The values that are to be had, and nothing else. */
    public static Free among(Axis axis) {
        return new Free(axis, false);
    }

    /** Any value between two ends. */
    public static Free between(String path, String label, double low, double high) {
        return new Free(new Axis.Numbers(path, label, new double[] {low, high}), true);
    }

    /** Position of a value on 0 to 1, and back: for numbers any the value itself, else the nearest that is to be had. */
    double value(double position) {
        double p = Math.max(0, Math.min(1, position));
        if (any) {
            Axis.Numbers numbers = (Axis.Numbers) axis;
            return numbers.least() + p * (numbers.most() - numbers.least());
        }
        int index = (int) Math.min(axis.size() - 1, Math.floor(p * axis.size()));
        return axis instanceof Axis.Numbers numbers ? numbers.values()[index] : index;
    }

    /** The blank with this value. */
    Blank into(Blank blank, double value) {
        return axis instanceof Axis.Parts parts ? parts.choices().get((int) value).into().apply(blank) : Varied.with(blank, axis.id(), value);
    }

    /** The value in words. */
    String text(double value) {
        return axis instanceof Axis.Parts parts ? parts.text((int) value) : Double.toString(value);
    }

    static Blank into(Blank base, List<Free> free, double[] values) {
        Blank blank = base;
        for (int pass = 0; pass < 2; pass++) {
            for (int i = 0; i < values.length; i++) {
                if (free.get(i).axis() instanceof Axis.Parts == (pass == 0)) {
                    blank = free.get(i).into(blank, values[i]);
                }
            }
        }
        return blank;
    }
}

package culm.design;

import culm.blank.Blank;
import culm.blank.Input;
import culm.model.text.Numbers;

/** Inputs of a blank in words. */
final class InputWords {
    private InputWords() {
    }

    /** {@code tie length}, {@code staple, wall}, {@code shape, width at 22 mm from the fold}. @param blank that has the input */
    static String of(Input input, Blank blank) {
        String path = input.path();
        String part = path.substring(0, path.indexOf('.')).replace("gougeEnd", "gouge at the end of the cane");
        String label = input.parameter().label();
        int row = path.indexOf('[');
        if (row < 0) {
            return part.equals("tie") || part.equals("thread") || part.equals("cane") || label.startsWith(part) ? label : part + ", " + label;
        }
        String prefix = path.substring(0, path.indexOf(']') + 2);
        Input place = blank.inputs().stream().filter(i -> i.path().startsWith(prefix)).findFirst().orElse(input);
        return part + ", " + label + " at " + Numbers.format(place.value()) + " mm" + (place.parameter().label().startsWith("from") ? " " + place.parameter().label() : "");
    }

    /** A value with its unit and how well it is known; empty for none. */
    static String value(Input input) {
        if (input == null) {
            return "";
        }
        String unit = input.parameter().quantity().unit();
        double plusMinus = input.tolerance().plusMinus();
        return Numbers.format(input.value()) + (plusMinus > 0 ? " \u00b1 " + Numbers.format(plusMinus) : "") + (unit.isEmpty() ? "" : " " + unit)
                + (input.tolerance().measured() ? ", measured" : ", assumed");
    }
}

package culm.design;

import culm.blank.Blank;
import culm.blank.Input;
import culm.geometry.profile.Quantity;
import culm.geometry.words.Told;
import culm.model.text.Numbers;

/** Inputs of a blank in words, their lengths as {@link Told} keeps them. */
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
        return part + ", " + label + " at " + number(place, place.value()) + unit(place) + (place.parameter().label().startsWith("from") ? " " + place.parameter().label() : "");
    }

    /** A value with its unit and how well it is known; empty for none. */
    static String value(Input input) {
        if (input == null) {
            return "";
        }
        double plusMinus = input.tolerance().plusMinus();
        return number(input, input.value()) + (plusMinus > 0 ? " \u00b1 " + number(input, plusMinus) : "") + unit(input)
                + (input.tolerance().measured() ? ", measured" : ", assumed");
    }

    private static String number(Input input, double value) {
        String text = Numbers.format(value);
        return input.parameter().quantity() == Quantity.LENGTH ? Told.given(value, text) : text;
    }

    private static String unit(Input input) {
        Quantity quantity = input.parameter().quantity();
        return quantity == Quantity.LENGTH ? " " + Told.UNIT : quantity.unit().isEmpty() ? "" : " " + quantity.unit();
    }
}

package culm.design.edit;

import java.util.Locale;

import culm.blank.Inputs;
import culm.geometry.profile.Parameter;
import culm.model.text.Numbers;

/** What a change is called after the words "undo" and "redo". */
final class Words {
    private Words() {
    }

    /** An input in words: "tie length", "staple top wide", "shape width, row 3". */
    static String of(String path) {
        Parameter described = Inputs.all().get(path);
        if (described != null) {
            return described.label();
        }
        InputPath at = InputPath.of(path);
        return at.isCell() ? apart(at.element()) + " " + apart(at.column()) + ", row " + (at.row() + 1) : apart(at.element()) + " " + apart(at.name());
    }

    /** An input and its new value. */
    static String of(String path, double value) {
        Parameter described = Inputs.all().get(path);
        String unit = described == null || described.quantity().unit().isEmpty() ? "" : " " + described.quantity().unit();
        return of(path) + " to " + Numbers.format(value) + unit;
    }

    /** Names in files are written together; on screen they are words. */
    static String apart(String name) {
        return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}

package culm.workbench.internal.explore;

import java.util.Locale;

/** Whole numbers as they are typed, with or without separators. */
final class Whole {
    private Whole() {
    }

    /** @param what what it is, at the beginning of a sentence. @throws IllegalArgumentException when it is none between the two ends */
    static long read(String what, String typed, long least, long most) {
        String digits = typed.replaceAll("[\\s,._'\u2009\u202f]", "");
        if (!digits.matches("\\d{1,18}") || Long.parseLong(digits) < least || Long.parseLong(digits) > most) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "%s: \"%s\" is not a whole number from %,d to %,d.", what, typed.strip(), least, most));
        }
        return Long.parseLong(digits);
    }
}

package culm.geometry.words;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths in sentences. They stand between marks, with their whole value and how many decimals say enough of it, so that a sentence can be written in
 * another unit when it is shown. {@link #mm} writes it in mm; a sentence without marks is left as it is.
 */
public final class Told {
    /** Stands in no text of a person: it is reserved for what is no text. */
    private static final char MARK = '\uFFFC';
    private static final char APART = '|';
    private static final Pattern MARKED = Pattern.compile(MARK + "([^" + MARK + APART + "]*)(?:\\" + APART + "([^" + MARK + APART + "]*)\\" + APART + "(-?\\d+))?" + MARK);
    /** The unit's sign alone, for where several numbers share it. */
    public static final String UNIT = MARK + "mm" + MARK;

    private Told() {
    }

    /** A length with its unit. @param digits decimals in mm */
    public static String length(double mm, int digits) {
        return number(mm, digits) + " " + UNIT;
    }

    /** A length without its unit. @param digits decimals in mm */
    public static String number(double mm, int digits) {
        String text = String.format(Locale.ROOT, "%." + digits + "f", mm);
        return marked(Double.parseDouble(text) == 0 ? text.replace("-", "") : text, mm, digits);
    }

    /** A length as it was given, without its unit. */
    public static String given(double mm) {
        return given(mm, String.valueOf(mm));
    }

    /** The same as a person or a file wrote it. @param text it in mm, without its unit */
    public static String given(double mm, String text) {
        return marked(text, mm, LengthText.AS_GIVEN);
    }

    /** What a person wrote, without marks. */
    public static String plain(String text) {
        return text.replace(String.valueOf(MARK), "");
    }

    private static String marked(String text, double mm, int digits) {
        return MARK + text + APART + mm + APART + digits + MARK;
    }

    /** A sentence with its lengths in mm. */
    public static String mm(String told) {
        return told.indexOf(MARK) < 0 ? told : MARKED.matcher(told).replaceAll("$1");
    }

    /** A sentence with its lengths in some unit. */
    public static String in(String told, LengthText unit) {
        return told.indexOf(MARK) < 0 ? told : MARKED.matcher(told).replaceAll(m -> Matcher.quoteReplacement(
                m.group(2) == null ? unit.sign() : unit.number(Double.parseDouble(m.group(2)), Integer.parseInt(m.group(3)))));
    }
}

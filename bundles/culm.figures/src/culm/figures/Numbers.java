package culm.figures;

import java.math.BigDecimal;
import java.util.Locale;

/** Numbers as text in drawings: a point, and no minus before a zero. */
public final class Numbers {
    private Numbers() {
    }

    /** With so many decimals. */
    public static String fixed(double value, int digits) {
        String text = String.format(Locale.ROOT, "%." + digits + "f", value);
        return text.startsWith("-") && text.chars().allMatch(c -> c == '-' || c == '0' || c == '.') ? text.substring(1) : text.replace('-', '\u2212');
    }

    /** A length as it was given: one decimal, or two where the second is not zero. */
    public static String given(double mm) {
        return fixed(mm, Math.abs(mm * 10 - Math.rint(mm * 10)) < 0.05 ? 1 : 2);
    }

    /**
     * The difference of two numbers as they are shown, so that what stands beside each other adds up; it has their decimals.
     *
     * @param shown what {@link #fixed} made of a number
     * @param less  the same of the one that is taken away
     */
    public static String difference(String shown, String less) {
        return new BigDecimal(shown.replace('\u2212', '-')).subtract(new BigDecimal(less.replace('\u2212', '-'))).toPlainString().replace('-', '\u2212');
    }

    /** A difference with its plus, where it is above nothing as shown. @param shown what {@link #difference} or {@link #fixed} made of it */
    public static String signed(String shown) {
        return shown.startsWith("\u2212") || shown.matches("[0.]+") ? shown : "+" + shown;
    }

    /** For files: at most three decimals, no trailing zeros. */
    public static String plain(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a drawing has no place for " + value);
        }
        long thousandths = Math.round(value * 1000);
        if (thousandths % 1000 == 0) {
            return Long.toString(thousandths / 1000);
        }
        String text = String.format(Locale.ROOT, "%.3f", thousandths / 1000.0);
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, end);
    }
}

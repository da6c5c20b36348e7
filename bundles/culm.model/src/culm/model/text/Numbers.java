package culm.model.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/**
 * The one place where numbers become text and text becomes numbers. Files always have a point; what a person types may
 * have a comma. Nothing here looks at the locale.
 */
public final class Numbers {
    /** No number of a bench is larger than this, whatever its unit. */
    public static final double LARGEST = 1e9;

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final Pattern NOT_FINITE = Pattern.compile("[+-]?(nan|inf(inity)?)", Pattern.CASE_INSENSITIVE);
    private static final int LONGEST = 400;
    private static final int DIGITS_OF_A_DOUBLE = 17;
    private static final double PLAIN_FROM = 1e-7;

    private Numbers() {
    }

    /**
     * Reads a number as it stands in a file: with a point, without groups.
     *
     * @param text the text; white space around it does not count
     * @return the number, finite, not beyond {@link #LARGEST}
     * @throws NumberFormatException when it is none; its message is the second half of a sentence that begins with the
     *         text
     */
    public static double parse(String text) {
        String trimmed = text.strip();
        if (trimmed.length() > LONGEST) {
            throw new NumberFormatException("is too long for a number");
        }
        if (!NUMBER.matcher(trimmed).matches()) {
            throw new NumberFormatException(whyNot(trimmed));
        }
        double value = Double.parseDouble(trimmed);
        if (Math.abs(value) > LARGEST) {
            throw new NumberFormatException("is larger than anything at a bench");
        }
        return value == 0 ? 0.0 : value;
    }

    /**
     * Reads a number as a person types it: point or comma, a true minus sign, spaces around it.
     *
     * @param text the text
     * @return the number, finite, not beyond {@link #LARGEST}
     * @throws NumberFormatException as {@link #parse}
     */
    public static double parseTyped(String text) {
        String plain = text.strip().replace('\u2212', '-').replace('\u00a0', ' ').strip();
        if (plain.indexOf(',') >= 0) {
            if (plain.indexOf('.') >= 0 || plain.indexOf(',') != plain.lastIndexOf(',')) {
                throw new NumberFormatException("has more than one point or comma");
            }
            plain = plain.replace(',', '.');
        }
        return parse(plain);
    }

    private static String whyNot(String text) {
        if (text.isEmpty()) {
            return "is empty, a number belongs here";
        }
        if (NOT_FINITE.matcher(text).matches()) {
            return "is not a number that can be measured";
        }
        String pointed = text.replace(',', '.');
        if (text.indexOf(',') == text.lastIndexOf(',') && NUMBER.matcher(pointed).matches()) {
            return "has a comma; in a file it is written " + pointed;
        }
        return "is not a number";
    }

    /**
     * Writes a number for a file: the fewest digits that read back as exactly this number.
     *
     * @param value a finite number
     * @return its text, with a point if any, such as 47, 0.25 or 1e-9
     * @throws IllegalArgumentException when it is not finite
     */
    public static String format(double value) {
        requireFinite(value);
        if (value == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(value);
        BigDecimal shortest = exact;
        for (int digits = 1; digits <= DIGITS_OF_A_DOUBLE; digits++) {
            shortest = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (shortest.doubleValue() == value) {
                break;
            }
        }
        shortest = shortest.stripTrailingZeros();
        double size = Math.abs(value);
        if (size >= PLAIN_FROM && size <= LARGEST) {
            return shortest.toPlainString();
        }
        int exponent = shortest.precision() - shortest.scale() - 1;
        return shortest.scaleByPowerOfTen(-exponent).toPlainString() + "e" + exponent;
    }

    /**
     * Writes a number for reading, rounded half up as shown, never as minus zero.
     *
     * @param value a finite number
     * @param decimals how many places after the point, at least 0
     * @return its text with a point
     * @throws IllegalArgumentException when it is not finite
     */
    public static String fixed(double value, int decimals) {
        requireFinite(value);
        BigDecimal rounded = new BigDecimal(format(value)).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
    }
}

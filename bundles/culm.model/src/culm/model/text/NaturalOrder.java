package culm.model.text;

import java.math.BigDecimal;
import java.util.Comparator;

/**
 * Names as people sort them: numbers within them by their value, with decimals after a point, letters whatever their case; names that are alike so far by their
 * characters, so that no two different names are equal. The order is the same on every machine, whatever its language.
 */
public enum NaturalOrder implements Comparator<String> {
    /** The order. */
    INSTANCE;

    @Override
    public int compare(String a, String b) {
        int i = 0;
        int j = 0;
        while (i < a.length() && j < b.length()) {
            int iEnd = end(a, i);
            int jEnd = end(b, j);
            boolean numbers = digit(a, i) && digit(b, j);
            int order = numbers ? new BigDecimal(a.substring(i, iEnd)).compareTo(new BigDecimal(b.substring(j, jEnd))) : Character.compare(letter(a, i), letter(b, j));
            if (order != 0) {
                return order;
            }
            i = iEnd;
            j = jEnd;
        }
        int rest = Integer.compare(a.length() - i, b.length() - j);
        return rest != 0 ? rest : a.compareTo(b);
    }

    /** {@return where what begins at a place ends: a number, or else one character} */
    private static int end(String name, int from) {
        int end = digits(name, from);
        if (end == from) {
            return from + 1;
        }
        int fraction = end < name.length() && name.charAt(end) == '.' ? digits(name, end + 1) : 0;
        return fraction > end + 1 ? fraction : end;
    }

    private static int digits(String name, int from) {
        int end = from;
        while (digit(name, end)) {
            end++;
        }
        return end;
    }

    /** Only the ten that are typed: other scripts' digits stay letters. */
    private static boolean digit(String name, int at) {
        return at < name.length() && name.charAt(at) >= '0' && name.charAt(at) <= '9';
    }

    private static char letter(String name, int at) {
        return Character.toLowerCase(Character.toUpperCase(name.charAt(at)));
    }
}

package culm.model.text;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;

/** Ids of parts, rows and records: short, readable, stable. */
public final class Ids {
    private static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,79}");
    private static final String CONSONANTS = "bdfgklmnprstvz";
    private static final String VOWELS = "aeiou";
    private static final int LONGEST_SLUG = 40;

    private Ids() {
    }

    /**
     * Whether a text can be an id.
     *
     * @param text any text
     * @return true for letters, digits, point, hyphen and underscore, at most 80, the first a letter or digit
     */
    public static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    /**
     * An id from a name, such as {@code staple-47-of-may} from "Staple 47 of May".
     *
     * @param name any text
     * @param otherwise what to use when nothing of the name can stand in an id
     * @param taken ids not to give again
     * @return an id not in {@code taken}
     */
    public static String of(String name, String otherwise, Collection<String> taken) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-+|-+$", "");
        if (plain.length() > LONGEST_SLUG) {
            plain = plain.substring(0, LONGEST_SLUG).replaceAll("-+$", "");
        }
        String base = isId(plain) ? plain : otherwise;
        String id = base;
        for (int i = 2; taken.contains(id); i++) {
            id = base + "-" + i;
        }
        return id;
    }

    /** Gives the lowest numbers not taken, to what came without an id. */
    public static final class Counter {
        private final Collection<String> taken;
        private int last;

        /**
         * Starts at 1.
         *
         * @param taken ids not to give
         */
        public Counter(Collection<String> taken) {
            this.taken = taken;
        }

        /** {@return an id not taken and not given before} */
        public String next() {
            do {
                last++;
            } while (taken.contains(Integer.toString(last)));
            return Integer.toString(last);
        }
    }

    /**
     * An id for a new row. It is drawn, not counted, so that two people who each add a row do not give the same id.
     *
     * @param taken ids not to give again
     * @param random where chance comes from
     * @return two syllables such as {@code kovu}, not in {@code taken}
     */
    public static String draw(Collection<String> taken, RandomGenerator random) {
        StringBuilder id = new StringBuilder();
        do {
            if (id.length() > CONSONANTS.length()) {
                id.setLength(0);
            }
            id.append(pick(CONSONANTS, random)).append(pick(VOWELS, random));
            id.append(pick(CONSONANTS, random)).append(pick(VOWELS, random));
        } while (taken.contains(id.toString()));
        return id.toString();
    }

    private static char pick(String letters, RandomGenerator random) {
        return letters.charAt(random.nextInt(letters.length()));
    }
}

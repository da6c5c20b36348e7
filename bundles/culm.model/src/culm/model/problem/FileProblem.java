package culm.model.problem;

import java.util.Objects;

/**
 * What is wrong with a file, as data.
 *
 * @param kind what sort of problem
 * @param file the file as it is shown to the user
 * @param line the line, from 1; 0 when it concerns the file as a whole
 * @param value the text that is wrong, shortened; empty when there is none
 * @param sentence what is wrong and what to do, one clear sentence without file and line
 */
public record FileProblem(Kind kind, String file, int line, String value, String sentence) {
    private static final int LONGEST_VALUE = 60;

    /** Sorts of problems. */
    public enum Kind {
        /** There is no such file, or it is a folder. */
        NO_FILE,
        /** The file cannot be read or written. */
        NOT_ACCESSIBLE,
        /** Nothing is in it. */
        EMPTY,
        /** It is longer, deeper or has more elements than any studio needs. */
        TOO_LARGE,
        /** It is not text in UTF-8. */
        ENCODING,
        /** It is not well-formed XML. */
        NOT_XML,
        /** It has a document type declaration or uses entities, which are never resolved. */
        ENTITIES,
        /** It is some other sort of file. */
        WRONG_ROOT,
        /** It has no format version, or none that can be read. */
        BAD_FORMAT,
        /** It was written by a newer Culm. */
        NEWER_FORMAT,
        /** A number that is none. */
        NOT_A_NUMBER,
        /** A number outside what is possible. */
        OUT_OF_RANGE,
        /** A word, date or id that is not one of those possible. */
        BAD_VALUE,
        /** Something that must be given is not. */
        MISSING_VALUE,
        /** Something that may be given once is given again. */
        TWICE,
        /** An id or name that another element of the same list has. */
        DUPLICATE_ID,
        /** Something that does not belong there. */
        MISPLACED,
        /** An address that is not relative, or leads out of the studio. */
        BAD_LINK,
        /** The linked file is not there. */
        LINK_FILE_MISSING,
        /** The linked file has no part of that id. */
        LINK_PART_MISSING,
        /** The linked part is of another kind. */
        LINK_WRONG_KIND,
        /** The file has changed on disk since it was read. */
        CHANGED_ON_DISK
    }

    /** Shortens the value. */
    public FileProblem {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(file);
        Objects.requireNonNull(sentence);
        value = shorten(value);
    }

    /** {@return the whole line to show: file, line and sentence} */
    public String message() {
        return line > 0 ? file + ", line " + line + ": " + sentence : file + ": " + sentence;
    }

    /**
     * A value short enough for one line of a message, without line breaks or control characters.
     *
     * @param value any text
     * @return the text, cut after some sixty characters
     */
    public static String shorten(String value) {
        return shorten(value, LONGEST_VALUE);
    }

    /**
     * A text short enough for one line of a message, without line breaks or control characters.
     *
     * @param value any text
     * @param longest the most characters to keep
     * @return the text, cut where it is too long
     */
    public static String shorten(String value, int longest) {
        String start = value.length() > 4 * longest ? value.substring(0, 4 * longest) : value;
        String line = start.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
        return line.length() <= longest ? line : line.substring(0, longest - 1) + "\u2026";
    }
}

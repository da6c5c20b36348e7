package culm.workbench.internal.bench.page;

import java.util.Optional;

import culm.blank.rules.Severity;

/**
 * One note of a list.
 *
 * @param kind how it looks
 * @param sign its sign; empty for none
 * @param text what it says
 * @param link the word that does something; empty for none
 * @param todo what it does
 */
public record Note(Kind kind, Optional<Severity> sign, String text, String link, Runnable todo) {
    /** How a note looks. */
    public enum Kind {
        /** Above others. */
        HEAD,
        /** Important. */
        STRONG,
        /** As it is. */
        TEXT,
        /** Only explains the one above. */
        WEAK
    }

    /** A head. */
    public static Note head(String text) {
        return new Note(Kind.HEAD, Optional.empty(), text, "", () -> { });
    }

    /** A head with something that can be done. */
    public static Note head(String text, String link, Runnable todo) {
        return new Note(Kind.HEAD, Optional.empty(), text, link, todo);
    }

    /** An important sentence. */
    public static Note strong(String text) {
        return new Note(Kind.STRONG, Optional.empty(), text, "", () -> { });
    }

    /** A sentence. */
    public static Note text(String text) {
        return new Note(Kind.TEXT, Optional.empty(), text, "", () -> { });
    }

    /** What explains the sentence above. */
    public static Note weak(String text) {
        return new Note(Kind.WEAK, Optional.empty(), text, "", () -> { });
    }

    /** The same with a sign. */
    public Note signed(Severity severity) {
        return new Note(kind, Optional.of(severity), text, link, todo);
    }

    /** The same with a word that does something. */
    public Note does(String words, Runnable what) {
        return new Note(kind, sign, text, words, what);
    }
}

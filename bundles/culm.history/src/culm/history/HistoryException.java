package culm.history;

/** Something about a studio's history cannot be done, told in one clear sentence. */
public final class HistoryException extends Exception {
    private static final long serialVersionUID = 1L;

    HistoryException(String sentence) {
        super(sentence);
    }

    HistoryException(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}

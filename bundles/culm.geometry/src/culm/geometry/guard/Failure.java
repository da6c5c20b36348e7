package culm.geometry.guard;

import java.lang.reflect.InvocationTargetException;

/** What someone else's code threw, in words. */
public final class Failure {
    private static final int LONGEST = 160;

    private Failure() {
    }

    /** Kind and message of what was thrown, one line without a full stop: {@code NullPointerException: no rows}. */
    public static String words(Throwable thrown) {
        boolean wrapper = thrown instanceof ExceptionInInitializerError || thrown instanceof InvocationTargetException;
        if (wrapper && thrown.getCause() != null) {
            return words(thrown.getCause());
        }
        String message = thrown.getMessage() == null ? "" : thrown.getMessage().strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
        if (message.length() > LONGEST) {
            message = message.substring(0, LONGEST - 1) + "\u2026";
        }
        String kind = thrown.getClass().getSimpleName();
        String text = message.isEmpty() ? kind : kind + ": " + message;
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    /** Whether a failure is the code's own, and not that of the machine, such as a lack of memory. */
    public static boolean ownFault(Throwable thrown) {
        return thrown instanceof Exception || thrown instanceof LinkageError || thrown instanceof AssertionError || thrown instanceof StackOverflowError;
    }
}

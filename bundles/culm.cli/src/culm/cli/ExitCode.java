package culm.cli;

/** What the process ends with. */
public final class ExitCode {

    /** Nothing is wrong; warnings are allowed. */
    public static final int FINE = 0;
    /** An error finding: the blank will not work. */
    public static final int WILL_NOT_WORK = 1;
    /** The command was given wrongly. */
    public static final int USAGE = 2;
    /** An input cannot be read, or an output cannot be written. */
    public static final int UNREADABLE = 3;

    private ExitCode() {
    }
}

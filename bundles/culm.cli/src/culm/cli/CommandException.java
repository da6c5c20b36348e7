package culm.cli;

/** Ends a command with one clear sentence for the person who gave it, and an exit code. */
public final class CommandException extends Exception {

    private static final long serialVersionUID = 1L;

    private final int code;

    private CommandException(int code, String sentence) {
        super(sentence);
        this.code = code;
    }

    /**
     * The command was given wrongly.
     *
     * @param sentence what is wrong, with the word that is
     */
    public static CommandException usage(String sentence) {
        return new CommandException(ExitCode.USAGE, sentence);
    }

    /**
     * An input cannot be read, or an output cannot be written.
     *
     * @param sentence what is wrong, with file, line and value
     */
    public static CommandException unreadable(String sentence) {
        return new CommandException(ExitCode.UNREADABLE, sentence);
    }

    /** The exit code, one of {@link ExitCode}. */
    public int code() {
        return code;
    }
}

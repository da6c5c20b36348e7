package culm.cli;

import java.util.List;

import culm.model.problem.FileProblemException;

/** One word of the command line, as {@code report} in {@code culm report FILE}. */
public interface Command {

    /** The word. */
    String name();

    /** What follows the word, as {@code FILE [--json]}. */
    String arguments();

    /** What it does, in one line. */
    String summary();

    /** More for its {@code --help}: what the options and the output mean; may be empty, ends with a line break otherwise. */
    default String help() {
        return "";
    }

    /**
     * Does it.
     *
     * @param arguments what followed the word
     * @param terminal  where to read and print
     * @return one of {@link ExitCode}
     * @throws CommandException     if it cannot be done as given
     * @throws FileProblemException if a file cannot be used; says why
     */
    int run(List<String> arguments, Terminal terminal) throws CommandException, FileProblemException;
}

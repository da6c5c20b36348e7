package culm.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import culm.cli.bench.BatchCommand;
import culm.cli.bench.CardCommand;
import culm.cli.bench.LearnCommand;
import culm.cli.bench.LogCommand;
import culm.cli.bench.TemplateCommand;
import culm.cli.bench.WrongCommand;
import culm.cli.explore.ExploreCommands;
import culm.cli.history.HistoryCommand;
import culm.cli.parameters.ParametersCommand;
import culm.cli.plugins.PlugInBuild;
import culm.cli.plugins.PlugInCommands;
import culm.cli.report.ReportCommand;
import culm.cli.studio.StudioCommands;
import culm.extensions.Extensions;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** The words that the command line knows, and what happens when one of them is given. */
public final class Commands {

    /**
     * Commands that belong together.
     *
     * @param title    what they have to do with, as a heading
     * @param commands the commands, in the order in which the help lists them
     */
    public record Group(String title, List<Command> commands) {
    }

    private final List<Group> groups;

    /**
     * @param groups the commands, in the order in which the help lists them
     */
    public Commands(List<Group> groups) {
        this.groups = List.copyOf(groups);
    }

    /**
     * The commands that ship.
     *
     * @param extensions the types and rules that are known, from plug-ins as well
     * @param build      builds plug-in projects against this program
     */
    public static Commands shipped(Extensions extensions, PlugInBuild build) {
        Profiles profiles = extensions.profiles();
        return new Commands(List.of(
                new Group("A design", List.of(new ReportCommand(profiles, extensions.rules(), extensions.findings()), new ParametersCommand(profiles))),
                new Group("Exploring", ExploreCommands.all(profiles, extensions.rules())),
                new Group("At the bench", List.of(new BatchCommand(profiles), new CardCommand(profiles, extensions.rules()), new TemplateCommand(profiles),
                        new LogCommand(profiles), new WrongCommand(profiles), new LearnCommand(profiles))),
                new Group("A studio", Stream.concat(StudioCommands.all(extensions).stream(), Stream.of(new HistoryCommand(profiles))).toList()),
                new Group("Plug-ins", PlugInCommands.all(extensions, build))));
    }

    /**
     * Runs one command line.
     *
     * @param arguments the word and what follows it
     * @param terminal  where to read and print
     * @return one of {@link ExitCode}
     */
    public int run(List<String> arguments, Terminal terminal) {
        String word = arguments.isEmpty() ? "" : arguments.get(0);
        boolean help = List.of("help", "--help", "-h").contains(word);
        if (help && arguments.size() == 1) {
            terminal.out().print(overview());
            return ExitCode.FINE;
        }
        String asked = help ? arguments.get(1) : word;
        Optional<Command> command = groups.stream().flatMap(each -> each.commands().stream()).filter(each -> each.name().equals(asked)).findFirst();
        if (command.isEmpty()) {
            terminal.err().print((asked.isEmpty() ? "" : "culm: there is no command '" + asked + "'\n") + overview());
            return ExitCode.USAGE;
        }
        return run(command.get(), help ? List.of("--help") : arguments.subList(1, arguments.size()), terminal);
    }

    private static int run(Command command, List<String> arguments, Terminal terminal) {
        if (arguments.contains("--help")) {
            terminal.out().print("usage: " + line(command) + command.help());
            return ExitCode.FINE;
        }
        try {
            return command.run(arguments, terminal);
        } catch (FileProblemException e) {
            return refused(command, CommandException.unreadable(e.problem().message()), terminal);
        } catch (CommandException e) {
            return refused(command, e, terminal);
        }
    }

    private static int refused(Command command, CommandException why, Terminal terminal) {
        terminal.err().println("culm " + command.name() + ": " + why.getMessage());
        if (why.code() == ExitCode.USAGE)
            terminal.err().print("usage: " + line(command));
        return why.code();
    }

    private String overview() {
        StringBuilder text = new StringBuilder("""
                usage: culm [FOLDER]       opens the window on a folder of designs
                       culm COMMAND ...    runs one command; culm help COMMAND says more
                """);
        for (Group group : groups) {
            text.append('\n').append(group.title()).append('\n');
            group.commands().forEach(each -> text.append("  %-14s %s\n".formatted(each.name(), each.summary())));
        }
        return text.append("\nEnds with 0: nothing is wrong, 1: the blank will not work, 2: wrong usage, 3: unreadable input.\n").toString();
    }

    private static String line(Command command) {
        return "culm " + command.name() + ' ' + command.arguments() + "\n       " + command.summary() + '\n';
    }
}

package culm.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

/** The words that the command line knows, and what happens when one of them is given. */
public final class Commands {

    private final List<Command> known;

    /**
     * @param known the commands, in the order in which the usage lists them
     */
    public Commands(List<Command> known) {
        this.known = List.copyOf(known);
    }

    /**
     * The commands that ship.
     *
     * @param extensions the types and rules that are known, from plug-ins as well
     * @param build      builds plug-in projects against this program
     */
    public static Commands shipped(Extensions extensions, PlugInBuild build) {
        List<Command> all = new ArrayList<>();
        all.add(new ReportCommand(extensions.profiles(), extensions.rules(), extensions.findings()));
        all.addAll(ExploreCommands.all(extensions.profiles(), extensions.rules()));
        all.add(new BatchCommand(extensions.profiles()));
        all.add(new CardCommand(extensions.profiles(), extensions.rules()));
        all.add(new TemplateCommand(extensions.profiles()));
        all.add(new LogCommand(extensions.profiles()));
        all.add(new WrongCommand(extensions.profiles()));
        all.add(new LearnCommand(extensions.profiles()));
        all.add(new ParametersCommand(extensions.profiles()));
        all.addAll(StudioCommands.all(extensions));
        all.add(new HistoryCommand(extensions.profiles()));
        all.addAll(PlugInCommands.all(extensions, build));
        return new Commands(all);
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
        if (word.equals("help") || word.equals("--help") || word.equals("-h")) {
            terminal.out().print(usage());
            return ExitCode.FINE;
        }
        Optional<Command> command = known.stream().filter(each -> each.name().equals(word)).findFirst();
        if (command.isEmpty()) {
            terminal.err().print((word.isEmpty() ? "" : "culm: there is no command '" + word + "'\n") + usage());
            return ExitCode.USAGE;
        }
        return run(command.get(), arguments.subList(1, arguments.size()), terminal);
    }

    private static int run(Command command, List<String> arguments, Terminal terminal) {
        if (arguments.contains("--help")) {
            terminal.out().print("usage: " + line(command) + command.help());
            return ExitCode.FINE;
        }
        try {
            return command.run(arguments, terminal);
        } catch (CommandException e) {
            terminal.err().println("culm " + command.name() + ": " + e.getMessage());
            if (e.code() == ExitCode.USAGE)
                terminal.err().print("usage: " + line(command));
            return e.code();
        }
    }

    private String usage() {
        StringBuilder text = new StringBuilder("usage: culm [FOLDER]    opens the window on a folder of designs\n");
        known.forEach(each -> text.append("       ").append(line(each)));
        return text.append("Ends with 0: nothing is wrong, 1: the blank will not work, 2: wrong usage, 3: unreadable input.\n").toString();
    }

    private static String line(Command command) {
        return "culm " + command.name() + ' ' + command.arguments() + "    " + command.summary() + '\n';
    }
}

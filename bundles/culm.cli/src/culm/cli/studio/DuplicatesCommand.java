package culm.cli.studio;

import java.util.List;
import java.util.stream.Collectors;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.parts.Duplicates;
import culm.design.parts.Duplicates.Found;
import culm.design.parts.Duplicates.Report;
import culm.model.studio.Studio;

/** {@code culm duplicates FOLDER}: parts that are the same in every number. */
final class DuplicatesCommand implements Command {
    @Override
    public String name() {
        return "duplicates";
    }

    @Override
    public String arguments() {
        return "FOLDER [--json]";
    }

    @Override
    public String summary() {
        return "finds parts that are the same in every number, whatever they are called";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of());
        Studio studio = StudioCommands.studio(terminal, arguments.only("a studio's folder"));
        Report report = Duplicates.find(studio, studio.index());
        if (arguments.has("--json")) {
            terminal.out().println(StudioCommands.GSON.toJson(report.groups().stream().map(g -> g.stream().map(f -> address(studio, f)).toList()).toList()));
        } else {
            report.groups().forEach(group -> terminal.out().println(group.get(0).kind() + ": "
                    + group.stream().map(f -> address(studio, f) + (f.copy() ? " (its own copy)" : "")).collect(Collectors.joining(", "))));
            if (report.groups().isEmpty()) {
                terminal.out().println("No two parts are the same.");
            }
        }
        report.problems().forEach(problem -> terminal.err().println(problem.message()));
        return ExitCode.FINE;
    }

    private static String address(Studio studio, Found found) {
        return studio.shown(found.file()) + "#" + (found.id().isEmpty() ? found.kind() : found.id());
    }
}

package culm.cli.studio;

import java.util.List;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.parts.PartAddress;
import culm.model.files.ModelFiles;
import culm.model.studio.Studio;
import culm.model.studio.StudioIndex.Use;

/** {@code culm used-by PART}: the designs that are made with a part. */
final class UsedByCommand implements Command {
    @Override
    public String name() {
        return "used-by";
    }

    @Override
    public String arguments() {
        return "FILE.parts#PART [--json]";
    }

    @Override
    public String summary() {
        return "lists the designs that are made with a part of a parts file";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of());
        PartAddress part = StudioCommands.part(terminal, arguments.only("a part"));
        Studio studio = Studio.around(part.file(), new ModelFiles());
        List<Use> uses = studio.index().usersOf(part.file(), part.id());
        if (arguments.has("--json")) {
            terminal.out().println(StudioCommands.GSON.toJson(uses.stream().map(use -> use.design().shown()).toList()));
        } else if (uses.isEmpty()) {
            terminal.out().println("No design uses it.");
        } else {
            uses.forEach(use -> terminal.out().printf("%-40s %s%n", use.design().shown(), use.design().name()));
        }
        return ExitCode.FINE;
    }
}

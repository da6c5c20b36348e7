package culm.cli.plugins;

import java.util.List;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.Terminal;

/** {@code culm build-plug-in FOLDER}: compiles a plug-in project against this program, tests it and installs it. */
public final class BuildPlugInCommand implements Command {
    private final PlugInBuild build;

    /** @param build does it */
    public BuildPlugInCommand(PlugInBuild build) {
        this.build = build;
    }

    @Override
    public String name() {
        return "build-plug-in";
    }

    @Override
    public String arguments() {
        return "FOLDER [--no-tests]";
    }

    @Override
    public String summary() {
        return "builds a plug-in project against this program, tests it and puts it into the folder of plug-ins";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of("--no-tests"), List.of());
        return build.run(terminal.file(arguments.only("a project's folder")), !arguments.has("--no-tests"), terminal);
    }
}

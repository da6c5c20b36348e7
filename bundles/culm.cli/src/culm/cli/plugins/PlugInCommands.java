package culm.cli.plugins;

import java.util.List;

import culm.cli.Command;
import culm.cli.export.ExportCommand;
import culm.extensions.Extensions;

/** The commands that have to do with plug-ins. */
public final class PlugInCommands {
    private PlugInCommands() {
    }

    /** All of them, in the order in which the usage lists them. @param build builds projects against this program */
    public static List<Command> all(Extensions extensions, PlugInBuild build) {
        return List.of(new ExportCommand(extensions), new PlugInsCommand(extensions), new NewPlugInCommand(build), new BuildPlugInCommand(build));
    }
}

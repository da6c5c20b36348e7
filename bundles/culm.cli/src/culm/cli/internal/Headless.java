package culm.cli.internal;

import java.net.URI;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

import culm.cli.Commands;
import culm.cli.Terminal;
import culm.cli.plugins.PlugInBuild;
import culm.extensions.Extensions;

/** The command line as an application of the product: {@code -application culm.cli.app}. */
public final class Headless implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        Terminal terminal = Terminal.ofProcess();
        int code = Commands.shipped(Extensions.start(), new PlugInBuild(home(), plugIns())).run(List.of(arguments), terminal);
        terminal.flush();
        return code;
    }

    /** The program's folder. */
    private static Path home() {
        return Path.of(URI.create(Platform.getInstallLocation().getURL().toString().replace(" ", "%20")));
    }

    private static Path plugIns() {
        String folder = System.getProperty(Extensions.FOLDER, "");
        return folder.isBlank() ? home().resolve("plug-ins") : Path.of(folder).toAbsolutePath();
    }

    @Override
    public void stop() {
        // A command runs on the thread that called start, and ends with it.
    }
}

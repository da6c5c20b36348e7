package culm.workbench.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

import culm.extensions.Extensions;

/** Starts the workbench and runs it until its last window closes. */
public final class Application implements IApplication {

    @Override
    public Object start(IApplicationContext context) throws IOException {
        StateFolder.take();
        CompletableFuture<Extensions> extensions = Beforehand.begin();
        Display display = PlatformUI.createDisplay();
        try {
            int code = PlatformUI.createAndRunWorkbench(display, new StudioAdvisor(studio(context), extensions.join()));
            Beforehand.remember();
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    /** The folder named on the command line. */
    private static Optional<Path> studio(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        for (String argument : arguments) {
            if (!argument.startsWith("-") && Files.isDirectory(Path.of(argument)))
                return Optional.of(Path.of(argument).toAbsolutePath().normalize());
        }
        return Optional.empty();
    }

    @Override
    public void stop() {
        if (!PlatformUI.isWorkbenchRunning())
            return;
        IWorkbench workbench = PlatformUI.getWorkbench();
        workbench.getDisplay().syncExec(workbench::close);
    }
}

package culm.workbench.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;

/**
 * The folder in which the window keeps its layout and settings between runs. Two programs that run at the same time must not write the same
 * one, so the second takes a folder of its own.
 */
final class StateFolder {

    private static final int MOST_AT_ONCE = 20;

    private StateFolder() {
    }

    /**
     * Takes the first free folder, and keeps it until the program ends. Nothing happens when a folder was given on the command line
     * ({@code -data}).
     *
     * @throws IOException if no folder can be written
     */
    static void take() throws IOException {
        Location location = Platform.getInstanceLocation();
        if (location.isSet())
            return;
        Path base = base();
        for (int number = 1; number <= MOST_AT_ONCE; number++) {
            Path folder = base.resolve(number == 1 ? "window" : "window-" + number);
            if (isFree(location, folder)) {
                location.set(folder.toUri().toURL(), true);
                return;
            }
        }
        throw new IOException("Culm is open " + MOST_AT_ONCE + " times already; close one of them");
    }

    private static boolean isFree(Location like, Path folder) throws IOException {
        Location trial = like.createLocation(null, folder.toUri().toURL(), false);
        return !trial.isLocked();
    }

    private static Path base() {
        String given = System.getProperty("culm.state");
        return given != null ? Path.of(given) : Path.of(System.getProperty("user.home"), ".culm");
    }
}

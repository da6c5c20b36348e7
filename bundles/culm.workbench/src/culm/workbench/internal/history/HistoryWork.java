package culm.workbench.internal.history;

import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

import org.eclipse.swt.widgets.Display;

import culm.geometry.profile.Profiles;
import culm.history.HistoryException;
import culm.history.StudioHistory;

/** Work on a history, one after the other on a thread of its own; what it gives or refuses is told on the display's thread. */
final class HistoryWork {
    /** Something done with a history. */
    interface Task<T> {
        T run(StudioHistory history) throws HistoryException;
    }

    /** Something done without one. */
    interface Start<T> {
        T run() throws HistoryException;
    }

    private final Path studio;
    private final Profiles profiles;
    private final Display display;
    private final Consumer<String> refused;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "Culm history");
        thread.setDaemon(true);
        return thread;
    });
    private int waiting;

    HistoryWork(Path studio, Profiles profiles, Display display, Consumer<String> refused) {
        this.studio = studio;
        this.profiles = profiles;
        this.display = display;
        this.refused = refused;
    }

    /** Does something with the history. @param done takes what came of it */
    <T> void with(Task<T> task, Consumer<T> done) {
        start(() -> {
            try (StudioHistory history = StudioHistory.open(studio, profiles).orElseThrow(() -> new IllegalStateException("no history"))) {
                return task.run(history);
            }
        }, done);
    }

    /** Does something. @param done takes what came of it */
    <T> void start(Start<T> task, Consumer<T> done) {
        waiting++;
        worker.execute(() -> {
            Runnable told;
            try {
                T result = task.run();
                told = () -> done.accept(result);
            } catch (HistoryException e) {
                told = () -> refused.accept(e.getMessage());
            }
            Runnable tell = told;
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    waiting--;
                    tell.run();
                });
            }
        });
    }

    /** {@return whether something is still being done; asked on the display's thread} */
    boolean busy() {
        return waiting > 0;
    }

    void close() {
        worker.shutdownNow();
    }
}

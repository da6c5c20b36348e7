package culm.workbench.internal.explore;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeListener;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import culm.explore.Watcher;

/**
 * A run in the background. How far it is, and what was found so far, reach the display's thread some times a second: what was overtaken
 * before it was shown is not shown.
 *
 * @param <R> what is found
 */
final class RunJob<R> extends Job {
    private static final long SO_FAR_EVERY_NANOS = 400_000_000L;

    /** What is run. */
    @FunctionalInterface
    interface Work<R> {
        R run(Watcher<R> watcher) throws Exception;
    }

    /** Who is told, on the display's thread. */
    interface Listener<R> {
        void progress(long done, long all);

        /** A result so far. */
        void soFar(R result);

        /** The end. @param result what was found; null when it failed */
        void ended(R result, String problem);
    }

    private final Display display;
    private final Work<R> work;
    private final Listener<R> listener;
    private final AtomicReference<Runnable> waiting = new AtomicReference<>();
    private volatile boolean began;

    RunJob(String name, Display display, Work<R> work, Listener<R> listener) {
        super(name);
        this.display = display;
        this.work = work;
        this.listener = listener;
        setSystem(true);
        addJobChangeListener(IJobChangeListener.onDone(e -> {
            if (!began) { // stopped before: it never runs, and would never end
                tell(() -> listener.ended(null, "Stopped before it began."));
            }
        }));
    }

    /** How many threads a run takes: one processor is left to the window. */
    static int threads() {
        return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        began = true;
        try {
            R result = work.run(watcher(monitor));
            tell(() -> listener.ended(result, ""));
        } catch (IllegalArgumentException e) {
            tell(() -> listener.ended(null, e.getMessage()));
        } catch (Exception e) {
            tell(() -> listener.ended(null, "It could not be run: " + e.getMessage()));
            return Status.error("A run of " + getName() + " failed.", e);
        }
        return Status.OK_STATUS;
    }

    private Watcher<R> watcher(IProgressMonitor monitor) {
        long[] shown = {System.nanoTime()};
        return new Watcher<>() {
            @Override
            public void progress(long done, long all, Supplier<R> soFar) {
                boolean whole = System.nanoTime() - shown[0] > SO_FAR_EVERY_NANOS;
                R result = whole ? soFar.get() : null;
                if (whole) {
                    shown[0] = System.nanoTime();
                }
                tell(() -> {
                    listener.progress(done, all);
                    if (result != null) {
                        listener.soFar(result);
                    }
                });
            }

            @Override
            public boolean cancelled() {
                return monitor.isCanceled();
            }
        };
    }

    /** At most one message waits for the display. */
    private void tell(Runnable message) {
        if (waiting.getAndSet(message) == null && !display.isDisposed()) {
            display.asyncExec(() -> {
                Runnable last = waiting.getAndSet(null);
                if (last != null) {
                    last.run();
                }
            });
        }
    }
}

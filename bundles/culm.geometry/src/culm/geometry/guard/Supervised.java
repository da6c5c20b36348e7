package culm.geometry.guard;

import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * Runs work that calls plug-ins on a thread of its own and waits for it only so long. A plug-in that does not come back is stopped by its
 * {@link Guard} and named; its thread is a daemon and is left behind, because Java cannot end it.
 */
public final class Supervised {
    private Supervised() {
    }

    /**
     * The result of the work.
     * @throws Overdue          when it took longer than the limit
     * @throws RuntimeException what the work threw
     * @throws InterruptedException when the waiting thread was interrupted; the work is interrupted too
     */
    public static <R> R call(Duration limit, Supplier<R> work) throws InterruptedException {
        FutureTask<R> task = new FutureTask<>(work::get);
        SupervisedThread thread = new SupervisedThread(task, "supervised");
        thread.start();
        try {
            return task.get(limit.toNanos(), TimeUnit.NANOSECONDS);
        } catch (TimeoutException e) {
            Guard guard = thread.inside();
            task.cancel(true);
            throw overdue(guard, limit);
        } catch (InterruptedException e) {
            task.cancel(true);
            throw e;
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException thrown) {
                throw thrown;
            }
            if (e.getCause() instanceof Error thrown) {
                throw thrown;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private static Overdue overdue(Guard guard, Duration limit) {
        String after = Guard.seconds(limit.toNanos());
        if (guard == null) {
            return new Overdue("The computation did not end within " + after + ", and no plug-in was at work.");
        }
        guard.stop("has not come back after " + after + " and was stopped");
        return new Overdue(guard.health().lastFailure().orElseThrow());
    }

    /** Work that was not done in time; the sentence names the plug-in that held it up. */
    public static final class Overdue extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Overdue(String sentence) {
            super(sentence);
        }
    }
}

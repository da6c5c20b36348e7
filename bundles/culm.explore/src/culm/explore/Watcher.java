package culm.explore;

import java.util.function.Supplier;

/** Looks on while something long runs, and may stop it. Called from the thread that started the run, some times a second. */
public interface Watcher<R> {
    /** @param soFar makes a result of what is done so far, when asked */
    default void progress(long done, long all, Supplier<R> soFar) {
    }

    /** Whether to stop; what was done is kept. Asked by every thread of the run. */
    default boolean cancelled() {
        return false;
    }

    /** Looks away. */
    static <R> Watcher<R> none() {
        return new Watcher<>() {
        };
    }
}

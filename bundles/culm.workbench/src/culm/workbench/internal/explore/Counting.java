package culm.workbench.internal.explore;

import java.util.function.Supplier;

import culm.explore.Watcher;

/** Passes on how far a run is, without results so far. */
record Counting(Watcher<?> to) implements Watcher<Void> {
    @Override
    public void progress(long done, long all, Supplier<Void> soFar) {
        to.progress(done, all, () -> null);
    }

    @Override
    public boolean cancelled() {
        return to.cancelled();
    }
}

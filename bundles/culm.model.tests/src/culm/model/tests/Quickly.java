package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import org.junit.jupiter.api.function.ThrowingSupplier;

/** Runs something that must take less than two seconds of its thread's own time, however busy the machine is. */
final class Quickly {
    private static final long LIMIT = Duration.ofSeconds(2).toNanos();
    private static final Duration HANG = Duration.ofSeconds(60);

    private Quickly() {
    }

    static <T> T get(ThrowingSupplier<T> action) {
        return assertTimeoutPreemptively(HANG, () -> {
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            T result = action.get();
            long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
            assertTrue(took < LIMIT, () -> "took " + took / 1_000_000 + " ms");
            return result;
        });
    }
}

package culm.blank;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/** Independent pieces of work, done by this thread and by another one: whoever has time takes the next. */
final class Together {
    private Together() {
    }

    /**
     * Does all pieces; returns when all are done. A helper that has not begun by then is not waited for.
     *
     * @param pieces how many there are
     * @param work does the one of that number; it may be asked by two threads at once, and writes where no other piece writes
     * @param besides where a helper runs; without one this thread does it all
     */
    static void each(int pieces, IntConsumer work, Optional<Executor> besides) {
        AtomicInteger next = new AtomicInteger();
        Runnable take = () -> {
            for (int i = next.getAndIncrement(); i < pieces; i = next.getAndIncrement()) {
                work.accept(i);
            }
        };
        AtomicBoolean begun = new AtomicBoolean();
        Optional<CompletableFuture<Void>> helper = besides.map(where -> CompletableFuture.runAsync(() -> {
            if (begun.compareAndSet(false, true)) {
                take.run();
            }
        }, where));
        try {
            take.run();
        } finally {
            helper.filter(h -> !begun.compareAndSet(false, true)).ifPresent(Together::await);
        }
    }

    private static void await(CompletableFuture<Void> helper) {
        try {
            helper.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException failed ? failed : e;
        }
    }
}

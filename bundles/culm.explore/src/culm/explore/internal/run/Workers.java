package culm.explore.internal.run;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/** Hands out numbered pieces of work to threads, in order, until none is left or somebody cancels; what was handed out is finished, so that the done ones are always the first ones. */
public final class Workers {
    private static final long LOOK_EVERY_MILLIS = 100;

    /** What one thread does with one piece. */
    public interface Work {
        void piece(long number);
    }

    private Workers() {
    }

    /**
     * Runs pieces 0 to {@code pieces} - 1 on as many threads as there are works.
     * @param look called some times a second on the calling thread
     * @return how many pieces were done
     */
    public static long run(List<? extends Work> works, long pieces, BooleanSupplier cancelled, Runnable look) {
        AtomicLong next = new AtomicLong();
        ExecutorService pool = Executors.newFixedThreadPool(works.size(), Workers::thread);
        try {
            List<Future<?>> running = new ArrayList<>();
            for (Work work : works) {
                running.add(pool.submit(() -> {
                    while (!cancelled.getAsBoolean()) {
                        long piece = next.getAndIncrement();
                        if (piece >= pieces) {
                            return;
                        }
                        work.piece(piece);
                    }
                }));
            }
            for (Future<?> one : running) {
                await(one, look);
            }
        } finally {
            pool.shutdownNow();
        }
        return Math.min(pieces, next.get());
    }

    static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "culm explore");
        thread.setDaemon(true);
        return thread;
    }

    private static void await(Future<?> one, Runnable look) {
        while (true) {
            try {
                one.get(LOOK_EVERY_MILLIS, TimeUnit.MILLISECONDS);
                return;
            } catch (TimeoutException stillRunning) {
                look.run();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("The run was interrupted.", e);
            } catch (ExecutionException e) {
                throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
            }
        }
    }
}

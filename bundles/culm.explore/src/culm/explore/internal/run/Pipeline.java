package culm.explore.internal.run;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/**
 * Makes numbered pieces on several threads and hands them on in order on the calling thread; a few pieces wait at most.
 *
 * @param <W> a thread's own tools
 * @param <P> a piece
 */
public final class Pipeline<W, P> {
    private static final int WAITING = 3;
    private final int threads;
    private final BlockingQueue<W> tools = new LinkedBlockingQueue<>();

    /** Makes one piece. */
    public interface Maker<W, P> {
        P make(W tools, long piece);
    }

    /** Takes a piece. */
    public interface Taker<P> {
        void take(P piece) throws IOException;
    }

    public Pipeline(int threads, Supplier<W> tools) {
        this.threads = threads;
        for (int i = 0; i < threads; i++) {
            this.tools.add(tools.get());
        }
    }

    /** @return how many pieces were handed on */
    public long run(long pieces, Maker<W, P> maker, Taker<P> taker, BooleanSupplier cancelled) throws IOException {
        ExecutorService pool = Executors.newFixedThreadPool(threads, Workers::thread);
        Deque<Future<P>> waiting = new ArrayDeque<>();
        long asked = 0;
        long taken = 0;
        try {
            while (taken < pieces && !cancelled.getAsBoolean()) {
                while (asked < pieces && waiting.size() < WAITING * threads) {
                    long piece = asked++;
                    waiting.add(pool.submit(() -> make(maker, piece)));
                }
                taker.take(waiting.remove().get());
                taken++;
            }
            return taken;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The run was interrupted.", e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    private P make(Maker<W, P> maker, long piece) throws InterruptedException {
        W own = tools.take();
        try {
            return maker.make(own, piece);
        } finally {
            tools.add(own);
        }
    }
}

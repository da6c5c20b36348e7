package culm.workbench.internal.editor;

import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Computes off the display's thread. The latest question wins: one that was overtaken before its turn is not computed, and
 * an answer never replaces the answer to a later question.
 *
 * @param <T> the answer
 */
public final class Recompute<T> {
    private final Executor worker;
    private final Executor display;
    private final Consumer<T> publish;
    private final AtomicLong asked = new AtomicLong();
    private long answered;

    /**
     * Computes and publishes.
     *
     * @param worker where it is computed
     * @param display where it is published
     * @param publish takes the answers
     */
    public Recompute(Executor worker, Executor display, Consumer<T> publish) {
        this.worker = worker;
        this.display = display;
        this.publish = publish;
    }

    /** Asks; called on the display's thread. */
    public void ask(Supplier<T> question) {
        long number = asked.incrementAndGet();
        worker.execute(() -> {
            if (number == asked.get()) {
                T answer = question.get();
                display.execute(() -> answered(number, answer));
            }
        });
    }

    private void answered(long number, T answer) {
        if (number > answered) {
            answered = number;
            publish.accept(answer);
        }
    }

    /** {@return whether the last question is not answered yet; called on the display's thread} */
    public boolean pending() {
        return answered < asked.get();
    }
}

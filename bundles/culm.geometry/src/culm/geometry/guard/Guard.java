package culm.geometry.guard;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Supplier;

import culm.geometry.GeometryException;

/**
 * Stands between the program and one class of a plug-in: whatever the class throws becomes a {@link GeometryException} whose sentence names
 * the plug-in, a NaN or an infinite number likewise, and time is measured. Code that keeps passing its budget is stopped: from then on every
 * call is refused at once. Safe for many threads.
 */
public final class Guard {
    private static final int LONGEST_SECONDS = 3;
    private final String what;
    private final Budget budget;
    private final LongAdder calls = new LongAdder();
    private final LongAdder nanos = new LongAdder();
    private final LongAdder failures = new LongAdder();
    private final AtomicLong longest = new AtomicLong();
    private final AtomicLong windowCalls = new AtomicLong();
    private final AtomicLong windowNanos = new AtomicLong();
    private volatile String lastFailure;
    private volatile String stopped;

    /** @param what who is guarded, for the beginning of a sentence: {@code The shape type "four widths" of the plug-in Example 1.0} */
    public Guard(String what, Budget budget) {
        this.what = what;
        this.budget = budget;
    }

    /**
     * The guard of something that has a name.
     *
     * @param sort   what it is, as in "shape type"
     * @param plugIn whose it is; empty when that is not known
     */
    public static Guard of(String sort, String name, String plugIn, Budget budget) {
        return new Guard("The " + sort + " \"" + name + "\"" + (plugIn.isEmpty() ? "" : " of the plug-in " + plugIn), budget);
    }

    /** Who is guarded, for the beginning of a sentence. */
    public String what() {
        return what;
    }

    /**
     * Calls the plug-in.
     * @throws GeometryException the plug-in's own refusal as it is; otherwise one that names the plug-in and what it threw
     */
    public <R> R call(Supplier<R> work) {
        String refused = stopped;
        if (refused != null) {
            throw new GeometryException("", refused);
        }
        SupervisedThread watched = Thread.currentThread() instanceof SupervisedThread t ? t : null;
        Guard outer = watched == null ? null : watched.enter(this);
        long start = System.nanoTime();
        try {
            R result = work.get();
            if (result == null) {
                throw failed("gave nothing back");
            }
            return result;
        } catch (GeometryException e) {
            if (e.path() == null || e.getMessage() == null) {
                throw failed("refused without a reason");
            }
            throw e;
        } catch (Throwable e) {
            if (!Failure.ownFault(e)) {
                throw e;
            }
            throw failed("failed: " + Failure.words(e));
        } finally {
            if (watched != null) {
                watched.enter(outer);
            }
            took(System.nanoTime() - start);
        }
    }

    /**
     * The same for what is asked seldom, and perhaps by a thread that must not hang: waits only {@value #LONGEST_SECONDS} s.
     * @throws GeometryException also when the plug-in has not come back; it is stopped then
     */
    public <R> R ask(Supplier<R> work) {
        if (Thread.currentThread() instanceof SupervisedThread) {
            return call(work);
        }
        try {
            return Supervised.call(Duration.ofSeconds(LONGEST_SECONDS), () -> call(work));
        } catch (Supervised.Overdue e) {
            throw new GeometryException("", e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new GeometryException("", what + " was interrupted.");
        }
    }

    /** Asks the plug-in for a number; NaN and infinity are failures. @param asked what for, as in "the width at 3.0 mm"; only made when needed */
    public double number(Supplier<Double> work, Supplier<String> asked) {
        double value = call(work);
        if (!Double.isFinite(value)) {
            throw failed("gives no number for " + asked.get() + ": " + value);
        }
        return value;
    }

    /** Notes a failure and returns the refusal that tells it. @param how completes the sentence, without a full stop */
    public GeometryException failed(String how) {
        failures.increment();
        lastFailure = what + " " + how + ".";
        return new GeometryException("", lastFailure);
    }

    /** Refuses every further call. @param why completes the sentence, without a full stop */
    public void stop(String why) {
        stopped = what + " " + why + ". It is not asked again until Culm is started anew.";
        failures.increment();
        lastFailure = stopped;
    }

    /** How it has behaved so far. */
    public Health health() {
        return new Health(calls.sum(), Duration.ofNanos(nanos.sum()), Duration.ofNanos(longest.get()), failures.sum(), Optional.ofNullable(lastFailure), stopped != null);
    }

    private void took(long time) {
        calls.increment();
        nanos.add(time);
        if (time > longest.get()) {
            longest.accumulateAndGet(time, Math::max);
        }
        long allowed = budget.allowed().toNanos();
        long sum = windowNanos.addAndGet(Math.min(time, allowed / 2));
        if (sum > allowed && stopped == null) {
            stop("is too slow and was stopped: " + seconds(sum) + " for " + (windowCalls.get() + 1) + " calls; allowed are " + budget.said());
        }
        if (windowCalls.incrementAndGet() >= budget.calls()) {
            windowCalls.set(0);
            windowNanos.set(0);
        }
    }

    static String seconds(long nanos) {
        return String.format(Locale.ROOT, "%.1f s", nanos / 1e9);
    }
}

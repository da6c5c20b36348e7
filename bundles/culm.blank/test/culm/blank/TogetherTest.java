package culm.blank;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Pieces of work are each done once, whoever does them, and no one waits for a helper that has other things to do. */
class TogetherTest {
    private static final int PIECES = 5000;
    private final ExecutorService other = Executors.newSingleThreadExecutor();

    @AfterEach
    void end() {
        other.shutdownNow();
    }

    @Test
    void eachPieceIsDoneOnce() {
        int[] done = new int[PIECES];
        int[] once = new int[PIECES];
        Arrays.fill(once, 1);
        Together.each(PIECES, i -> done[i]++, Optional.of(other));
        assertArrayEquals(once, done);
        Together.each(PIECES, i -> done[i]--, Optional.empty());
        assertArrayEquals(new int[PIECES], done);
        Together.each(0, i -> done[i]++, Optional.of(other));
        assertArrayEquals(new int[PIECES], done);
    }

    @Test
    void aHelperThatHasNotBegunIsNotWaitedForAndDoesNothingLater() throws Exception {
        CountDownLatch busy = new CountDownLatch(1);
        AtomicInteger done = new AtomicInteger();
        other.submit(() -> {
            busy.await();
            return busy;
        });
        Together.each(PIECES, i -> done.incrementAndGet(), Optional.of(other));
        assertEquals(PIECES, done.get());
        busy.countDown();
        other.submit(() -> {
        }).get();
        assertEquals(PIECES, done.get());
    }

    @Test
    void whatFailsInTheOtherThreadIsThrownHere() {
        IllegalStateException failure = new IllegalStateException("no");
        CountDownLatch there = new CountDownLatch(1);
        Thread here = Thread.currentThread();
        assertSame(failure, assertThrows(IllegalStateException.class, () -> Together.each(2, i -> {
            if (Thread.currentThread() != here) {
                there.countDown();
                throw failure;
            }
            try {
                there.await();
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }, Optional.of(other))));
    }
}

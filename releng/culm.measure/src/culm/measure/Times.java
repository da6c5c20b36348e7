package culm.measure;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/** Times of many edits. */
final class Times {
    private static final double MS = 1e6;
    private final long[] computed;
    private final long[] painted;
    private final long[] busy;
    private long began;
    private long done;
    private long worked;

    Times(int edits) {
        computed = new long[edits];
        painted = new long[edits];
        busy = new long[edits];
    }

    void begin() {
        worked = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        began = System.nanoTime();
    }

    /** What is to be shown is known. */
    void computed() {
        done = System.nanoTime();
    }

    /** It is painted. @param index which edit; below 0 it only warms up */
    void end(int index) {
        if (index >= 0) {
            computed[index] = done - began;
            painted[index] = System.nanoTime() - began;
            busy[index] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - worked;
        }
    }

    void say(String what) {
        line(what + " until all numbers are told", computed);
        line(what + " until it is painted", painted);
        line("of that, processor time of the window's thread", busy);
    }

    private static void line(String what, long[] times) {
        long[] sorted = times.clone();
        Arrays.sort(sorted);
        System.out.printf(Locale.ROOT, "%-58s median %5.1f ms, 99th percentile %5.1f ms, %d times%n", what, sorted[sorted.length / 2] / MS,
                sorted[(int) Math.ceil(sorted.length * 0.99) - 1] / MS, sorted.length);
    }
}

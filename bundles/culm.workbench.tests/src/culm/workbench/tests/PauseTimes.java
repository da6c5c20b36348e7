package culm.workbench.tests;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;

import org.junit.jupiter.api.Test;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.explore.TolerancesPage;
import culm.workbench.internal.explore.VariantsPage;

/**
 * How long the window does not answer while a run goes on: the time from asking the display's thread for something until it does it, asked a
 * thousand times a second; and the most work that thread had between two answers, which other programs on the machine do not lengthen. No test: its name keeps it out of the runs of tests; {@code releng/pauses} runs it.
 */
class PauseTimes extends StudioTest {
    private static final double MS = 1e6;
    private static final int MOST = 600_000;

    private interface Work {
        void run() throws Exception;
    }

    @Test
    void pauses() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        command("culm.explore.tolerances");
        TolerancesPage tolerances = ui(() -> editor.explore().tolerances());
        measure("nothing", () -> LockSupport.parkNanos(TimeUnit.SECONDS.toNanos(2)));
        run(tolerances, "100000");
        measure("1,000,000 blanks", () -> run(tolerances, "1000000"));
        command("culm.explore.variants");
        VariantsPage variants = ui(() -> editor.explore().variants());
        measure("1,000,000 variants into the table", () -> {
            ui(() -> {
                variants.list().rows().get(0).values("70 to 74 in 1000");
                variants.list().rows().get(1).values("-0.2 to 0.2 in 1000");
                variants.run();
            });
            until("the variants are there", () -> !variants.pending() && variants.table().rows().length == 1_000_000);
        });
        measure("1,000,000 rows sorted", () -> {
            ui(() -> variants.table().sortBy(2));
            until("sorted", () -> !variants.pending());
        });
        measure("parallel axes", () -> {
            ui(() -> variants.look(VariantsPage.Sight.PARALLEL));
            ui(() -> { });
        });
        measure("a map", () -> {
            ui(() -> {
                variants.look(VariantsPage.Sight.MAP);
                variants.run();
            });
            until("the map is there", () -> !variants.pending());
        });
    }

    private void run(TolerancesPage page, String blanks) throws Exception {
        ui(() -> {
            page.blanks(blanks);
            page.run();
        });
        while (ui(() -> page.bar().running())) {
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(10));
        }
    }

    private void measure(String what, Work todo) throws Exception {
        long[] waited = new long[MOST];
        long[] work = new long[MOST];
        int[] count = {0};
        AtomicBoolean over = new AtomicBoolean();
        Thread asks = new Thread(() -> {
            long[] last = {-1};
            while (!over.get() && count[0] < MOST) {
                long asked = System.nanoTime();
                int at = count[0];
                display().syncExec(() -> {
                    long now = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                    work[at] = last[0] < 0 ? 0 : now - last[0];
                    last[0] = now;
                });
                waited[count[0]++] = System.nanoTime() - asked;
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(1));
            }
        }, "asks the display");
        long began = System.nanoTime();
        asks.start();
        todo.run();
        settle();
        over.set(true);
        asks.join();
        double seconds = (System.nanoTime() - began) / (MS * 1000);
        long[] sorted = Arrays.copyOf(waited, count[0]);
        Arrays.sort(sorted);
        System.out.printf(Locale.ROOT, "%-36s %6.1f s, longest pause %6.1f ms, 99.9th percentile %6.1f ms, median %5.2f ms, most work between %6.1f ms, %d questions%n", what, seconds,
                sorted[sorted.length - 1] / MS, sorted[(int) (sorted.length * 0.999)] / MS, sorted[sorted.length / 2] / MS, Arrays.stream(work, 0, count[0]).max().orElse(0) / MS, sorted.length);
    }
}

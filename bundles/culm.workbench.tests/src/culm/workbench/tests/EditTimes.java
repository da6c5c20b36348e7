package culm.workbench.tests;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;

import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.editor.DesignSession;

/**
 * How long it takes from an edit until everything is computed and painted again. No test: its name keeps it out of the runs
 * of tests; {@code releng/benchmark window} runs it.
 */
class EditTimes extends StudioTest {
    private static final int EDITS = 1_000;
    private static final int WARM_UP = 300;
    private static final double MS = 1e6;

    @Test
    void edits() throws Exception {
        DesignEditor editor = open(System.getProperty("culm.measure.design", "trial-12.reed"));
        long[] wall = new long[EDITS];
        long[] ui = new long[EDITS];
        ui(() -> {
            SplittableRandom random = new SplittableRandom(7);
            for (int i = -WARM_UP; i < EDITS; i++) {
                long[] took = edit(session(editor), Math.rint(random.nextDouble(70.5, 73.5) * 100) / 100);
                if (i >= 0) {
                    wall[i] = took[0];
                    ui[i] = took[1];
                }
            }
        });
        say("edit until painted", wall);
        say("of that on the display's thread, processor time", ui);
    }

    private long[] edit(DesignSession session, double tie) throws Exception {
        Shell shell = window().getShell();
        long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        long began = System.nanoTime();
        session.change(edits -> edits.setValue("tie.length", tie), "");
        while (session.pending()) {
            if (!display().readAndDispatch()) {
                Thread.onSpinWait();
            }
        }
        ((Control) figure("Reed")).update();
        shell.update();
        while (display().readAndDispatch()) {
            // What is still to be painted is painted.
        }
        return new long[] { System.nanoTime() - began, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu };
    }

    private static void say(String what, long[] times) {
        long[] sorted = times.clone();
        Arrays.sort(sorted);
        System.out.printf(Locale.ROOT, "%s: tenth percentile %.1f ms, median %.1f ms, 99th percentile %.1f ms, %d edits%n", what, sorted[times.length / 10] / MS,
                sorted[times.length / 2] / MS,
                sorted[(int) Math.ceil(times.length * 0.99) - 1] / MS, times.length);
    }
}

package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;

import org.eclipse.swt.widgets.Display;

import culm.design.parts.Replacement;
import culm.design.parts.Replacement.Preview;

/** Looks at one design after the other on a thread of its own, and shows each as soon as it is known. */
final class PreviewRun {
    private final Replacement replacement;
    private final List<Path> designs;
    private final Display display;
    private final PreviewGrid grid;
    private final Runnable told;
    private final AtomicBoolean stopped = new AtomicBoolean();
    private int waiting;

    PreviewRun(Replacement replacement, List<Path> designs, Display display, PreviewGrid grid, Runnable told) {
        this.replacement = replacement;
        this.designs = designs;
        this.display = display;
        this.grid = grid;
        this.told = told;
        this.waiting = designs.size();
    }

    void start() {
        Thread thread = new Thread(this::run, "Culm previews of a replacement");
        thread.setDaemon(true);
        thread.start();
    }

    private void run() {
        for (Path design : designs) {
            if (stopped.get()) {
                return;
            }
            Preview preview = replacement.preview(design);
            if (!display.isDisposed()) {
                display.asyncExec(() -> publish(preview));
            }
        }
    }

    private void publish(Preview preview) {
        if (!stopped.get() && !grid.isDisposed()) {
            waiting--;
            grid.add(preview);
            told.run();
        }
    }

    /** How many designs are not looked at yet; asked on the display's thread. */
    int waiting() {
        return waiting;
    }

    void stop() {
        stopped.set(true);
    }
}

package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Base of every test in the real workbench. The workbench starts once and is shared, so a test leaves it as it found it: it closes what it
 * opened. The test runs on its own thread and reaches the workbench through {@link #ui}; when it fails, a picture of the screen is kept under
 * {@code target/screenshots}.
 */
@ExtendWith(WorkbenchExtension.class)
public abstract class WorkbenchTest {

    private static final long SECONDS_TO_WAIT = 30;
    private static final int FRAMES = 150;

    RunningWorkbench running;

    /** What a test does on the workbench's thread. */
    protected interface Action {
        /** Does it; whatever it throws fails the test. */
        void run() throws Exception;
    }

    /** Runs an action on the workbench's thread and waits for it. */
    protected final void ui(Action action) throws Exception {
        ui(() -> {
            action.run();
            return null;
        });
    }

    /** Asks something on the workbench's thread and waits for the answer. */
    protected final <T> T ui(Callable<T> question) throws Exception {
        AtomicReference<T> answer = new AtomicReference<>();
        AtomicReference<Throwable> failure = new AtomicReference<>();
        display().syncExec(() -> {
            try {
                answer.set(question.call());
            } catch (Throwable e) {
                failure.set(e);
            }
        });
        if (failure.get() instanceof Error error)
            throw error;
        if (failure.get() instanceof Exception exception)
            throw exception;
        return answer.get();
    }

    /** Waits until something asked on the workbench's thread is true, and fails when it does not become so. */
    protected final void until(String what, Callable<Boolean> condition) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS_TO_WAIT);
        while (!ui(condition)) {
            if (System.nanoTime() > end)
                fail("waited " + SECONDS_TO_WAIT + " s in vain: " + what);
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(10));
        }
    }

    /** Waits until the workbench has done all that is waiting: events of the screen and jobs in the background. */
    protected final void settle() throws Exception {
        until("the workbench has nothing left to do", () -> {
            while (display().readAndDispatch()) {
                // What waits is done here; the loop ends when nothing does.
            }
            return Job.getJobManager().isIdle();
        });
    }

    /** Waits until what has changed is on the screen: it is painted with the next frames, which the display's timer comes after. */
    private void painted() throws Exception {
        AtomicBoolean done = new AtomicBoolean();
        ui(() -> display().timerExec(FRAMES, () -> done.set(true)));
        until("the screen is painted", done::get);
    }

    /** Waits until nothing is left to do and what has changed is on the screen. */
    protected final void atRest() throws Exception {
        settle();
        painted();
    }

    /** A control as it is painted; to be asked on the workbench's thread. */
    protected final ImageData picture(Control control) {
        Image image = new Image(display(), control.getSize().x, control.getSize().y);
        GC gc = new GC(image);
        try {
            control.print(gc);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    /** Keeps a picture of the screen, to be looked at. */
    protected final void keepPicture(String name) throws Exception {
        atRest();
        WorkbenchExtension.keepPicture(display(), Path.of(System.getProperty("culm.screenshots"), name + ".png"));
    }

    /** The display that the workbench runs on. */
    protected final Display display() {
        return running.display();
    }

    /** The workbench. */
    protected final IWorkbench workbench() {
        return running.workbench();
    }

    /** The only window; to be asked on the workbench's thread. */
    protected final IWorkbenchWindow window() {
        return workbench().getWorkbenchWindows()[0];
    }

    /** The page of the only window; to be asked on the workbench's thread. */
    protected final IWorkbenchPage page() {
        return window().getActivePage();
    }
}

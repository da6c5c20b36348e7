package culm.workbench.tests;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.extension.ExtensionContext.Store.CloseableResource;

import culm.workbench.internal.StudioAdvisor;

/** The real workbench on a thread of its own, so that a test drives it from outside, as a person does. */
public final class RunningWorkbench implements CloseableResource {

    private static final int SECONDS_TO_START = 120;

    private final AtomicReference<Throwable> failure = new AtomicReference<>();
    private final CountDownLatch started = new CountDownLatch(1);
    private final Thread thread = new Thread(this::run, "workbench");
    private volatile Display display;

    /**
     * Starts the workbench and waits until its first window stands.
     *
     * @throws IllegalStateException if it does not start
     */
    RunningWorkbench() throws InterruptedException {
        thread.start();
        boolean inTime = started.await(SECONDS_TO_START, TimeUnit.SECONDS);
        if (failure.get() != null)
            throw new IllegalStateException("the workbench did not start", failure.get());
        if (!inTime)
            throw new IllegalStateException("the workbench did not start within " + SECONDS_TO_START + " s");
    }

    private void run() {
        try {
            display = PlatformUI.createDisplay();
            PlatformUI.createAndRunWorkbench(display, new StudioAdvisor() {
                @Override
                public void postStartup() {
                    super.postStartup();
                    started.countDown();
                }
            });
        } catch (Throwable e) {
            failure.set(e);
        } finally {
            started.countDown();
            if (display != null)
                display.dispose();
        }
    }

    /** The display that the workbench runs on. */
    public Display display() {
        return display;
    }

    /** The workbench. */
    public IWorkbench workbench() {
        return PlatformUI.getWorkbench();
    }

    /** Closes the workbench without asking, and waits until its thread has ended. */
    @Override
    public void close() throws InterruptedException {
        if (!display.isDisposed())
            display.syncExec(() -> {
                for (var window : workbench().getWorkbenchWindows())
                    for (var page : window.getPages())
                        page.closeAllEditors(false);
                workbench().close();
            });
        thread.join(TimeUnit.SECONDS.toMillis(SECONDS_TO_START));
        if (thread.isAlive())
            throw new IllegalStateException("the workbench did not close");
        if (failure.get() != null)
            throw new IllegalStateException("the workbench ended with an error", failure.get());
    }
}

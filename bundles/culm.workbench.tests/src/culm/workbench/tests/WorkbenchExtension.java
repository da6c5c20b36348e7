package culm.workbench.tests;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.TestInstancePostProcessor;

/** Starts the workbench once for all tests of a run, hands it to each, and keeps a picture when one fails. */
final class WorkbenchExtension implements TestInstancePostProcessor, AfterTestExecutionCallback {

    @Override
    public void postProcessTestInstance(Object test, ExtensionContext context) {
        ((WorkbenchTest) test).running = running(context);
    }

    @Override
    public void afterTestExecution(ExtensionContext context) throws Exception {
        if (context.getExecutionException().isPresent())
            keepPicture(running(context).display(), picture(context));
    }

    private static RunningWorkbench running(ExtensionContext context) {
        return context.getRoot().getStore(Namespace.create(WorkbenchExtension.class)).getOrComputeIfAbsent(RunningWorkbench.class, type -> {
            try {
                return new RunningWorkbench();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("stopped while the workbench was starting", e);
            }
        }, RunningWorkbench.class);
    }

    private static Path picture(ExtensionContext context) {
        String folder = System.getProperty("culm.screenshots", "target" + File.separator + "screenshots");
        String name = context.getRequiredTestClass().getSimpleName() + '.' + context.getRequiredTestMethod().getName();
        return Path.of(folder, name + ".png");
    }

    /** Writes what the screen shows into a file. */
    static void keepPicture(Display display, Path file) throws Exception {
        Files.createDirectories(file.getParent());
        display.syncExec(() -> {
            Image image = new Image(display, display.getBounds());
            GC gc = new GC(display);
            try {
                gc.copyArea(image, 0, 0);
                ImageLoader loader = new ImageLoader();
                loader.data = new ImageData[] { image.getImageData(display.getPrimaryMonitor().getZoom()) };
                loader.save(file.toString(), SWT.IMAGE_PNG);
            } finally {
                gc.dispose();
                image.dispose();
            }
        });
    }
}

package culm.workbench.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Collator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

import org.eclipse.core.runtime.ILog;
import org.eclipse.e4.ui.model.application.MApplicationFactory;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuFactory;

import culm.extensions.Extensions;
import culm.model.ModelPackage;

/** What the window needs and what needs no window: a second thread makes it while the toolkit starts, so that the window opens sooner. */
final class Beforehand {
    private static final String CLASSES = "culm.classes";
    private static final String LOG = "culm.classes.log";

    private Beforehand() {
    }

    /** {@return what Culm and the plug-ins bring, once all is made; to be waited for before the workbench begins, since both register models} */
    static CompletableFuture<Extensions> begin() {
        Executor thread = work -> new Thread(work, "Culm beforehand").start();
        CompletableFuture<Extensions> made = CompletableFuture.supplyAsync(() -> {
            List.of(MApplicationFactory.INSTANCE, MMenuFactory.INSTANCE, ModelPackage.eINSTANCE, Collator.getInstance()); // each is made when it is first asked for
            return Extensions.start();
        }, thread);
        path(CLASSES).filter(Files::exists).ifPresent(list -> made.thenRunAsync(() -> {
            try {
                new LoadedClasses().load(list);
            } catch (IOException e) {
                ILog.get().warn("The window opens later than it could.", e);
            }
        }, thread));
        return made;
    }

    /** At the end of a run: what it loaded is loaded beforehand in the next ones. Only where the start script had the JVM write it down. */
    static void remember() {
        path(LOG).ifPresent(log -> path(CLASSES).ifPresent(list -> {
            try {
                new LoadedClasses().remember(log, list);
                Files.delete(log);
            } catch (IOException e) {
                ILog.get().warn("The window will open later than it could.", e);
            }
        }));
    }

    private static Optional<Path> path(String property) {
        return Optional.ofNullable(System.getProperty(property)).map(Path::of);
    }
}

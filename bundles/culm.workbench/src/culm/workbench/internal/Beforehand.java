package culm.workbench.internal;

import java.text.Collator;
import java.util.List;
import java.util.concurrent.CompletableFuture;

import org.eclipse.e4.ui.model.application.MApplicationFactory;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuFactory;

import culm.extensions.Extensions;
import culm.model.ModelPackage;

/** What the window needs and what needs no window: a second thread makes it while the toolkit starts, so that the window opens sooner. */
final class Beforehand {
    private Beforehand() {
    }

    /** {@return what Culm and the plug-ins bring, once all is made; to be waited for before the workbench begins, since both register models} */
    static CompletableFuture<Extensions> begin() {
        return CompletableFuture.supplyAsync(() -> {
            List.of(MApplicationFactory.INSTANCE, MMenuFactory.INSTANCE, ModelPackage.eINSTANCE, Collator.getInstance()); // each is made when it is first asked for
            return Extensions.start();
        }, work -> new Thread(work, "Culm beforehand").start());
    }
}

package culm.workbench.tests;

import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** What the command of a plug-in does: it counts. */
public final class ForeignCommand extends AbstractHandler {
    /** How often it was run. */
    static final AtomicInteger RUN = new AtomicInteger();

    @Override
    public Object execute(ExecutionEvent event) {
        RUN.incrementAndGet();
        return null;
    }
}

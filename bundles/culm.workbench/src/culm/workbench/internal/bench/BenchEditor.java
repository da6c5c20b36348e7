package culm.workbench.internal.bench;

import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;

import culm.model.Document;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.editor.Recompute;
import culm.workbench.internal.sharing.FileEditor;
import culm.workbench.internal.sharing.GuardBars;
import culm.workbench.internal.widgets.Focus;

/**
 * What the editors of a batch and of a log have in common: where they compute, and what stands above them.
 *
 * @param <D> the sort of document
 */
public abstract class BenchEditor<D extends Document> extends FileEditor<BenchSession<D>> {
    private final Class<D> type;
    /** Of its own, since a large batch takes a while and no design should wait for it. */
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "Culm bench");
        thread.setDaemon(true);
        return thread;
    });
    private GuardBars guards;
    private Composite all;

    /**
     * An editor.
     *
     * @param type what its files hold
     * @param icon the name of its icon
     */
    protected BenchEditor(Class<D> type, String icon) {
        super(icon);
        this.type = type;
    }

    @Override
    protected final BenchSession<D> read(Path file) throws FileProblemException {
        return new BenchSession<>(workshop(), file, type);
    }

    @Override
    protected final void build(Composite parent) {
        all = new Composite(parent, SWT.NONE);
        fill(all);
    }

    /** Makes what stands in it, {@link #guards(Composite)} among it. */
    protected abstract void fill(Composite parent);

    /** Gives a table the focus, unless something in the editor has it. */
    protected final void focus(Runnable table) {
        Focus.into(all, table);
    }

    @Override
    protected final boolean isGone() {
        return all.isDisposed();
    }

    /** Makes the lines that say something about the file. @param parent where they go, a grid of two columns */
    protected final void guards(Composite parent) {
        guards = new GuardBars(parent, session(), () -> "", this::refused);
        guards.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
    }

    @Override
    public final GuardBars guards() {
        return guards;
    }

    /** {@return what computes off the display's thread; the latest question wins} */
    protected final <T> Recompute<T> recompute(Consumer<T> publish) {
        return new Recompute<>(worker, workshop().look()::later, publish);
    }

    @Override
    protected abstract void settle();

    @Override
    public void dispose() {
        worker.shutdownNow();
        super.dispose();
    }
}

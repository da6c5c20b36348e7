package culm.workbench.internal.sharing;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;

import culm.model.problem.FileProblemException;

/**
 * A file that is read by the worker while the window is put together.
 *
 * @param <S> what is read
 */
final class LateRead<S> {
    /** Reads. */
    @FunctionalInterface
    interface Reader<S> {
        /** {@return what was read} @throws FileProblemException when that cannot be done; says why */
        S read() throws FileProblemException;
    }

    private final Future<S> read;

    LateRead(ExecutorService worker, Reader<S> reader) {
        read = worker.submit(reader::read);
    }

    /** {@return what was read; waits for it} @throws FileProblemException when it cannot be read; says why */
    S get() throws FileProblemException {
        try {
            return read.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof FileProblemException problem) {
                throw problem;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            throw new IllegalStateException("the window's thread was interrupted", e);
        }
    }
}

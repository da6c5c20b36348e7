package culm.workbench.internal.studio;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import culm.model.files.ModelFiles;
import culm.model.studio.Studio;
import culm.model.studio.StudioIndex;

/** The studio that is open: what is in it now, and word of every change on disk. Used on the display's thread only. */
public final class StudioFolder {
    private final ModelFiles files;
    private final Executor worker;
    private final Executor display;
    private final List<Consumer<Set<Path>>> listeners = new CopyOnWriteArrayList<>();
    private final StudioSteps steps = new StudioSteps(this::refresh);
    private Optional<Studio> studio = Optional.empty();
    private Optional<StudioIndex> index = Optional.empty();
    private Optional<StudioWatch> watch = Optional.empty();

    /**
     * No studio yet.
     *
     * @param files reads and writes files
     * @param worker where folders are read
     * @param display the display's thread
     */
    public StudioFolder(ModelFiles files, Executor worker, Executor display) {
        this.files = files;
        this.worker = worker;
        this.display = display;
    }

    /**
     * Opens a studio; the one before is closed.
     *
     * @param folder its folder
     */
    public void open(Path folder) {
        Optional<Path> before = studio.map(Studio::root);
        close();
        Studio now = Studio.at(folder, files);
        if (!before.equals(Optional.of(now.root()))) {
            steps.forget();
        }
        studio = Optional.of(now);
        worker.execute(() -> {
            Optional<StudioWatch> begun = StudioWatch.of(now.root(), changed -> display.execute(() -> changed(changed)));
            display.execute(() -> keep(begun, now));
        });
        refresh(); // after the watch has begun, so that nothing is missed
    }

    private void keep(Optional<StudioWatch> begun, Studio of) {
        if (studio.isPresent() && studio.get() == of) {
            watch = begun;
        } else {
            begun.ifPresent(StudioWatch::close);
        }
    }

    /** Closes the studio and stops watching. */
    public void close() {
        watch.ifPresent(StudioWatch::close);
        watch = Optional.empty();
        studio = Optional.empty();
        index = Optional.empty();
    }

    /** Reads the folder again. */
    public void refresh() {
        changed(Set.of());
    }

    private void changed(Set<Path> paths) {
        if (studio.isEmpty()) {
            return;
        }
        Studio asked = studio.get();
        worker.execute(() -> {
            StudioIndex now = asked.index();
            display.execute(() -> {
                if (studio.isPresent() && studio.get() == asked) {
                    index = Optional.of(now);
                    listeners.forEach(l -> l.accept(paths));
                }
            });
        });
    }

    /**
     * Runs something after every change of the studio; it is told which files changed, none when the whole was read anew.
     *
     * @param change what to run
     * @return ends that
     */
    public Runnable onChange(Consumer<Set<Path>> change) {
        listeners.add(change);
        return () -> listeners.remove(change);
    }

    /** {@return the studio, if one is open} */
    public Optional<Studio> studio() {
        return studio;
    }

    /** {@return what is in it; empty until it was read} */
    public Optional<StudioIndex> index() {
        return index;
    }

    /** {@return what is in a studio: as it is known already where it is the open one, else read now} */
    public StudioIndex of(Studio other) {
        return studio.filter(s -> s.root().equals(other.root())).flatMap(s -> index).orElseGet(other::index);
    }

    /** {@return what was done with its files, to be taken back} */
    public StudioSteps steps() {
        return steps;
    }

    /** {@return what reads and writes its files} */
    public ModelFiles files() {
        return files;
    }
}

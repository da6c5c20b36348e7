package culm.workbench.internal.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

import culm.model.problem.FileProblem;

/**
 * What could not be opened though nobody asked for it just now, as what was open the last time: said in the window until it is dismissed, or the
 * file is opened or changes. Used on the display's thread only.
 */
public final class Notices {
    private final Map<Path, String> said = new LinkedHashMap<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /**
     * Says that a file cannot be opened; its last words replace those before.
     *
     * @param file the file
     * @param problem why not
     */
    public void cannotOpen(Path file, FileProblem problem) {
        String name = file.getFileName().toString();
        String why = problem.file().equals(name) ? problem.message().substring(name.length() + 2) : problem.message(); // a linked file keeps its name
        said.put(file, name + " cannot be opened: " + why + (why.endsWith(".") ? "" : "."));
        tell();
    }

    /**
     * Nothing is said of a file any more.
     *
     * @param file the file
     */
    public void settled(Path file) {
        if (said.remove(file) != null) {
            tell();
        }
    }

    /** Nothing is said any more. */
    public void dismiss() {
        said.clear();
        tell();
    }

    /** {@return all that is said; empty when nothing is} */
    public String sentence() {
        return String.join(" ", said.values());
    }

    /**
     * Runs something after every change.
     *
     * @param change what to run
     * @return ends that
     */
    public Runnable onChange(Runnable change) {
        listeners.add(change);
        return () -> listeners.remove(change);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}

package culm.workbench.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.core.runtime.Platform;
import org.osgi.framework.Bundle;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.wiring.BundleWiring;

/**
 * Which classes the window loads: the first run writes them down from the JVM's log, the next ones load them on a second thread while the toolkit
 * starts, so that the window opens sooner. Nothing depends on it: where a class or a bundle is not there any more, it is passed over.
 */
public final class LoadedClasses {
    private static final Pattern LINE = Pattern.compile("(\\S+) source: \\S*/([^/]+\\.jar)");
    private static final int MOST = 3000;
    private final Map<String, Bundle> bundles = new HashMap<>();
    private final Map<String, ClassLoader> loaders = new HashMap<>();

    /** Finds classes in all bundles. */
    public LoadedClasses() {
        for (Bundle bundle : FrameworkUtil.getBundle(Platform.class).getBundleContext().getBundles()) {
            bundles.put(bundle.getLocation().replaceFirst(".*[:/]", ""), bundle);
        }
    }

    /**
     * Writes down what was loaded since this program began, the first {@value #MOST} of it, and links all: only linked classes go into an archive.
     *
     * @param log the JVM's log of loaded classes, without decorations
     * @param list file that is written: in each line a jar and a class
     * @return how many were written down
     * @throws IOException if a file cannot be read or written
     */
    public int remember(Path log, Path list) throws IOException {
        Set<String> lines = new LinkedHashSet<>();
        boolean begun = false;
        for (String line : Files.readAllLines(log)) {
            Matcher m = LINE.matcher(line);
            if (m.matches()) {
                find(m.group(2), m.group(1)).ifPresent(LoadedClasses::link);
                begun |= m.group(1).equals(Application.class.getName());
                if (begun && lines.size() < MOST) {
                    lines.add(m.group(2) + " " + m.group(1));
                }
            }
        }
        Files.write(list, lines);
        return lines.size();
    }

    /**
     * Loads what was written down; initializes nothing, and starts no bundle.
     *
     * @param list the file
     * @return how many classes were found
     * @throws IOException if it cannot be read
     */
    public int load(Path list) throws IOException {
        int found = 0;
        for (String line : Files.readAllLines(list)) {
            List<String> parts = List.of(line.split(" ", 2));
            if (parts.size() == 2 && find(parts.get(0), parts.get(1)).isPresent()) {
                found++;
            }
        }
        return found;
    }

    private Optional<Class<?>> find(String jar, String name) {
        ClassLoader loader = loaders.computeIfAbsent(jar, j -> loader(bundles.get(j)));
        if (loader == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(Class.forName(name, false, loader));
        } catch (ClassNotFoundException | LinkageError gone) {
            return Optional.empty();
        }
    }

    /** Of a bundle that does nothing when its first class is loaded: it runs already, or has nothing to start. */
    private static ClassLoader loader(Bundle bundle) {
        boolean quiet = bundle != null && (bundle.getState() == Bundle.ACTIVE || bundle.getHeaders("").get(Constants.BUNDLE_ACTIVATOR) == null);
        BundleWiring wiring = quiet ? bundle.adapt(BundleWiring.class) : null;
        return wiring == null ? null : wiring.getClassLoader();
    }

    /** Asking for its constructors links a class and does not initialize it. */
    private static void link(Class<?> loaded) {
        try {
            loaded.getDeclaredConstructors();
        } catch (LinkageError e) {
            // Something that it could use is not there; then it stays out of the archive.
        }
    }
}

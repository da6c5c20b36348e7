package culm.extensions;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipException;

import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.wiring.FrameworkWiring;

import culm.geometry.guard.Failure;

/**
 * The folder of plug-ins: jars in it are installed when the program starts, changed ones anew, those that were taken away are removed. A jar
 * that cannot be used is reported and does no harm. Jars are copied, so that they can be replaced while the program runs. No code of theirs is
 * run here, their activators not at all.
 */
final class PlugInFolder {
    private static final String LOCATION = "culm-plug-in:";
    private static final long LONGEST_REFRESH_SECONDS = 20;
    private final BundleContext context;
    private final FrameworkWiring wiring;

    PlugInFolder(BundleContext context) {
        this.context = context;
        this.wiring = context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).adapt(FrameworkWiring.class);
    }

    /** Installs what is in the folder, in the order of the names. @param folder may be missing, which is the same as empty */
    List<PlugInJar> install(Path folder) {
        Map<String, Path> wanted = new LinkedHashMap<>();
        List<PlugInJar> jars = new ArrayList<>();
        try {
            for (Path jar : jars(folder)) {
                wanted.put(location(jar), jar);
            }
        } catch (IOException e) {
            jars.add(new PlugInJar(folder.getFileName().toString(), Optional.empty(), Optional.of("The folder of plug-ins cannot be read: " + Failure.words(e) + ".")));
        }
        removeAllBut(wanted.keySet());
        Map<Path, Bundle> installed = new LinkedHashMap<>();
        wanted.forEach((location, jar) -> installed(location, jar, jars).ifPresent(bundle -> installed.put(jar, bundle)));
        wiring.resolveBundles(installed.values());
        installed.forEach((jar, bundle) -> jars.add(new PlugInJar(jar.getFileName().toString(), Optional.of(PlugIn.of(bundle)), unresolved(bundle))));
        return List.copyOf(jars);
    }

    private static List<Path> jars(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(p -> p.getFileName().toString().endsWith(".jar")).filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** Changes when the file does. */
    private static String location(Path jar) throws IOException {
        return LOCATION + jar.toAbsolutePath() + "?" + Files.size(jar) + "-" + Files.getLastModifiedTime(jar).toMillis();
    }

    private Optional<Bundle> installed(String location, Path jar, List<PlugInJar> jars) {
        Bundle there = context.getBundle(location);
        if (there != null) {
            return Optional.of(there);
        }
        Optional<String> problem;
        try (InputStream in = Files.newInputStream(jar)) {
            problem = unusable(jar);
            if (problem.isEmpty()) {
                return Optional.of(context.installBundle(location, in));
            }
        } catch (BundleException | IOException e) {
            problem = Optional.of("It cannot be installed: " + Failure.words(e.getCause() == null ? e : e.getCause()) + ".");
        }
        jars.add(new PlugInJar(jar.getFileName().toString(), Optional.empty(), problem));
        return Optional.empty();
    }

    private Optional<String> unusable(Path jar) throws IOException {
        try (JarFile opened = new JarFile(jar.toFile())) {
            Manifest manifest = opened.getManifest();
            String name = manifest == null ? null : manifest.getMainAttributes().getValue(Constants.BUNDLE_SYMBOLICNAME);
            if (name == null) {
                return Optional.of("It is no plug-in: its manifest has no " + Constants.BUNDLE_SYMBOLICNAME + ".");
            }
            String id = name.split(";")[0].strip();
            for (Bundle other : context.getBundles()) {
                if (id.equals(other.getSymbolicName())) {
                    return Optional.of("A plug-in called " + id + " is there already, in version " + other.getVersion() + ".");
                }
            }
            return Optional.empty();
        } catch (ZipException e) {
            return Optional.of("It is no jar: " + Failure.words(e) + ".");
        }
    }

    /** What it needs and does not find; it is started only to be told so, which runs none of its code. */
    private static Optional<String> unresolved(Bundle bundle) {
        if (bundle.getState() != Bundle.INSTALLED) {
            return Optional.empty();
        }
        try {
            bundle.start(Bundle.START_TRANSIENT);
            return Optional.empty();
        } catch (BundleException e) {
            return Optional.of("It needs something that is not here: " + Failure.words(e) + ".");
        }
    }

    private void removeAllBut(Collection<String> wanted) {
        List<Bundle> removed = new ArrayList<>();
        for (Bundle bundle : context.getBundles()) {
            if (bundle.getLocation().startsWith(LOCATION) && !wanted.contains(bundle.getLocation())) {
                try {
                    bundle.uninstall();
                    removed.add(bundle);
                } catch (BundleException e) {
                    throw new IllegalStateException("a plug-in cannot be removed: " + bundle.getLocation(), e);
                }
            }
        }
        if (!removed.isEmpty()) {
            refresh(removed);
        }
    }

    /** Lets go of removed plug-ins that others were wired to. */
    private void refresh(List<Bundle> removed) {
        CountDownLatch done = new CountDownLatch(1);
        wiring.refreshBundles(removed, event -> done.countDown());
        try {
            if (!done.await(LONGEST_REFRESH_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("removed plug-ins are still in use");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

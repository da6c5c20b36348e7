package culm.workbench.internal.studio;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;

/** Watches a folder and those in it, and tells which files changed, once for changes that come together. */
final class StudioWatch {
    private static final long TOGETHER_MS = 150;
    private final WatchService service;
    private final Consumer<Set<Path>> tell;

    private StudioWatch(WatchService service, Consumer<Set<Path>> tell) {
        this.service = service;
        this.tell = tell;
    }

    /**
     * Begins to watch.
     *
     * @param root the folder
     * @param tell told the files that changed, on a thread of its own
     * @return the watch, or empty where the system cannot watch; the user then refreshes by hand
     */
    static Optional<StudioWatch> of(Path root, Consumer<Set<Path>> tell) {
        try {
            WatchService service = root.getFileSystem().newWatchService();
            StudioWatch watch = new StudioWatch(service, tell);
            watch.register(root);
            Thread thread = new Thread(watch::run, "Culm studio watch");
            thread.setDaemon(true);
            thread.start();
            return Optional.of(watch);
        } catch (IOException | UnsupportedOperationException e) {
            ILog.get().warn("Changes in " + root + " made outside are not noticed by themselves.", e);
            return Optional.empty();
        }
    }

    private void register(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) throws IOException {
                if (!dir.equals(folder) && dir.getFileName().toString().startsWith(".")) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                dir.register(service, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_DELETE,
                        StandardWatchEventKinds.ENTRY_MODIFY);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private void run() {
        try {
            while (true) {
                Set<Path> changed = new HashSet<>();
                for (WatchKey key = service.take(); key != null; key = service.poll(TOGETHER_MS, TimeUnit.MILLISECONDS)) {
                    collect(key, changed);
                }
                tell.accept(changed);
            }
        } catch (ClosedWatchServiceException e) {
            return; // the studio was closed
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void collect(WatchKey key, Set<Path> changed) {
        Path folder = (Path) key.watchable();
        for (WatchEvent<?> event : key.pollEvents()) {
            if (event.context() instanceof Path name) {
                Path path = folder.resolve(name);
                changed.add(path);
                if (event.kind() == StandardWatchEventKinds.ENTRY_CREATE && Files.isDirectory(path) && !name.toString().startsWith(".")) {
                    registerQuietly(path);
                }
            }
        }
        key.reset();
    }

    private void registerQuietly(Path folder) {
        try {
            register(folder);
        } catch (IOException e) {
            ILog.get().warn("The new folder " + folder + " is not watched.", e);
        }
    }

    void close() {
        try {
            service.close();
        } catch (IOException e) {
            ILog.get().warn("A studio is still watched.", e);
        }
    }
}

package culm.workbench.internal.history;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import culm.geometry.profile.Profiles;
import culm.history.FileChange;
import culm.history.HistoryException;
import culm.history.StudioHistory;
import culm.history.Version;

/**
 * What is shown of a history.
 *
 * @param on whether the studio has one
 * @param versions the kept versions, the newest first
 * @param unkept what is in the folder and not kept yet
 * @param sharedThrough the folder or server it is shared through
 */
record HistoryShown(boolean on, List<Version> versions, List<FileChange> unkept, Optional<String> sharedThrough) {
    static final HistoryShown OFF = new HistoryShown(false, List.of(), List.of(), Optional.empty());

    /** Reads it. @param file only the versions in which this file changed; empty for all */
    static HistoryShown read(Path studio, Profiles profiles, Optional<Path> file) throws HistoryException {
        Optional<StudioHistory> opened = StudioHistory.open(studio, profiles);
        if (opened.isEmpty()) {
            return OFF;
        }
        try (StudioHistory history = opened.get()) {
            List<FileChange> unkept = history.unkept().stream().filter(c -> file.isEmpty() || studio.resolve(c.file()).equals(file.get())).toList();
            return new HistoryShown(true, file.isPresent() ? history.versions(file.get()) : history.versions(), unkept, history.sharedThrough());
        }
    }
}

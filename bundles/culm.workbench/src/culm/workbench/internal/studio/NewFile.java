package culm.workbench.internal.studio;

import java.nio.file.Path;

import culm.model.Document;
import culm.model.problem.FileProblemException;
import culm.model.studio.FileKind;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Workshop;

/**
 * A file that is going to be made in the studio, as a step that can be taken back.
 *
 * @param workshop what the window works with
 * @param files plans the step
 * @param file the file
 */
public record NewFile(Workshop workshop, StudioFiles files, Path file) {
    /**
     * A design's file.
     *
     * @param workshop what the window works with
     * @param studio the studio
     * @param name the design's name
     * @return the file, not there yet
     */
    public static NewFile design(Workshop workshop, Studio studio, String name) {
        return of(workshop, studio, name, FileKind.DESIGN);
    }

    /**
     * A file of any kind.
     *
     * @param workshop what the window works with
     * @param studio the studio
     * @param name the document's name
     * @param kind the kind
     * @return the file, not there yet
     */
    public static NewFile of(Workshop workshop, Studio studio, String name, FileKind kind) {
        StudioFiles files = new StudioFiles(studio.root(), workshop.files());
        return new NewFile(workshop, files, files.free(name, kind));
    }

    /**
     * A design's file in the folder of another one, so that links lead to the same parts.
     *
     * @param workshop what the window works with
     * @param studio the studio
     * @param other the other design's file
     * @param name the design's name
     * @return the file, not there yet
     */
    public static NewFile beside(Workshop workshop, Studio studio, Path other, String name) {
        StudioFiles files = new StudioFiles(other.getParent(), workshop.files());
        return new NewFile(workshop, files, files.free(name, FileKind.DESIGN));
    }

    /**
     * Writes it.
     *
     * @param document what it holds
     * @throws FileProblemException when it cannot be written
     */
    public void write(Document document) throws FileProblemException {
        workshop.studio().steps().run(files.create(document, file));
    }
}

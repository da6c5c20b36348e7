package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Optional;

import culm.design.edit.Edits;
import culm.model.Part;
import culm.model.PartsFile;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.sharing.FileSession;

/** A file of parts while it is edited. */
public final class PartsSession extends FileSession<PartsFile> {
    private final SecureRandom random = new SecureRandom();

    /**
     * Opens a file of parts.
     *
     * @param workshop what the window works with
     * @param file the file
     * @throws FileProblemException when it cannot be read; says why
     */
    public PartsSession(Workshop workshop, Path file) throws FileProblemException {
        super(workshop, file, PartsFile.class);
    }

    @Override
    protected void documentChanged() {
        // Nothing here holds on to a part of it.
    }

    @Override
    public void refresh() {
        tell();
    }

    /** {@return makes commands for a part, and finds its numbers} */
    Edits edits(Part part) {
        return Edits.of(part, random);
    }

    /** Changes a part. @param label what it is called in the menu; empty to keep its own */
    void change(Part part, Change change, String label) throws FileProblemException {
        change(edits(part), change, label);
    }

    /** Adds a part at the end. */
    void add(Part part) throws FileProblemException {
        requireWritable();
        execute(Edits.addPart(document(), part));
    }

    /** Takes a part out of the file. */
    void remove(Part part) throws FileProblemException {
        requireWritable();
        execute(Edits.removePart(document(), part));
    }

    /** {@return the part of an id} */
    Optional<Part> part(String id) {
        return document().getParts().stream().filter(p -> id.equals(p.getId())).findFirst();
    }
}

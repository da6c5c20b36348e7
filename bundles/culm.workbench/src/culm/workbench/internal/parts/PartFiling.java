package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.model.Part;
import culm.model.PartsFile;
import culm.model.files.Loaded;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.model.studio.Studio;
import culm.model.studio.StudioEntry;
import culm.model.text.Ids;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.studio.FileStep;

/** Puts a part that a design has of its own into a file of parts, as a step of the studio that can be taken back. */
record PartFiling(Workshop workshop, Studio studio) {
    /**
     * Writes the file with a copy of the part at its end.
     *
     * @param otherwise what it is called when it has no name
     * @param design the file that will link to it
     * @return the link
     */
    Link put(Part part, StudioEntry file, String otherwise, Path design) throws FileProblemException {
        Loaded<PartsFile> loaded = workshop.files().load(file.file(), file.shown(), PartsFile.class);
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        Part copy = EcoreUtil.copy(part);
        if (copy.getName() == null || copy.getName().isBlank()) {
            copy.setName(otherwise);
        }
        List<String> taken = loaded.document().getParts().stream().map(Part::getId).filter(Objects::nonNull).toList();
        copy.setId(Ids.of(copy.getName(), PartWords.kind(part), taken));
        loaded.document().getParts().add(copy);
        FileStep step = new FileStep("put " + copy.getName() + " into " + file.title());
        workshop.studio().steps().run(step.put(file.file(), workshop.files().bytes(loaded.document())));
        return Link.between(design, file.file(), copy.getId());
    }
}

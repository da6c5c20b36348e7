package culm.design.edit;

import java.nio.file.Path;

import culm.model.Part;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;

/** Finds the part that a linked part in a design stands for. */
@FunctionalInterface
public interface PartResolver {
    /**
     * @param part a part in a design
     * @return the part itself, or the one in a parts file; not to be changed
     * @throws FileProblemException when its link leads nowhere
     */
    Part resolve(Part part) throws FileProblemException;

    /** Follows links as a studio does. @param file the design's file, @param shown its name for messages */
    static PartResolver in(Studio studio, Path file, String shown) {
        return part -> studio.resolve(file, shown, part).part();
    }
}

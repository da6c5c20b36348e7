package culm.bench.card;

import java.nio.file.Path;
import java.util.Locale;

import culm.model.Design;
import culm.model.Part;
import culm.model.Quantity;
import culm.model.ThreadPart;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;

/** What a design's file knows of a card's head: its name, the instrument, and the names of its parts. */
public final class DesignHead {
    private DesignHead() {
    }

    /** Reads a file. @param file the design's file, absolute */
    public static CardHead read(Path file) throws FileProblemException {
        ModelFiles files = new ModelFiles();
        Studio studio = Studio.around(file, files);
        return of(files.load(file, studio.shown(file), Design.class).document(), file, studio);
    }

    /** The same from a design that is open. @param file where it stands, for its links */
    public static CardHead of(Design design, Path file, Studio studio) throws FileProblemException {
        String name = design.getName() == null || design.getName().isBlank() ? file.getFileName().toString() : design.getName();
        return new CardHead(name, "", text(design.getInstrument()), "", name(design.getStaple(), file, studio), "", name(design.getShape(), file, studio),
                thread(design.getThread(), file, studio), "");
    }

    private static String name(Part part, Path file, Studio studio) throws FileProblemException {
        return part == null ? "" : text(studio.resolve(file, studio.shown(file), part).part().getName());
    }

    private static String thread(ThreadPart thread, Path file, Studio studio) throws FileProblemException {
        if (thread == null) {
            return "";
        }
        ThreadPart part = studio.resolve(file, studio.shown(file), thread).part();
        Quantity diameter = part.getDiameter();
        String thick = diameter == null || !diameter.isSetValue() ? "" : String.format(Locale.ROOT, "%.2f", diameter.getValue());
        return text(part.getName()) + (thick.isEmpty() || text(part.getName()).contains(thick) ? "" : (text(part.getName()).isEmpty() ? "" : ", ") + thick);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}

package culm.workbench.internal.parts;

import java.util.Locale;

import culm.model.GougePart;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.ShapePart;
import culm.model.StaplePart;

/** Parts in words. */
final class PartWords {
    private PartWords() {
    }

    /** {@return staple, gouge, shape or thread} */
    static String kind(Part part) {
        return part.eClass().getName().replace("Part", "").toLowerCase(Locale.ROOT);
    }

    /** {@return its name; without one its id} */
    static String name(Part part) {
        return part.getName() != null && !part.getName().isBlank() ? part.getName() : part.getId() == null ? kind(part) : part.getId();
    }

    /** {@return its profile; null when it has none} */
    static ProfileData profile(Part part) {
        return part instanceof StaplePart staple ? staple.getProfile() : part instanceof GougePart gouge ? gouge.getProfile()
                : part instanceof ShapePart shape ? shape.getProfile() : null;
    }
}

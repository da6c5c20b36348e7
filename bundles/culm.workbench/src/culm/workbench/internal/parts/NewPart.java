package culm.workbench.internal.parts;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.blank.Inputs;
import culm.design.edit.Edits;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.ModelPackage;
import culm.model.Part;
import culm.model.PartsFile;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;

/** Makes parts: of a kind with the usual numbers, all of them assumed, or like another one. */
final class NewPart {
    private final PartsFile file;
    private final Profiles profiles;

    NewPart(PartsFile file, Profiles profiles) {
        this.file = file;
        this.profiles = profiles;
    }

    /** A part with the usual numbers. @param kind staple, gouge, shape or thread */
    Part usual(String kind) throws FileProblemException {
        Part part = (Part) ModelFactory.eINSTANCE.create(type(kind));
        part.setName("new " + kind);
        part.setId(id(part.getName()));
        Edits edits = Edits.of(part, new java.security.SecureRandom());
        ProfileType type = switch (kind) {
            case "staple" -> profiles.staples().all().iterator().next();
            case "gouge" -> profiles.gouges().all().iterator().next();
            case "shape" -> profiles.shapes().all().iterator().next();
            default -> null;
        };
        if (type != null) {
            edits.setProfile(kind, type).execute();
        }
        for (var described : Inputs.all().entrySet()) {
            if (described.getKey().startsWith(kind + ".") && !described.getValue().optional() && !described.getKey().equals(Inputs.THREAD_PITCH)) {
                edits.setQuantity(described.getKey(), java.util.OptionalDouble.of(described.getValue().standard()), java.util.OptionalDouble.empty(), How.ASSUMED).execute();
            }
        }
        return part;
    }

    /** A copy under another id. */
    Part like(Part other) {
        Part copy = EcoreUtil.copy(other);
        copy.setName(PartWords.name(other) + " copy");
        copy.setId(id(copy.getName()));
        return copy;
    }

    private String id(String name) {
        List<String> taken = file.getParts().stream().map(Part::getId).filter(java.util.Objects::nonNull).toList();
        return Ids.of(name, "part", taken);
    }

    private static EClass type(String kind) {
        return switch (kind) {
            case "staple" -> ModelPackage.Literals.STAPLE_PART;
            case "gouge" -> ModelPackage.Literals.GOUGE_PART;
            case "shape" -> ModelPackage.Literals.SHAPE_PART;
            default -> ModelPackage.Literals.THREAD_PART;
        };
    }
}

package culm.design;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.blank.rules.Finding;
import culm.geometry.gouge.GougeType;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Profiles;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.shape.ShapeType;
import culm.geometry.staple.StapleType;
import culm.model.GougePart;
import culm.model.How;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.Quantity;
import culm.model.Setup;
import culm.model.ShapePart;
import culm.model.StaplePart;
import culm.model.ThreadPart;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.ResolvedPart;
import culm.model.studio.Studio;
import culm.model.text.Located;

/** Reads the parts and lengths of one setup (a design, or the blank that worked) into a builder; links are followed. */
final class SetupReader {
    private final Profiles profiles;
    private final Studio studio;
    private final Path file;
    private final String shown;
    private final Places places;
    private final List<Finding> remarks;

    SetupReader(Profiles profiles, Studio studio, Path file, String shown, Places places, List<Finding> remarks) {
        this.profiles = profiles;
        this.studio = studio;
        this.file = file;
        this.shown = shown;
        this.places = places;
        this.remarks = remarks;
    }

    BlankBuilder read(Setup setup) throws FileProblemException {
        ResolvedPart<StaplePart> staple = part(setup, setup.getStaple(), "staple");
        ResolvedPart<GougePart> gouge = part(setup, setup.getGouge(), "gouge");
        ResolvedPart<ShapePart> shape = part(setup, setup.getShape(), "shape");
        ProfileReader ofStaple = reader(staple, "staple");
        ProfileReader ofGouge = reader(gouge, "gouge");
        ProfileReader ofEnd = reader(gouge, "gougeEnd");
        ProfileReader ofShape = reader(shape, "shape");
        Profile<StapleType> stapleProfile = ofStaple.read(profile(staple, staple.part().getProfile(), "staple"), profiles.staples(), StapleType.class);
        Profile<GougeType> gougeProfile = ofGouge.read(profile(gouge, gouge.part().getProfile(), "gouge"), profiles.gouges(), GougeType.class);
        Profile<ShapeType> shapeProfile = ofShape.read(profile(shape, shape.part().getProfile(), "shape"), profiles.shapes(), ShapeType.class);
        BlankBuilder builder = new BlankBuilder(stapleProfile, gougeProfile, shapeProfile);
        ofStaple.tolerances(staple.part().getProfile(), stapleProfile.type(), builder);
        ofGouge.tolerances(gouge.part().getProfile(), gougeProfile.type(), builder);
        ofShape.tolerances(shape.part().getProfile(), shapeProfile.type(), builder);
        if (gouge.part().getEndProfile() != null) {
            Profile<GougeType> end = ofEnd.read(gouge.part().getEndProfile(), profiles.gouges(), GougeType.class);
            builder.gougeEnd(end);
            ofEnd.tolerances(gouge.part().getEndProfile(), end.type(), builder);
        }
        if (shape.part().getInside() != null) {
            ProfileReader ofInside = reader(shape, "inside");
            builder.insideWidths(ofInside.rows(MeasuredShape.TABLE, shape.part().getInside()));
            ofInside.tolerances(MeasuredShape.TABLE, shape.part().getInside(), builder);
        }
        builder.cut(Cuts.of(shape.part(), gouge.part()));
        numbers(builder, "staple", staple.part(), staple.shown());
        numbers(builder, "gouge", gouge.part(), gouge.shown());
        numbers(builder, "shape", shape.part(), shape.shown());
        if (setup.getThread() != null) {
            ResolvedPart<ThreadPart> thread = studio.resolve(file, shown, setup.getThread());
            numbers(builder, "thread", thread.part(), thread.shown());
            sideBySide(builder, thread.part());
        }
        numbers(builder, "tie", setup.getTie(), shown);
        numbers(builder, "cane", setup.getCane(), shown);
        return builder;
    }

    /** Reads a setup that has no fit of its own. */
    Blank blank(Setup setup) throws FileProblemException {
        return read(setup).build();
    }

    private <P extends Part> ResolvedPart<P> part(Setup setup, P part, String name) throws FileProblemException {
        if (part == null) {
            throw new FileProblemException(new FileProblem(Kind.MISSING_VALUE, shown, Located.lineOf(setup), name, "there is no " + name + " in it"));
        }
        ResolvedPart<P> resolved = studio.resolve(file, shown, part);
        places.put(name, resolved.shown(), resolved.part());
        return resolved;
    }

    private ProfileReader reader(ResolvedPart<?> part, String name) {
        return new ProfileReader(part.shown(), name, places, remarks);
    }

    private static ProfileData profile(ResolvedPart<?> part, ProfileData profile, String name) throws FileProblemException {
        if (profile == null) {
            throw new FileProblemException(new FileProblem(Kind.MISSING_VALUE, part.shown(), Located.lineOf(part.part()), name, "this " + name + " has no profile"));
        }
        return profile;
    }

    /** The described numbers of one element: a feature is called as its input is. */
    private void numbers(BlankBuilder builder, String part, EObject element, String where) {
        if (element == null) {
            return;
        }
        for (var described : Inputs.all().entrySet()) {
            String path = described.getKey();
            if (!path.startsWith(part + ".")) {
                continue;
            }
            EStructuralFeature feature = element.eClass().getEStructuralFeature(path.substring(part.length() + 1));
            if (feature != null && element.eGet(feature) instanceof Quantity quantity && quantity.isSetValue()) {
                places.put(path, where, quantity);
                builder.set(path, quantity.getValue());
                builder.tolerance(path, plusMinus(quantity, described.getValue()), quantity.getHow() == How.MEASURED);
            }
        }
    }

    /** Turns wound side by side are as high as the thread is thick. */
    private static void sideBySide(BlankBuilder builder, ThreadPart thread) {
        Quantity diameter = thread.getDiameter();
        if (thread.getPitch() == null && diameter != null && diameter.isSetValue()) {
            builder.set(Inputs.THREAD_PITCH, diameter.getValue());
            builder.tolerance(Inputs.THREAD_PITCH, plusMinus(diameter, Inputs.all().get(Inputs.THREAD_PITCH)), false);
        }
    }

    private static double plusMinus(Quantity quantity, Parameter described) {
        return quantity.isSetTolerance() ? quantity.getTolerance() : described.tolerance();
    }
}

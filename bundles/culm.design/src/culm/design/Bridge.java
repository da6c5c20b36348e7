package culm.design;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Fit;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.geometry.GeometryException;
import culm.geometry.profile.Profiles;
import culm.model.Design;
import culm.model.FitData;
import culm.model.NamedValue;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.model.text.Located;

/** The one way from a design and the known profile types to a blank that can be computed. Stateless but for what it was given. */
public final class Bridge {
    /** How the words for the blank of a fit begin when it was learned from many blanks. */
    public static final String LEARNED = "learned from ";
    private final Profiles profiles;

    /** @param profiles the types that are known */
    public Bridge(Profiles profiles) {
        this.profiles = profiles;
    }

    /** The known types. */
    public Profiles profiles() {
        return profiles;
    }

    /**
     * Reads a design file and follows its links.
     *
     * @param file the design's file, absolute
     * @throws FileProblemException with one clear sentence, file and line, when it or a linked part cannot be used
     */
    public DesignedBlank read(Path file) throws FileProblemException {
        culm.model.files.ModelFiles files = new culm.model.files.ModelFiles();
        Studio studio = Studio.around(file, files);
        var loaded = files.load(file, studio.shown(file), Design.class);
        if (loaded.readOnly().isPresent()) {
            throw new FileProblemException(loaded.readOnly().get());
        }
        return of(loaded.document(), file, loaded.file(), studio);
    }

    /**
     * The blank that a design describes.
     *
     * @param design the design, perhaps with unsaved changes
     * @param file   where it stands, for its links
     * @param shown  its name for messages
     * @throws FileProblemException for every wrong number, with where it stands
     */
    public DesignedBlank of(Design design, Path file, String shown, Studio studio) throws FileProblemException {
        DesignedBlank draft = draft(design, file, shown, studio);
        refuse(draft.blank(), draft.places(), shown);
        return draft;
    }

    /**
     * The same while it is edited: numbers that are out of range or do not go together are no reason to refuse it; its assessment says what
     * cannot be computed.
     *
     * @throws FileProblemException when a linked part cannot be found or there is no plug-in for a type
     */
    public DesignedBlank draft(Design design, Path file, String shown, Studio studio) throws FileProblemException {
        Places places = new Places();
        List<Finding> remarks = new ArrayList<>();
        BlankBuilder builder = new SetupReader(profiles, studio, file, shown, places, remarks).read(design);
        FitData fit = design.getFit();
        if (fit != null && fit.isInUse()) {
            builder.fit(fit(fit, file, shown, studio));
            places.put("fit", shown, fit);
        }
        String name = design.getName() == null || design.getName().isBlank() ? file.getFileName().toString() : design.getName();
        return new DesignedBlank(name, builder.build(), limits(design, shown, studio), places, List.copyOf(remarks));
    }

    private Fit fit(FitData fit, Path file, String shown, Studio studio) throws FileProblemException {
        if (fit.getWorked() == null || fit.getTurnsLeft() == null || !fit.getTurnsLeft().isSetValue() || fit.getDelta() == null || !fit.getDelta().isSetValue()) {
            throw new FileProblemException(new FileProblem(Kind.MISSING_VALUE, shown, Located.lineOf(fit), "",
                    "a fit needs its length, the turns that were left, and the blank that worked"));
        }
        Places places = new Places();
        Blank worked = new SetupReader(profiles, studio, file, shown, places, new ArrayList<>()).blank(fit.getWorked());
        refuse(worked, places, shown);
        double reading = fit.getTurnsLeft().isSetTolerance() ? fit.getTurnsLeft().getTolerance() : Fit.HALF_A_TURN;
        String learned = fit.getBlank() != null && fit.getBlank().startsWith(LEARNED) ? fit.getBlank() : "";
        return new Fit(worked, fit.getTurnsLeft().getValue(), reading, fit.getDelta().getValue(), learned);
    }

    private static void refuse(Blank blank, Places places, String shown) throws FileProblemException {
        List<FileProblem> problems = new ArrayList<>();
        for (GeometryException wrong : blank.problems()) {
            Places.Place place = places.of(wrong.path()).orElse(new Places.Place(shown, 0));
            problems.add(new FileProblem(Kind.OUT_OF_RANGE, place.file(), place.line(), wrong.path(), wrong.getMessage()));
        }
        if (!problems.isEmpty()) {
            throw new FileProblemException(problems);
        }
    }

    private static Limits limits(Design design, String shown, Studio studio) throws FileProblemException {
        Limits limits = Limits.STANDARD;
        var ofStudio = studio.limits();
        if (ofStudio.isPresent()) {
            limits = with(limits, ofStudio.get().document(), ofStudio.get().file());
        }
        return design.getLimits() == null ? limits : with(limits, design.getLimits(), shown);
    }

    private static Limits with(Limits limits, culm.model.Limits given, String shown) throws FileProblemException {
        Limits result = limits;
        for (NamedValue value : given.getValues()) {
            try {
                result = result.with(value.getName(), value.getValue());
            } catch (IllegalArgumentException e) {
                throw new FileProblemException(new FileProblem(Kind.BAD_VALUE, shown, Located.lineOf(value), String.valueOf(value.getName()), e.getMessage()));
            }
        }
        return result;
    }
}

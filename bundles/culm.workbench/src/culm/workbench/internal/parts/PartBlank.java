package culm.workbench.internal.parts;

import java.util.Optional;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.design.edit.Edits;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Registry;
import culm.model.GougePart;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.ThreadPart;

/** A part in a blank whose other parts are the usual ones, to be drawn alone. */
final class PartBlank {
    private final Profiles profiles;
    private final Part part;
    private final String kind;

    private PartBlank(Part part, Profiles profiles) {
        this.part = part;
        this.profiles = profiles;
        this.kind = PartWords.kind(part);
    }

    /**
     * The blank of a part as it is now.
     *
     * @param edits what reads the part's own numbers
     * @return empty where no plug-in brings the part's type
     */
    static Optional<Blank> of(Part part, Edits edits, Profiles profiles) {
        ProfileData data = PartWords.profile(part);
        if (data == null && !(part instanceof ThreadPart) || !PartPlan.missing(part, profiles).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new PartBlank(part, profiles).blank(data, edits));
    }

    private Blank blank(ProfileData data, Edits edits) {
        BlankBuilder builder = new BlankBuilder(usual(profiles.staples()), usual(profiles.gouges()), usual(profiles.shapes()));
        switch (kind) {
            case "staple" -> builder.staple(profile(data, profiles.staples()));
            case "thread" -> {
            }
            case "shape" -> builder.shape(profile(data, profiles.shapes()));
            default -> {
                builder.gouge(profile(data, profiles.gouges()));
                ProfileData end = ((GougePart) part).getEndProfile();
                if (end != null && profiles.gouges().find(String.valueOf(end.getType())).isPresent()) {
                    builder.gougeEnd(profile(end, profiles.gouges()));
                }
            }
        }
        Inputs.all().keySet().stream().filter(path -> path.startsWith(kind + "."))
                .forEach(path -> edits.quantity(path).filter(q -> q.isSetValue()).ifPresent(q -> builder.set(path, q.getValue())));
        return builder.build();
    }

    private static <T extends ProfileType> Profile<T> usual(Registry<T> registry) {
        return Profile.standard(registry.all().iterator().next());
    }

    private static <T extends ProfileType> Profile<T> profile(ProfileData data, Registry<T> registry) {
        T type = registry.find(String.valueOf(data.getType())).orElseThrow();
        return new Profile<>(type, PartCheck.values(data, type));
    }
}

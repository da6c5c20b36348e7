package culm.workbench.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import culm.blank.Inputs;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Quantity;
import culm.model.Edges;
import culm.model.GougePart;
import culm.model.ParameterValue;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.ShapePart;
import culm.workbench.internal.form.FormPlan;
import culm.workbench.internal.form.FormPlan.Item;
import culm.workbench.internal.form.FormPlan.Measured;
import culm.workbench.internal.form.FormPlan.Number;

/**
 * What stands in the form of a part: its profile's numbers and rows, and those every such part has, what is measured first first.
 *
 * @param kind staple, gouge, shape or thread
 * @param items the numbers and tables
 */
record PartPlan(String kind, List<Item> items) {
    private static final double ANY = 1e12;

    static PartPlan of(Part part, Profiles profiles) {
        String kind = PartWords.kind(part);
        List<Item> first = new ArrayList<>();
        List<Item> rest = new ArrayList<>();
        Inputs.all().forEach((path, described) -> {
            if (path.startsWith(kind + ".")) {
                (described.measureFirst() ? first : rest).add(new Number(path, described.label(), described));
            }
        });
        profile(kind, "", PartWords.profile(part), profiles, first);
        if (part instanceof GougePart gouge) {
            profile("gougeEnd", FormPlan.AT_THE_END, gouge.getEndProfile(), profiles, first);
        }
        if (part instanceof ShapePart shape && shape.getEdges() == Edges.TWO_WIDTHS) {
            first.add(Measured.inside());
        }
        first.addAll(rest);
        return new PartPlan(kind, List.copyOf(first));
    }

    private static void profile(String word, String where, ProfileData data, Profiles profiles, List<Item> items) {
        if (data == null) {
            return;
        }
        Optional<? extends ProfileType> type = type(word, data, profiles);
        if (type.isEmpty()) {
            for (ParameterValue number : data.getParameters()) {
                items.add(new Number(word + "." + number.getName(), where + number.getName(), unknown(number.getName())));
            }
            return;
        }
        type.get().parameters().forEach(p -> items.add(new Number(word + "." + p.id(), where + p.label(), p)));
        type.get().tables().forEach(t -> items.add(Measured.of(word, where, t)));
    }

    private static Parameter unknown(String name) {
        return new Parameter(name.matches("[a-z][A-Za-z0-9]*") ? name : "number", name, Quantity.COUNT, -ANY, ANY, Double.NaN, 0, false,
                "A number of a type that is not here.");
    }

    /** {@return the type of a profile, when it is here} */
    static Optional<? extends ProfileType> type(String word, ProfileData data, Profiles profiles) {
        String id = String.valueOf(data.getType());
        return switch (word) {
            case "staple" -> profiles.staples().find(id);
            case "shape" -> profiles.shapes().find(id);
            default -> profiles.gouges().find(id);
        };
    }

    /** {@return why a part's type cannot be used; empty when it can} */
    static String missing(Part part, Profiles profiles) {
        ProfileData data = PartWords.profile(part);
        return data == null || type(PartWords.kind(part), data, profiles).isPresent() ? ""
                : "No plug-in here brings the type \"" + data.getType() + "\" of " + PartWords.name(part) + "; its numbers are kept.";
    }
}

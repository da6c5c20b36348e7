package culm.workbench.internal.parts;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.swt.widgets.Composite;

import culm.blank.Blank;
import culm.blank.InsideWidths;
import culm.blank.OwnPlaces;
import culm.design.Cuts;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Table;
import culm.model.Edges;
import culm.model.GougePart;
import culm.model.Moisture;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.ShapePart;
import culm.model.ThreadPart;
import culm.model.WidthsAlong;
import culm.model.Winding;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.form.ChoiceRows;
import culm.workbench.internal.form.FormContext;

/** What is chosen of a part, not measured: its kind, how its edges stand, wet or dry, which way it is wound. */
final class PartCombos {
    private final ChoiceRows rows;

    PartCombos(Composite parent, Part part, FormContext context, Workshop workshop, Supplier<Optional<Blank>> blank) {
        rows = new ChoiceRows(parent, context);
        Profiles known = workshop.bridge().profiles();
        String word = PartWords.kind(part);
        Supplier<Optional<Table>> places = () -> blank.get().flatMap(b -> OwnPlaces.of(b, word));
        switch (word) {
            case "staple" -> rows.kind(word, List.copyOf(known.staples().all()), () -> kind(part), places);
            case "gouge" -> {
                rows.kind(word, List.copyOf(known.gouges().all()), () -> kind(part), places);
                rows.gougeEnd(List.copyOf(known.gouges().all()), () -> ((GougePart) part).getEndProfile() == null ? null : ((GougePart) part).getEndProfile().getType());
            }
            case "shape" -> {
                rows.kind(word, List.copyOf(known.shapes().all()), () -> kind(part), places);
                shape((ShapePart) part, () -> blank.get().map(b -> InsideWidths.of(b.edit().cut(Cuts.of((ShapePart) part)).build())).orElse(List.of()));
            }
            default -> winding((ThreadPart) part);
        }
        if (word.equals("gouge") || word.equals("shape")) {
            rows.moisture("measured on cane that was", word, () -> part.isSetMoisture() && part.getMoisture() == Moisture.WET ? Moisture.WET : Moisture.DRY);
        }
        show();
    }

    private static String kind(Part part) {
        ProfileData data = PartWords.profile(part);
        return data == null ? null : data.getType();
    }

    private void shape(ShapePart shape, Supplier<List<double[]>> inside) {
        rows.edges(() -> shape.isSetEdges() ? shape.getEdges() : Edges.SQUARE, inside);
        rows.widthsAlong(() -> shape.isSetWidthsAlong() ? shape.getWidthsAlong() : WidthsAlong.CHORD);
    }

    private void winding(ThreadPart thread) {
        rows.choice("wound, seen from the tip", "thread", "winding", List.of("clockwise", "anticlockwise"), List.of(Winding.CLOCKWISE, Winding.ANTICLOCKWISE),
                () -> thread.isSetWinding() ? thread.getWinding() : null);
    }

    /** Shows what is chosen now. */
    void show() {
        rows.show();
    }
}

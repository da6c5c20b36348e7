package culm.workbench.internal.form;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Composite;

import culm.blank.Blank;
import culm.blank.InsideWidths;
import culm.blank.OwnPlaces;
import culm.geometry.profile.Profiles;
import culm.geometry.profile.Table;
import culm.geometry.shape.WidthMeasure;
import culm.model.Edges;
import culm.model.Moisture;
import culm.model.WidthsAlong;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;

/** What is chosen of a design's part, not measured: its kind, how its edges stand, wet or dry. */
final class PartChoices {
    private final DesignSession session;
    private final String part;
    private final ChoiceRows rows;
    private Blank blank;

    PartChoices(Composite parent, String part, FormContext context, Workshop workshop, DesignSession session) {
        this.session = session;
        this.part = part;
        rows = new ChoiceRows(parent, context);
        if (session.blank().isEmpty()) {
            return;
        }
        blank = session.blank().get().blank();
        Profiles known = workshop.bridge().profiles();
        switch (part) {
            case "staple" -> rows.kind(part, List.copyOf(known.staples().all()), () -> blank.staple().type().id(), this::places);
            case "gouge" -> {
                rows.kind(part, List.copyOf(known.gouges().all()), () -> blank.gouge().type().id(), this::places);
                rows.gougeEnd(List.copyOf(known.gouges().all()), () -> blank.gougeEnd().map(end -> end.type().id()).orElse(null));
                rows.moisture("thickness measured", part, () -> moisture(blank.cut().gougeDry()));
            }
            case "shape" -> {
                rows.kind(part, List.copyOf(known.shapes().all()), () -> blank.shape().type().id(), this::places);
                rows.edges(this::edges, () -> InsideWidths.of(blank));
                rows.widthsAlong(() -> blank.cut().measure() == WidthMeasure.CHORD ? WidthsAlong.CHORD : WidthsAlong.ARC);
                rows.moisture("on cane that is", part, () -> moisture(blank.cut().shapeDry()));
            }
            default -> { }
        }
        show();
    }

    private Optional<Table> places() {
        return OwnPlaces.of(blank, part);
    }

    private Edges edges() {
        return switch (blank.cut().edges()) {
            case SQUARE -> Edges.SQUARE;
            case RADIAL -> Edges.RADIAL;
            case TWO_WIDTHS -> Edges.TWO_WIDTHS;
        };
    }

    private static Moisture moisture(boolean dry) {
        return dry ? Moisture.DRY : Moisture.WET;
    }

    /** Shows what is chosen now; while the design cannot be told, what was chosen last. */
    void show() {
        session.blank().ifPresent(now -> {
            blank = now.blank();
            rows.show();
        });
    }
}

package culm.workbench.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntSupplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.model.Edges;
import culm.model.Moisture;
import culm.model.Part;
import culm.model.ProfileData;
import culm.model.ShapePart;
import culm.model.ThreadPart;
import culm.model.WidthsAlong;
import culm.model.Winding;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.form.FormContext;
import culm.workbench.internal.sharing.FileSession.Change;

/** What is chosen of a part, not measured: its kind, how its edges stand, wet or dry, which way it is wound. */
final class PartCombos {
    private final Composite parent;
    private final FormContext context;
    private final List<Runnable> shown = new ArrayList<>();

    PartCombos(Composite parent, Part part, FormContext context, Workshop workshop) {
        this.parent = parent;
        this.context = context;
        Profiles known = workshop.bridge().profiles();
        String kind = PartWords.kind(part);
        switch (kind) {
            case "staple" -> kind(part, kind, List.copyOf(known.staples().all()));
            case "gouge" -> kind(part, kind, List.copyOf(known.gouges().all()));
            case "shape" -> {
                kind(part, kind, List.copyOf(known.shapes().all()));
                shape((ShapePart) part);
            }
            default -> winding((ThreadPart) part);
        }
        if (kind.equals("gouge") || kind.equals("shape")) {
            choice("measured on cane that was", kind, "moisture", List.of("dry", "wet"), List.of(Moisture.DRY, Moisture.WET),
                    () -> part.isSetMoisture() && part.getMoisture() == Moisture.WET ? 1 : 0);
        }
    }

    /** {@return each shows its choice as it is now} */
    List<Runnable> shown() {
        return shown;
    }

    private void shape(ShapePart shape) {
        choice("edges", "shape", "edges", List.of("square to the chord", "along the radius", "two widths"), List.of(Edges.SQUARE, Edges.RADIAL, Edges.TWO_WIDTHS),
                () -> shape.isSetEdges() ? List.of(Edges.SQUARE, Edges.RADIAL, Edges.TWO_WIDTHS).indexOf(shape.getEdges()) : 0);
        choice("widths measured", "shape", "widthsAlong", List.of("straight across", "around the bark"), List.of(WidthsAlong.CHORD, WidthsAlong.ARC),
                () -> shape.isSetWidthsAlong() && shape.getWidthsAlong() == WidthsAlong.ARC ? 1 : 0);
    }

    private void winding(ThreadPart thread) {
        choice("wound, seen from the tip", "thread", "winding", List.of("clockwise", "anticlockwise"), List.of(Winding.CLOCKWISE, Winding.ANTICLOCKWISE),
                () -> thread.isSetWinding() ? thread.getWinding() == Winding.CLOCKWISE ? 0 : 1 : -1);
    }

    private void kind(Part part, String word, List<? extends ProfileType> types) {
        List<String> names = types.stream().map(ProfileType::name).toList();
        IntSupplier now = () -> {
            ProfileData data = PartWords.profile(part);
            List<String> ids = types.stream().map(ProfileType::id).toList();
            return data == null ? -1 : ids.indexOf(data.getType());
        };
        Combo combo = combo("kind of " + word, names, now);
        combo.addListener(SWT.Selection, e -> run(combo, edits -> edits.setProfile(word, types.get(combo.getSelectionIndex())), "kind of " + word + ": " + combo.getText()));
    }

    private void choice(String words, String element, String feature, List<String> names, List<?> values, IntSupplier now) {
        Combo combo = combo(words, names, now);
        combo.addListener(SWT.Selection, e -> run(combo, edits -> edits.set(element, feature, values.get(combo.getSelectionIndex())), words + " " + combo.getText()));
    }

    private Combo combo(String words, List<String> names, IntSupplier now) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        label.setFont(context.look().font(Size.BODY, SWT.NORMAL));
        context.look().dress(label, Role.PAPER, Role.QUIET);
        GridData left = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        left.horizontalIndent = 20;
        label.setLayoutData(left);
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(names.toArray(String[]::new));
        combo.setFont(context.look().font(Size.BODY, SWT.NORMAL));
        combo.setData("culm.choice", words);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        wide.horizontalIndent = 20;
        combo.setLayoutData(wide);
        shown.add(() -> {
            if (now.getAsInt() < 0) {
                combo.deselectAll();
            } else if (combo.getSelectionIndex() != now.getAsInt()) {
                combo.select(now.getAsInt());
            }
        });
        return combo;
    }

    private void run(Combo combo, Change change, String label) {
        try {
            context.change(change, label);
        } catch (FileProblemException e) {
            combo.setToolTipText(e.problem().message());
            shown.forEach(Runnable::run);
        }
    }
}

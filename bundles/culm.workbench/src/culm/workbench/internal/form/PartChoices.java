package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.blank.Blank;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Profiles;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.WidthMeasure;
import culm.model.Edges;
import culm.model.Moisture;
import culm.model.WidthsAlong;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;

/** What is chosen of a part, not measured: its kind, how its edges stand, wet or dry. */
final class PartChoices {
    private final Composite parent;
    private final FormContext context;

    PartChoices(Composite parent, String part, FormContext context, Workshop workshop, DesignSession session) {
        this.parent = parent;
        this.context = context;
        Blank blank = session.blank().map(b -> b.blank()).orElse(null);
        if (blank == null) {
            return;
        }
        Profiles known = workshop.bridge().profiles();
        switch (part) {
            case "staple" -> kind("kind of staple", part, List.copyOf(known.staples().all()), blank.staple().type());
            case "gouge" -> {
                kind("kind of gouge", part, List.copyOf(known.gouges().all()), blank.gouge().type());
                choice("thickness measured", "gouge", "moisture", List.of("dry", "wet"), List.of(Moisture.DRY, Moisture.WET),
                        blank.cut().gougeDry() ? 0 : 1);
            }
            case "shape" -> shape(known, blank);
            default -> { }
        }
    }

    private void shape(Profiles known, Blank blank) {
        kind("kind of shape", "shape", List.copyOf(known.shapes().all()), blank.shape().type());
        choice("edges", "shape", "edges", List.of("square to the chord", "along the radius", "two widths"),
                List.of(Edges.SQUARE, Edges.RADIAL, Edges.TWO_WIDTHS), List.of(EdgeKind.SQUARE, EdgeKind.RADIAL, EdgeKind.TWO_WIDTHS).indexOf(blank.cut().edges()));
        choice("widths measured", "shape", "widthsAlong", List.of("straight across", "around the bark"), List.of(WidthsAlong.CHORD, WidthsAlong.ARC),
                blank.cut().measure() == WidthMeasure.CHORD ? 0 : 1);
        choice("on cane that is", "shape", "moisture", List.of("dry", "wet"), List.of(Moisture.DRY, Moisture.WET), blank.cut().shapeDry() ? 0 : 1);
    }

    private void kind(String words, String part, List<? extends ProfileType> types, ProfileType now) {
        List<String> names = new ArrayList<>();
        types.forEach(t -> names.add(t.name()));
        Combo combo = combo(words, names, types.indexOf(now));
        combo.setToolTipText(now.help());
        combo.addListener(SWT.Selection, e -> run(combo,
                edits -> edits.setProfile(part, types.get(combo.getSelectionIndex())), words + ": " + combo.getText()));
    }

    private void choice(String words, String element, String feature, List<String> names, List<?> values, int now) {
        Combo combo = combo(words, names, now);
        combo.addListener(SWT.Selection, e -> run(combo,
                edits -> edits.set(element, feature, values.get(combo.getSelectionIndex())), words + " " + combo.getText()));
    }

    private Combo combo(String words, List<String> names, int now) {
        Label label = new Label(parent, SWT.NONE);
        label.setText(words);
        label.setFont(context.look().font(Size.BODY, SWT.NORMAL));
        context.look().dress(label, Role.PAPER, Role.QUIET);
        GridData left = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        left.horizontalIndent = 20;
        label.setLayoutData(left);
        Combo combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(names.toArray(String[]::new));
        combo.select(now);
        combo.setFont(context.look().font(Size.BODY, SWT.NORMAL));
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        wide.horizontalIndent = 20;
        combo.setLayoutData(wide);
        return combo;
    }

    private void run(Combo combo, DesignSession.Change change, String label) {
        try {
            context.change(change, label);
        } catch (FileProblemException e) {
            combo.setToolTipText(e.problem().message());
        }
    }
}

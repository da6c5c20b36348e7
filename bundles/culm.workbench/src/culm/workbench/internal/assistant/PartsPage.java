package culm.workbench.internal.assistant;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.model.studio.Link;
import culm.model.studio.StudioIndex.Held;
import culm.workbench.internal.app.Workshop;

/** Asks which staple, gouge, shape and thread of the studio to use. */
final class PartsPage extends WizardPage {
    private static final List<String> NEEDED = List.of("staple", "gouge", "shape");
    private final Map<String, List<Held>> held = new LinkedHashMap<>();
    private final Map<String, Combo> combos = new LinkedHashMap<>();

    PartsPage(Workshop workshop) {
        super("parts");
        setTitle("Parts of the studio");
        setDescription("They stay linked. Tie, wrap and finished length are assumed.");
        for (String kind : List.of("staple", "gouge", "shape", "thread")) {
            held.put(kind, workshop.studio().index().map(i -> i.parts().stream().filter(h -> h.part().kind().equals(kind)).toList()).orElse(List.of()));
        }
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        area.setLayout(new GridLayout(2, false));
        held.forEach((kind, parts) -> {
            new Label(area, SWT.NONE).setText(kind);
            Combo combo = new Combo(area, SWT.READ_ONLY);
            combo.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
            combo.setItems(parts.stream().map(h -> h.part().title()).toArray(String[]::new));
            combo.select(0);
            combo.setData("culm.part", kind);
            combos.put(kind, combo);
        });
        List<String> missing = NEEDED.stream().filter(kind -> held.get(kind).isEmpty()).toList();
        if (!missing.isEmpty()) {
            setErrorMessage("This studio has no " + String.join(" and no ", missing) + " yet; start from a caliper and a mandrel.");
        }
        setPageComplete(missing.isEmpty());
        setControl(area);
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            combos.values().iterator().next().setFocus();
        }
    }

    /** The links to what was chosen, as they stand in a design's file. */
    Map<String, Link> links(Path file) {
        Map<String, Link> links = new LinkedHashMap<>();
        combos.forEach((kind, combo) -> {
            if (combo.getSelectionIndex() >= 0) {
                Held chosen = held.get(kind).get(combo.getSelectionIndex());
                links.put(kind, Link.between(file, chosen.file().file(), chosen.part().id()));
            }
        });
        return links;
    }
}

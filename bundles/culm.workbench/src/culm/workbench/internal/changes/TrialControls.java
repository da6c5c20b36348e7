package culm.workbench.internal.changes;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.blank.Input;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.studio.Link;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignSession;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.NumberField;
import culm.workbench.internal.widgets.NumberField.Origin;

/** Chooses what is tried: another part of the studio, another number. */
final class TrialControls extends Composite {
    private static final List<String> PARTS = List.of("staple", "gouge", "shape", "thread");
    private final Workshop workshop;
    private final DesignSession session;
    private final Trial trial;
    private final Runnable tried;
    private final Map<String, Combo> parts = new LinkedHashMap<>();
    private final Map<String, Double> numbers = new HashMap<>();
    private final Map<String, List<Link>> links = new LinkedHashMap<>();
    private final Combo inputs;
    private final NumberField value;
    private List<Input> known = List.of();

    TrialControls(Composite parent, Workshop workshop, DesignSession session, Trial trial, Runnable tried) {
        super(parent, SWT.NONE);
        this.workshop = workshop;
        this.session = session;
        this.trial = trial;
        this.tried = tried;
        GridLayout layout = new GridLayout(4, false);
        layout.marginWidth = 0;
        setLayout(layout);
        workshop.look().dress(this, Role.PAPER, Role.INK);
        PARTS.forEach(this::part);
        label("and");
        inputs = new Combo(this, SWT.READ_ONLY);
        inputs.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        inputs.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        inputs.addListener(SWT.Selection, e -> showValue());
        label("is");
        value = new NumberField(this, workshop.look());
        value.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
        value.onEnter(this::enter);
        value.onStep(this::step);
        value.control().setData("culm.path", "what-if");
    }

    private void label(String words) {
        Label label = new Label(this, SWT.NONE);
        label.setText(words);
        label.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        workshop.look().dress(label, Role.PAPER, Role.QUIET);
    }

    private void part(String kind) {
        label("this " + kind);
        Combo combo = new Combo(this, SWT.READ_ONLY);
        combo.setFont(workshop.look().font(Size.BODY, SWT.NORMAL));
        combo.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        combo.addListener(SWT.Selection, e -> {
            int at = combo.getSelectionIndex() - 1;
            Link link = at < 0 ? null : links.get(kind).get(at);
            trial.set(kind, link == null ? null : edits -> edits.link(kind, link));
            tried.run();
        });
        parts.put(kind, combo);
    }

    /** Forgets what was chosen. */
    void reset() {
        parts.values().forEach(c -> c.select(0));
        numbers.clear();
        showValue();
    }

    /** Offers what there is now. */
    void show() {
        Optional<StudioIndex> index = workshop.studio().index();
        for (String kind : PARTS) {
            List<Link> found = new ArrayList<>();
            List<String> names = new ArrayList<>(List.of("as it is"));
            index.ifPresent(i -> i.parts().stream().filter(h -> h.part().kind().equals(kind)).forEach(h -> {
                found.add(Link.between(session.file(), h.file().file(), h.part().id()));
                names.add(h.part().title());
            }));
            Combo combo = parts.get(kind);
            if (!List.of(combo.getItems()).equals(names)) {
                int chosen = combo.getSelectionIndex();
                links.put(kind, found);
                combo.setItems(names.toArray(String[]::new));
                combo.select(Math.max(0, Math.min(chosen, names.size() - 1)));
            }
        }
        List<Input> now = session.blank().map(b -> b.blank().inputs().stream().filter(i -> i.path().indexOf('[') < 0 && !i.path().startsWith("fit.")).toList()).orElse(List.of());
        List<String> labels = now.stream().map(i -> i.parameter().label()).toList();
        if (!List.of(inputs.getItems()).equals(labels)) {
            inputs.setItems(labels.toArray(String[]::new));
            inputs.select(Math.max(0, labels.indexOf("tie length")));
        }
        known = now;
        showValue();
    }

    private Optional<Input> chosen() {
        int at = inputs.getSelectionIndex();
        return at >= 0 && at < known.size() ? Optional.of(known.get(at)) : Optional.empty();
    }

    private NumberForm form(Input input) {
        return NumberForm.of(input.parameter().quantity(), workshop.units().now(), input.tolerance().plusMinus());
    }

    private void showValue() {
        chosen().ifPresent(i -> {
            Double number = numbers.get(i.path());
            value.show(form(i).text(number == null ? i.value() : number), number == null ? Origin.MEASURED : Origin.ASSUMED, false);
        });
    }

    private boolean enter(String typed) {
        Optional<Input> input = chosen();
        if (input.isEmpty()) {
            return false;
        }
        try {
            double number = form(input.get()).parse(typed);
            Optional<String> refused = form(input.get()).refuse(input.get().parameter(), number);
            if (refused.isPresent()) {
                value.setToolTipText(refused.get());
                return false;
            }
            attempt(input.get(), number);
            return true;
        } catch (NumberFormatException e) {
            value.setToolTipText(e.getMessage());
            return false;
        }
    }

    private void attempt(Input input, double number) {
        numbers.put(input.path(), number);
        showValue();
        trial.set(input.path(), edits -> edits.tryValue(input.path(), number));
        tried.run();
    }

    private void step(int hundredths) {
        chosen().ifPresent(i -> {
            try {
                double now = form(i).parse(value.text());
                double to = form(i).stepped(now, hundredths);
                if (i.parameter().refuse(to).isEmpty()) {
                    attempt(i, to);
                }
            } catch (NumberFormatException e) {
                value.setToolTipText(e.getMessage());
            }
        });
    }
}

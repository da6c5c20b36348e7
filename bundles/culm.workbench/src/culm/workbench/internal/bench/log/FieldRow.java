package culm.workbench.internal.bench.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

import culm.blank.rules.Severity;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.LogEntry;
import culm.model.Quantity;
import culm.model.text.Numbers;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.bench.DesignChoice;
import culm.workbench.internal.form.FieldLabel;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.NumberField;

/** One field of a blank: its words and what it is written with. */
final class FieldRow {
    private static final int BRIEF = 100;
    private static final int WORDS = 150;
    private final LogField field;
    private final LogForm form;
    private final List<LinkText> choices = new ArrayList<>();
    private final List<Object> values = new ArrayList<>();
    private NumberField text;
    private DesignChoice design;
    private final FieldLabel label;
    private String refused = "";
    private Optional<String> doubt = Optional.empty();

    FieldRow(Composite parent, LogField field, LogForm form, Supplier<List<String>> used) {
        this.field = field;
        this.form = form;
        Workshop workshop = form.workshop();
        label = new FieldLabel(parent, workshop.look(), field.words(), WORDS);
        Control control = control(parent, workshop, used);
        boolean brief = text != null && field.kind() != LogField.Kind.WORDS;
        GridData data = new GridData(brief ? SWT.BEGINNING : SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = BRIEF;
        control.setLayoutData(data);
    }

    private Control control(Composite parent, Workshop workshop, Supplier<List<String>> used) {
        switch (field.kind()) {
            case CHOICE -> {
                for (EEnumLiteral literal : ((EEnum) field.feature().getEType()).getELiterals()) {
                    values.add(literal.getInstance());
                }
                return links(parent, workshop, values.stream().map(v -> ((Enumerator) v).getLiteral()).toList());
            }
            case YES_NO -> {
                values.addAll(List.of(true, false));
                return links(parent, workshop, List.of("yes", "no"));
            }
            case DESIGN -> {
                design = new DesignChoice(parent, workshop, form.session().studio(), form.session().file(), address -> entered(form.edits().set(entry(), field, address)));
                return design.control();
            }
            default -> {
                return field(parent, workshop, used);
            }
        }
    }

    private NumberField field(Composite parent, Workshop workshop, Supplier<List<String>> used) {
        text = new NumberField(parent, workshop.look());
        text.control().setData("culm.path", field.feature().getName());
        if (field.kind() == LogField.Kind.WORDS || field.kind() == LogField.Kind.DATE) {
            text.forWords();
        }
        text.onEnter(typed -> entered(form.edits().type(entry(), field, typed, lengths())));
        text.onStep(hundredths -> {
            if (field.kind() == LogField.Kind.WORDS) {
                offer(used.get());
            } else if (field.kind() != LogField.Kind.DATE) {
                step(hundredths);
            }
        });
        text.control().addListener(SWT.Traverse, e -> {
            if (!refused.isEmpty() && text.text().equals(words(now()))) {
                entered(Optional.empty()); // typed back as it was, or given back
            }
            if (e.detail == SWT.TRAVERSE_RETURN && refused.isEmpty()) {
                form.next(this);
            }
        });
        return text;
    }

    private Composite links(Composite parent, Workshop workshop, List<String> words) {
        Composite row = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(words.size(), false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 2;
        row.setLayout(layout);
        workshop.look().dress(row, Role.PAPER, Role.INK);
        for (int i = 0; i < words.size(); i++) {
            int number = i;
            LinkText link = new LinkText(row, workshop.look(), words.get(i), Size.BODY);
            link.setToolTipText(field.help());
            link.setData("culm.path", field.feature().getName() + "." + words.get(i));
            link.onClick(() -> entered(form.edits().set(entry(), field, values.get(number).equals(now()) ? null : values.get(number))));
            choices.add(link);
        }
        return row;
    }

    private String help() {
        return field.help() + (field.kind() == LogField.Kind.WORDS ? " Arrow down: what was written before." : "");
    }

    private LogEntry entry() {
        return form.entry().orElseThrow();
    }

    private Object now() {
        return form.entry().filter(e -> e.eIsSet(field.feature())).map(e -> e.eGet(field.feature())).orElse(null);
    }

    private NumberForm lengths() {
        return new NumberForm(culm.geometry.profile.Quantity.LENGTH, form.workshop().units().now(), 1);
    }

    private boolean entered(Optional<String> wrong) {
        refused = wrong.orElse("");
        show();
        form.told();
        return wrong.isEmpty();
    }

    /** An arrow key: half a turn, or as far as lengths go; with Shift the tenth of it. */
    private void step(int hundredths) {
        if (now() instanceof Quantity quantity && quantity.isSetValue()) {
            double step = field.kind() == LogField.Kind.TURNS ? hundredths / 20.0 : lengths().step(hundredths);
            double to = Math.rint((quantity.getValue() + step) * 1e6) / 1e6;
            entered(form.edits().type(entry(), field, Numbers.format(to) + (field.kind() == LogField.Kind.LENGTH ? " mm" : ""), lengths()));
        }
    }

    private void offer(List<String> used) {
        if (used.isEmpty()) {
            return;
        }
        Menu menu = new Menu(text.control());
        for (String each : used) {
            MenuItem item = new MenuItem(menu, SWT.PUSH);
            item.setText(each.replace("&", "&&"));
            item.addListener(SWT.Selection, e -> entered(form.edits().type(entry(), field, each, lengths())));
        }
        menu.addListener(SWT.Hide, e -> menu.getDisplay().asyncExec(menu::dispose));
        menu.setLocation(text.toDisplay(0, text.getSize().y));
        menu.setVisible(true);
    }

    /** Lets it be written, or not. @param now whether there is a blank to write it of */
    void enable(boolean there) {
        boolean now = there && form.session().readOnly().isEmpty();
        if (text != null) {
            text.setEnabled(there);
            text.lock(!now);
        }
        if (design != null) {
            design.control().setEnabled(now);
        }
        choices.forEach(c -> c.setEnabled(now));
    }

    /** Shows the blank as it is now. */
    void show() {
        Object now = now();
        doubt = form.entry().flatMap(e -> form.edits().doubt(e, field, form.workshop().units().now()));
        label.sign(refused.isEmpty() ? doubt.map(d -> Severity.WARNING) : Optional.of(Severity.ERROR));
        String tip = refused.isEmpty() ? doubt.orElse(help()) : refused;
        label.setToolTipText(tip);
        if (text != null) {
            text.setToolTipText(tip);
            text.control().setToolTipText(tip);
            text.show(words(now), NumberField.Origin.MEASURED, !refused.isEmpty() || doubt.isPresent());
        }
        if (design != null) {
            design.show((String) now);
        }
        for (int i = 0; i < choices.size(); i++) {
            choices.get(i).chosen(values.get(i).equals(now));
        }
        if (!choices.isEmpty()) {
            choices.get(0).getParent().layout();
        }
    }

    private String words(Object now) {
        if (now == null) {
            return "";
        }
        if (now instanceof Quantity quantity) {
            if (!quantity.isSetValue()) {
                return "";
            }
            return field.kind() == LogField.Kind.LENGTH ? lengths().text(quantity.getValue()) : Numbers.format(quantity.getValue()).replace('-', '\u2212');
        }
        return now instanceof LocalDate day ? day.toString() : now.toString();
    }

    /** Another blank is shown: what was typed and not taken was meant for the one before. */
    void another() {
        refused = "";
        if (text != null) {
            text.giveBackQuietly();
        }
    }

    /** Something was changed: what was refused before is over, unless it is still being typed. */
    void changed() {
        if (text == null || !text.control().isFocusControl()) {
            refused = "";
        }
        show();
    }

    /** {@return why what was typed was not taken; empty when it was} */
    String refused() {
        return refused;
    }

    /** {@return what is doubtful in it as it stands; empty when nothing is} */
    Optional<String> doubt() {
        return doubt;
    }

    /** Takes over what is being typed. */
    void settle() {
        if (text != null) {
            text.settle();
        }
    }

    /** Puts the focus there. @return whether it can be typed into */
    boolean focus() {
        return text != null && text.setFocus();
    }

    /** {@return the field} */
    LogField field() {
        return field;
    }

}

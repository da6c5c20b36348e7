package culm.workbench.internal.assistant;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import culm.model.studio.FileKind;
import culm.model.studio.StudioEntry;
import culm.workbench.internal.app.Workshop;

/** Asks for a name and where to start from. */
final class StartPage extends WizardPage {
    /** Where a new design starts from. */
    enum From {
        /** A blank that works. */
        BLANK,
        /** Parts of the studio. */
        PARTS,
        /** A caliper and a mandrel. */
        CALIPER
    }

    private final List<StudioEntry> designs;
    private final Optional<Path> opened;
    private Text name;
    private Button blank;
    private Button parts;
    private Combo which;
    private Button turns;
    private boolean named;

    StartPage(Workshop workshop, Optional<Path> opened) {
        super("start");
        this.opened = opened;
        setTitle("New design");
        setDescription("What to start from.");
        designs = workshop.studio().index().map(i -> i.of(FileKind.DESIGN).stream().filter(d -> d.problem().isEmpty()).toList()).orElse(List.of());
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayout rows = new GridLayout();
        rows.marginWidth = 0;
        rows.marginHeight = 0;
        rows.verticalSpacing = 0;
        page.setLayout(rows);
        // Each has its own, since the Tab key comes to a group's round buttons before all else in it.
        Composite first = area(page);
        new Label(first, SWT.NONE).setText("name");
        name = new Text(first, SWT.BORDER);
        name.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        name.setData("culm.ask", "name");
        name.addListener(SWT.Modify, e -> check());
        Composite area = area(page);
        blank = radio(area, "a blank that works");
        which = new Combo(area, SWT.READ_ONLY);
        GridData indented = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        indented.horizontalIndent = 24;
        which.setLayoutData(indented);
        which.setItems(designs.stream().map(StudioEntry::title).toArray(String[]::new));
        which.select(Math.max(0, opened.map(designs.stream().map(StudioEntry::file).toList()::indexOf).orElse(0)));
        turns = new Button(area, SWT.CHECK);
        turns.setText("then tell how many turns were left on it");
        GridData below = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
        below.horizontalIndent = 24;
        turns.setLayoutData(below);
        parts = radio(area, "parts of the studio");
        Button caliper = radio(area, "a caliper and a mandrel alone");
        (designs.isEmpty() ? caliper : blank).setSelection(true);
        blank.setEnabled(!designs.isEmpty());
        setControl(page);
        check();
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            name.setFocus();
        }
    }

    private static Composite area(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayout layout = new GridLayout(2, false);
        layout.marginHeight = 4;
        layout.verticalSpacing = 8;
        area.setLayout(layout);
        area.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        return area;
    }

    private Button radio(Composite area, String words) {
        Button button = new Button(area, SWT.RADIO);
        button.setText(words);
        button.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1));
        button.addListener(SWT.Selection, e -> check());
        return button;
    }

    private void check() {
        which.setEnabled(from() == From.BLANK);
        turns.setEnabled(from() == From.BLANK);
        named |= !name.getText().isBlank();
        setErrorMessage(named && name.getText().isBlank() ? "A name is needed." : null);
        setPageComplete(!name.getText().isBlank());
        getContainer().updateButtons();
    }

    String name() {
        return name.getText().strip();
    }

    From from() {
        return blank.getSelection() ? From.BLANK : parts.getSelection() ? From.PARTS : From.CALIPER;
    }

    StudioEntry chosen() {
        return designs.get(which.getSelectionIndex());
    }

    boolean tellTurns() {
        return from() == From.BLANK && turns.getSelection();
    }
}

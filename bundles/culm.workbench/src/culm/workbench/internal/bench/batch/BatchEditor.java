package culm.workbench.internal.bench.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.bench.batch.BatchModel;
import culm.bench.batch.Dimension;
import culm.bench.batch.StapleBatch;
import culm.blank.Inputs;
import culm.design.DesignedBlank;
import culm.figures.Role;
import culm.figures.Size;
import culm.model.Batch;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.bench.BenchEditor;
import culm.workbench.internal.bench.BenchHeader;
import culm.workbench.internal.bench.DesignChoice;
import culm.workbench.internal.bench.grid.Grid;
import culm.workbench.internal.bench.grid.GridColumn;
import culm.workbench.internal.editor.Recompute;

/** The editor for a batch of measured staples: the table, and beside it the settings it comes to. */
public final class BatchEditor extends BenchEditor<Batch> {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.batchEditor";
    private static final String LOOK = "This batch can only be looked at.";
    private static final String HINT = "Type a value, Enter, the next one. Ctrl+Delete takes a row away.";
    private BenchHeader header;
    private BatchEdits edits;
    private BatchRows rows;
    private BatchSetup setup;
    private Grid grid;
    private Label said;
    private PlanPane pane;
    private Recompute<BatchShown> recompute;
    private BatchShown shown = BatchShown.NOTHING;
    private double below = 0.5;

    /** An editor. */
    public BatchEditor() {
        super(Batch.class, "batch");
    }

    @Override
    protected void fill(Composite all) {
        edits = new BatchEdits(session());
        rows = new BatchRows(edits, workshop().units());
        recompute = recompute(this::publish);
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 10;
        layout.verticalSpacing = 2;
        all.setLayout(layout);
        workshop().look().dress(all, Role.PAPER, Role.INK);
        header = new BenchHeader(all, workshop().look(), List.of("Bench card…", "Read a table…", "Write a table…"), this::header);
        header.setLayoutData(across());
        guards(all);
        setup = new BatchSetup(all, session(), edits, rows, this::showTable);
        setup.setLayoutData(across());
        setup.onSay(this::say);
        grid = new Grid(all, workshop().look(), rows);
        GridData left = new GridData(SWT.FILL, SWT.FILL, true, true);
        left.horizontalIndent = 14;
        left.widthHint = 620;
        grid.setLayoutData(left);
        grid.onSay(this::say);
        pane = new PlanPane(all, workshop().look(), workshop().units());
        GridData right = new GridData(SWT.FILL, SWT.FILL, true, true, 1, 2);
        right.widthHint = 360;
        pane.setLayoutData(right);
        if (session().document().getStaples().isEmpty()) {
            grid.begin(rows.column(Dimension.LENGTH));
        }
        pane.onCard(number -> new BatchActions(this).card(Optional.of(number)));
        pane.onLook(d -> grid.go(rows.row(d.staple()), rows.column(d.dimension())), a -> grid.go(rows.row(a.staple()), 0));
        said = new Label(all, SWT.WRAP);
        said.setFont(workshop().look().font(Size.SMALL, SWT.NORMAL));
        GridData under = new GridData(SWT.FILL, SWT.CENTER, true, false);
        under.horizontalIndent = 14;
        under.widthHint = 400;
        said.setLayoutData(under);
        workshop().look().onChange(said, () -> dress(said.getText()));
        say("");
        workshop().units().onChange(all, this::rewrite);
    }

    private static GridData across() {
        return new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1);
    }

    private void header(int number) {
        BatchActions actions = new BatchActions(this);
        switch (number) {
            case 0 -> actions.card(Optional.empty());
            case 1 -> actions.readTable();
            default -> actions.writeTable();
        }
    }

    /** Says something below the table; empty for how it is filled. */
    void say(String sentence) {
        String text = sentence.isEmpty() ? hint() : sentence;
        said.setText(text);
        said.setToolTipText(text);
        dress(text);
        said.getParent().layout();
    }

    private String hint() {
        return session().readOnly().isPresent() ? LOOK : HINT;
    }

    private void dress(String text) {
        said.setBackground(workshop().look().colour(Role.PAPER));
        said.setForeground(workshop().look().colour(text.equals(hint()) ? Role.QUIET : Role.INK));
    }

    @Override
    protected void show() {
        Optional<DesignedBlank> design = Optional.empty();
        String why = "Choose the design these staples are meant for; then the settings stand beside the table.";
        Optional<Path> file = DesignChoice.file(session().file(), session().document().getDesign());
        if (file.isPresent()) {
            try {
                design = Optional.of(workshop().bridge().read(file.get()));
            } catch (FileProblemException e) {
                why = e.problem().message();
            }
        }
        below = design.map(d -> Math.max(0, d.blank().number(Inputs.STAPLE_LENGTH) - d.blank().number(Inputs.WRAP_TOP))).orElse(below);
        showTable();
        if (shown == BatchShown.NOTHING) {
            header.show(session().name(), "splitting the batch…", Optional.empty());
        }
        StapleBatch batch = BatchModel.read(session().document(), below);
        Optional<DesignedBlank> forDesign = design;
        String reason = why;
        recompute.ask(() -> BatchShown.of(batch, forDesign, reason));
    }

    private void showTable() {
        rows.fit();
        setup.show(below);
        grid.show();
    }

    private void publish(BatchShown now) {
        if (grid.isDisposed()) {
            return;
        }
        shown = now;
        rows.result(now);
        showPlan();
        grid.show();
    }

    private void showPlan() {
        header.show(session().name(), shown.sentence(workshop().units().now().drawn()), shown.sign());
        pane.show(shown);
    }

    /** Another unit was chosen. */
    private void rewrite() {
        showTable();
        if (shown != BatchShown.NOTHING) {
            showPlan();
        }
    }

    @Override
    protected void settle() {
        grid.take();
    }

    @Override
    public void setFocus() {
        focus(grid::setFocus);
    }

    /** {@return what comes of it now} */
    BatchShown shown() {
        return shown;
    }

    BatchEdits edits() {
        return edits;
    }

    /** {@return whether what is shown will still change} */
    public boolean pending() {
        return recompute.pending();
    }

    /** {@return the table} */
    public Grid grid() {
        return grid;
    }

    /** {@return the heads of the table's columns} */
    public List<String> heads() {
        return rows.columns().stream().map(culm.workbench.internal.bench.grid.GridColumn::head).toList();
    }

    /** {@return the units below the heads, empty where there is none} */
    public List<String> units() {
        return rows.columns().stream().map(GridColumn::unit).toList();
    }

    /** {@return the sentence under the name} */
    public String sentence() {
        return header.sentence();
    }

    /** {@return what is said of the settings, of those set aside and of what is in doubt, line by line} */
    public List<String> notes() {
        return pane.notes().notes().stream().map(culm.workbench.internal.bench.page.Note::text).toList();
    }
}

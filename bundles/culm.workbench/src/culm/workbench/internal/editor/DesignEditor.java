package culm.workbench.internal.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.swt.widgets.Composite;

import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.app.FileInput;
import culm.workbench.internal.changes.ChangesPage;
import culm.workbench.internal.explore.ExplorePage;
import culm.workbench.internal.export.ExportDialog;
import culm.workbench.internal.export.FigureClipboard;
import culm.workbench.internal.export.FigurePrinter;
import culm.workbench.internal.fit.FitDialog;
import culm.workbench.internal.form.ParameterForm;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.limits.LimitsDialog;
import culm.workbench.internal.plugins.WriteDialog;
import culm.workbench.internal.sharing.Attempt;
import culm.workbench.internal.sharing.FileEditor;
import culm.workbench.internal.widgets.FootLine;
import culm.workbench.internal.sharing.GuardBars;

/** The editor for a design. */
public final class DesignEditor extends FileEditor<DesignSession> {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.designEditor";

    /** What stands beside the form. */
    public enum Page {
        /** The reed with its findings. */
        REED("Reed"),
        /** More graphs. */
        GRAPHS("Graphs"),
        /** What changes against a blank that works. */
        CHANGES("What changes if"),
        /** Variants, what matters, how many will work, the best choice. */
        EXPLORE("Explore");

        private final String words;

        Page(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private final PointerHeight pointer = new PointerHeight();
    private EditorBody body;
    private FootLine foot;
    private Optional<Finding> told = Optional.empty();

    /** An editor. */
    public DesignEditor() {
        super("design");
    }

    /** The design of the last time: the window stands before it. */
    @Override
    protected boolean waits() {
        return getEditorInput() instanceof FileInput input && input.remembered();
    }

    @Override
    protected DesignSession read(Path file) throws FileProblemException {
        return new DesignSession(workshop(), file);
    }

    @Override
    protected void build(Composite parent) {
        body = new EditorBody(parent, workshop(), session(), pointer, this::refused);
        foot = new FootLine(body.reed(), getEditorSite().getActionBars().getStatusLineManager(), () -> told = Optional.empty());
        body.reed().findings().onApply(this::apply);
        body.reed().findings().onSelect(this::select);
    }

    @Override
    protected boolean isGone() {
        return body.isDisposed();
    }

    @Override
    protected void show() {
        body.refresh(getPartName());
        if (told.isPresent()) {
            tell();
        }
    }

    private EditorBody body() {
        makeNow();
        return body;
    }

    private void select(Finding finding) {
        told = Optional.of(finding);
        tell();
        body.reed().reed().mark(finding.path());
    }

    /** The finding in the status line, until the next thing is done and as long as it is one of this design. */
    private void tell() {
        told = told.filter(workshop().units().now().told(session().shown().findings())::contains);
        foot.say(told.map(f -> f.severity().word() + ": " + f.text()));
    }

    private void apply(Fix fix) {
        Attempt.at(() -> session().change(edits -> edits.apply(fix), ""), this::refused);
    }

    @Override
    public void setFocus() {
        if (isMade()) {
            body.focus();
            tell(); // another design's may stand there
        } else {
            focusPlace();
        }
    }

    /** {@return the form} */
    public ParameterForm form() {
        return body().form();
    }

    @Override
    public GuardBars guards() {
        return body().guards();
    }

    /** {@return the page of what changes if} */
    public ChangesPage changes() {
        return body().changes();
    }

    /** {@return the page of exploring} */
    public ExplorePage explore() {
        return body().explore();
    }

    /** {@return the height the drawings point at} */
    public PointerHeight pointer() {
        return pointer;
    }

    /** Shows a page. */
    public void showPage(Page page) {
        body().show(page);
    }

    /** {@return the page that is shown} */
    public Page page() {
        return body().page();
    }

    /** Puts the focus onto the marks of the ruler. */
    public void focusMarks() {
        body().show(Page.REED);
        body().reed().reed().setFocus();
    }

    /** Chooses the next finding. */
    public void nextFinding() {
        body().show(Page.REED);
        body().reed().findings().next();
    }

    /** Does what the chosen finding proposes, or the first one that has a proposal. */
    public void applyFix() {
        if (!body().reed().findings().applySelected()) {
            session().shown().findings().stream().flatMap(f -> f.fix().stream()).findFirst().ifPresent(this::apply);
        }
    }

    /** Keeps the section where it is, or lets it follow the pointer. */
    public void togglePin() {
        pointer.pin(pointer.isPinned() ? OptionalDouble.empty() : pointer.height());
    }

    /** Shows the reed larger or smaller; 0 shows the whole. */
    public void zoom(double factor) {
        body().show(Page.REED);
        body().reed().reed().zoom(factor, pointer.height().orElseGet(() -> session().shown().assessment().map(a -> a.sidesCloseAt().orElse(0)).orElse(0.0)));
    }

    /** {@return every drawing of this editor, the one with the focus first} */
    public List<Figure> figures() {
        return body().figures();
    }

    /** {@return the verdict's sentence as it stands there} */
    public String verdict() {
        return body().header().verdict().sentence();
    }

    /** {@return what the findings say, their reasons and remedies too, as they stand there} */
    public List<String> findings() {
        return body().reed().findings().words();
    }

    /** {@return the computed numbers beside the reed, as they stand there} */
    public List<String> numbers() {
        return body().reed().numbers().lines().stream().map(l -> l.words() + " " + l.value()).toList();
    }

    /** Copies the drawing with the focus as a picture. */
    public void copyPicture() {
        new FigureClipboard(workshop().look()).picture(figures().get(0));
    }

    /** Copies the numbers of the drawing with the focus as a table. */
    public void copyTable() {
        new FigureClipboard(workshop().look()).table(figures().get(0));
    }

    /** Asks which drawing to write where, and writes it. */
    public void export() {
        new ExportDialog(getSite().getShell(), workshop(), getPartName(), figures(), session()).open();
    }

    /** Asks as what to write the numbers and findings, and writes them. */
    public void writeAs() {
        new WriteDialog(getSite().getShell(), workshop(), getPartName(), session().shown()).open();
    }

    /** Prints a drawing on paper, true to scale. */
    public void print() {
        new FigurePrinter(getSite().getShell(), workshop().look()).print(getPartName(), figures().get(0));
    }

    /** Starts from a blank that works. */
    public void fit() {
        new FitDialog(getSite().getShell(), workshop(), session()).open();
    }

    /** Opens my limits. */
    public void limits() {
        new LimitsDialog(getSite().getShell(), workshop(), session().studio(), session()::refresh).open();
    }
}

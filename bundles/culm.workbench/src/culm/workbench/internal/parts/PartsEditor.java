package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.swt.widgets.Composite;

import culm.model.Part;
import culm.model.problem.FileProblemException;
import culm.model.studio.StudioIndex;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.export.FigureClipboard;
import culm.workbench.internal.sharing.FileEditor;
import culm.workbench.internal.sharing.GuardBars;

/** The editor for a file of parts. */
public final class PartsEditor extends FileEditor<PartsSession> {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.partsEditor";
    private PartsBody body;

    /** An editor. */
    public PartsEditor() {
        super("parts");
    }

    @Override
    protected PartsSession read(Path file) throws FileProblemException {
        return new PartsSession(workshop(), file);
    }

    @Override
    protected void build(Composite parent) {
        body = new PartsBody(parent, session(), this::refused, file -> new Opening(getSite().getPage()).open(file));
        Runnable end = workshop().studio().onChange(files -> changed());
        parent.addDisposeListener(e -> end.run());
    }

    @Override
    protected boolean isGone() {
        return body.isDisposed();
    }

    @Override
    protected void show() {
        body.show(getPartName());
    }

    /** {@return why parts of a file cannot be computed here; empty when they can} */
    static String missing(PartsSession session) {
        return session.document().getParts().stream().map(p -> PartPlan.missing(p, session.workshop().bridge().profiles())).filter(s -> !s.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** {@return what is in the studio now} */
    static StudioIndex index(PartsSession session) {
        return session.workshop().studio().of(session.studio());
    }

    /** Chooses a part. @param id its id */
    public void choose(String id) {
        session().part(id).ifPresent(body::choose);
    }

    /** {@return the part that is chosen, if any} */
    public Optional<Part> chosen() {
        return body.chosen();
    }

    /** {@return the parts that are listed} */
    public List<Part> parts() {
        return List.copyOf(session().document().getParts());
    }

    /** Copies the drawing of the chosen part as a picture. */
    public void copyPicture() {
        new FigureClipboard(workshop().look()).picture(body.drawing());
    }

    /** Copies the numbers of that drawing as a table. */
    public void copyTable() {
        new FigureClipboard(workshop().look()).table(body.drawing());
    }

    @Override
    public GuardBars guards() {
        return body.guards();
    }

    @Override
    public void setFocus() {
        body.focusList();
    }
}

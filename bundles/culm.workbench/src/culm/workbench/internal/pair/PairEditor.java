package culm.workbench.internal.pair;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.PartInitException;

import culm.blank.rules.Verdict;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.app.Opening;
import culm.workbench.internal.editor.Recompute;
import culm.workbench.internal.graphs.OverlayCanvas;
import culm.workbench.internal.sharing.StudioEditor;
import culm.workbench.internal.widgets.Focus;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.ScrollPage;
import culm.workbench.internal.widgets.SignLine;

/** Two designs as they are saved: drawn over each other, their results side by side, and the numbers in which they differ. */
public final class PairEditor extends StudioEditor {
    /** The editor's id, as in plugin.xml. */
    public static final String ID = "culm.workbench.pairEditor";
    private PairInput input;
    private Recompute<PairShown> recompute;
    private PairShown shown = PairShown.NOTHING;
    private ScrollPage scroll;
    private OverlayCanvas canvas;
    private PairTable table;
    private Label problem;
    private final SignLine[] verdicts = new SignLine[2];
    private final LinkText[] names = new LinkText[2];

    /** An editor. */
    public PairEditor() {
        super("pair");
    }

    @Override
    protected void open(IEditorInput given) throws PartInitException {
        if (!(given instanceof PairInput pair)) {
            throw new PartInitException("These are no two designs: " + given.getName());
        }
        input = pair;
        recompute = new Recompute<>(workshop().worker(), workshop().look()::later, this::publish);
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 18;
        layout.marginHeight = 10;
        layout.verticalSpacing = 4;
        scroll = new ScrollPage(parent, workshop().look());
        Composite page = new Composite(scroll.content(), SWT.NONE);
        page.setLayout(layout);
        workshop().look().dress(page, Role.PAPER, Role.INK);
        for (int i = 0; i < 2; i++) {
            boolean left = i == 0;
            names[i] = new LinkText(page, workshop().look(), "", Size.HEADING);
            names[i].onClick(() -> new Opening(getSite().getPage()).open(left ? input.first() : input.second()));
            verdicts[i] = new SignLine(page, workshop().look());
            verdicts[i].setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        }
        problem = new Label(page, SWT.WRAP);
        problem.setFont(workshop().look().font(Size.BODY, SWT.NORMAL));
        workshop().look().dress(problem, Role.PAPER, Role.DOES_NOT);
        problem.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        canvas = new OverlayCanvas(page, workshop().look(), workshop().units());
        canvas.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        table = new PairTable(page, workshop().look(), workshop().units());
        table.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false, 2, 1));
        Runnable end = workshop().studio().onChange(files -> ask());
        page.addListener(SWT.Dispose, e -> end.run());
        workshop().units().onChange(page, () -> publish(shown));
        ask();
    }

    private void ask() {
        recompute.ask(() -> PairShown.of(input, workshop().bridge(), workshop().rules()));
    }

    private void publish(PairShown now) {
        if (scroll.isDisposed()) {
            return;
        }
        shown = now;
        problem.setText(now.problem());
        for (int i = 0; i < 2; i++) {
            names[i].say(now.name(i == 0));
            verdicts[i].show(now.verdicts().isEmpty() ? new Verdict(Verdict.Sign.MAY_FIT, "") : workshop().units().now().told(now.verdicts().get(i)));
        }
        if (now.comparison().isPresent()) {
            setPartName(now.name(true) + " / " + now.name(false));
        }
        canvas.show(now.two());
        table.show(now);
        scroll.fit();
    }

    /** {@return whether what is shown will still change} */
    public boolean pending() {
        return recompute.pending();
    }

    /** {@return the lines of the table: words, left, right, change} */
    public java.util.List<String> lines() {
        return table.rows().stream().map(r -> r.words() + "|" + r.left() + "|" + r.right() + "|" + r.change()).toList();
    }

    /** {@return the verdicts of both} */
    public java.util.List<Verdict> verdicts() {
        return shown.verdicts();
    }

    @Override
    public void setFocus() {
        Focus.into(scroll, names[0]::setFocus);
    }
}

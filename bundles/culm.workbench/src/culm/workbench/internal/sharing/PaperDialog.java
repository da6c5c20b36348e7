package culm.workbench.internal.sharing;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** A dialog on the window's own paper: a heading, a sentence, and what it is about. */
public abstract class PaperDialog extends Dialog {
    private static final int EDGE = 1;
    private final Look look;
    private final String title;
    private final Point size;
    private Label sentence;

    /**
     * A dialog.
     *
     * @param shell over which it opens
     * @param look colours and fonts
     * @param title its title
     * @param size how large it opens
     */
    protected PaperDialog(Shell shell, Look look, String title, Point size) {
        super(shell);
        this.look = look;
        this.title = title;
        this.size = size;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected Point getInitialSize() {
        return size;
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        look.dress(contents, Role.PAPER, Role.INK);
        look.dress(getButtonBar(), Role.PAPER, Role.INK);
        edge((GridLayout) parent.getLayout(), parent);
        return contents;
    }

    /** It has the ground of the page behind it: without an edge it would not be told from that. */
    private void edge(GridLayout around, Composite shell) {
        around.marginWidth = EDGE;
        around.marginHeight = EDGE;
        look.dress(shell, Role.RULE, Role.INK);
    }

    @Override
    protected final Control createDialogArea(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        GridLayout layout = new GridLayout();
        layout.marginWidth = 18;
        layout.marginHeight = 12;
        layout.verticalSpacing = 8;
        area.setLayout(layout);
        look.dress(area, Role.PAPER, Role.INK);
        Label heading = label(area, title, Size.TITLE, SWT.BOLD, Role.INK);
        heading.setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
        sentence = label(area, "", Size.BODY, SWT.NORMAL, Role.INK);
        fill(area);
        return area;
    }

    /** Puts what it is about below the heading, into a grid of one column. */
    protected abstract void fill(Composite area);

    /** Says something under the heading. */
    protected final void say(String text, Role ink) {
        if (!text.equals(sentence.getText())) {
            sentence.setText(text);
            sentence.setForeground(look.colour(ink));
            sentence.getParent().layout();
        }
    }

    /** A line of text that wraps. */
    protected final Label label(Composite parent, String text, Size letters, int style, Role ink) {
        Label label = new Label(parent, SWT.WRAP);
        label.setText(text);
        label.setFont(look.font(letters, style));
        look.dress(label, Role.PAPER, ink);
        GridData wide = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
        wide.widthHint = size.x - 60;
        label.setLayoutData(wide);
        return label;
    }

    /** {@return colours and fonts} */
    protected final Look look() {
        return look;
    }
}

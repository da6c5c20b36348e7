package culm.workbench.internal.sharing;

import java.util.List;
import java.util.Map;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import culm.design.compare.Choice;
import culm.design.compare.ThreeWay;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.widgets.LinkText;

/** Your version and theirs, value by value; where both changed something one of them is chosen. */
public final class CompareDialog extends PaperDialog {
    private static final Point SIZE = new Point(1120, 620);
    private final List<Compared> files;
    private ChoiceGrid grid;
    private Label detail;
    private Map<String, Map<String, Choice>> chosen = Map.of();

    /**
     * The dialog for some files.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param files what differs in each
     */
    public CompareDialog(Shell shell, Workshop workshop, List<Compared> files) {
        super(shell, workshop.look(), "Yours and theirs", SIZE);
        this.files = files.stream().map(f -> f.in(workshop.units().now().drawn())).toList();
    }

    /** The dialog for one file. */
    static CompareDialog ofFile(Shell shell, Workshop workshop, String file, ThreeWay three) {
        return new CompareDialog(shell, workshop, List.of(Compared.of(file, three)));
    }

    @Override
    protected void fill(Composite area) {
        grid = new ChoiceGrid(area, look(), files);
        grid.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        detail = label(area, "", Size.SMALL, SWT.NORMAL, Role.QUIET);
        GridData three = (GridData) detail.getLayoutData();
        three.heightHint = 3 * (int) Math.ceil(look().measure().line(Size.SMALL) + 1);
        Composite links = new Composite(area, SWT.NONE);
        GridLayout layout = new GridLayout(3, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        links.setLayout(layout);
        look().dress(links, Role.PAPER, Role.INK);
        link(links, "all yours", Choice.YOURS);
        link(links, "all theirs", Choice.THEIRS);
        link(links, "all as before", Choice.BEFORE);
        grid.onChange(this::changed);
        changed();
        grid.setFocus();
    }

    private void link(Composite parent, String words, Choice choice) {
        LinkText link = new LinkText(parent, look(), words, Size.BODY);
        link.onClick(() -> grid.chooseAllConflicts(choice));
    }

    private void changed() {
        int open = grid.open();
        int conflicts = grid.conflicts();
        say(conflicts == 0 ? "Nobody changed what the other did; both are kept. Anything can still be chosen otherwise."
                : open == 0 ? "Everything that both changed is chosen."
                : (conflicts == 1 ? "The value that both changed is" : open + " of " + conflicts + " values that both changed are") + " still to be chosen: click yours, theirs or before, or use the arrow keys.",
                open == 0 ? Role.INK : Role.DOES_NOT);
        detail.setText(grid.detail());
        if (getButton(IDialogConstants.OK_ID) != null) {
            getButton(IDialogConstants.OK_ID).setEnabled(open == 0);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Put together", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        changed();
    }

    @Override
    protected void okPressed() {
        chosen = grid.chosen();
        super.okPressed();
    }

    /** {@return what was chosen, by file and path} */
    public Map<String, Map<String, Choice>> choices() {
        return chosen;
    }

    /** {@return what was chosen in one file, by path} */
    Map<String, Choice> choices(String file) {
        return chosen.getOrDefault(file, Map.of());
    }
}

package culm.workbench.internal.bench;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Shell;

import culm.bench.csv.CsvStyle;

/** Asks which table to write, and with point or comma. */
public final class TableDialog extends Dialog {
    private final List<String> tables;
    private int table;
    private CsvStyle style = CsvStyle.POINT;

    /**
     * The dialog.
     *
     * @param shell over which it opens
     * @param tables what can be written, in words
     */
    public TableDialog(Shell shell, List<String> tables) {
        super(shell);
        this.tables = tables;
    }

    /** What was chosen. @param table its place among those that can be written */
    public record Chosen(int table, CsvStyle style) {
    }

    /** Asks. @return empty when it was left */
    public Optional<Chosen> ask() {
        return open() == OK ? Optional.of(new Chosen(table, style)) : Optional.empty();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Write a table");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        for (int i = 0; i < tables.size() && tables.size() > 1; i++) {
            int number = i;
            radio(area, tables.get(i), i == 0, () -> table = number);
        }
        Group numbers = new Group(area, SWT.NONE);
        numbers.setText("numbers");
        numbers.setLayout(new GridLayout());
        numbers.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        radio(numbers, "47.05, commas between cells", true, () -> style = CsvStyle.POINT);
        radio(numbers, "47,05, semicolons between cells", false, () -> style = CsvStyle.COMMA);
        return area;
    }

    private static void radio(Composite parent, String words, boolean first, Runnable chosen) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(words);
        button.setSelection(first);
        button.addListener(SWT.Selection, e -> {
            if (button.getSelection()) {
                chosen.run();
            }
        });
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Write…", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }
}

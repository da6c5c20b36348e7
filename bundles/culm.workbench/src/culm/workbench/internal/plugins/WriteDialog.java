package culm.workbench.internal.plugins;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

import culm.blank.export.Exporter;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.GeometryException;
import culm.geometry.guard.Supervised;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.Shown;
import culm.workbench.internal.sharing.PaperDialog;

/** Writes a design's numbers and findings through one of the exports that Culm and the plug-ins bring. */
public final class WriteDialog extends PaperDialog {
    private static final Point SIZE = new Point(560, 380);
    private static final Duration LONGEST = Duration.ofSeconds(20);
    private final String name;
    private final Shown shown;
    private final List<Exporter> exporters;
    private Table table;

    /**
     * The dialog for a design.
     *
     * @param shell over which it opens
     * @param workshop what the window works with
     * @param name the design's name
     * @param shown what is shown of it
     */
    public WriteDialog(Shell shell, Workshop workshop, String name, Shown shown) {
        super(shell, workshop.look(), "Write numbers and findings", SIZE);
        this.name = name;
        this.shown = shown;
        this.exporters = List.copyOf(workshop.extensions().exporters().all());
    }

    @Override
    protected void fill(Composite area) {
        say("As what? Plug-ins may bring more.", Role.INK);
        table = new Table(area, SWT.SINGLE | SWT.V_SCROLL | SWT.FULL_SELECTION);
        table.setFont(look().font(Size.BODY, SWT.NORMAL));
        look().dress(table, Role.PAPER, Role.INK);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        for (Exporter exporter : exporters) {
            new TableItem(table, SWT.NONE).setText(exporter.name() + "  (." + exporter.ending() + ")");
        }
        table.select(0);
        table.addListener(SWT.DefaultSelection, e -> okPressed());
        table.setFocus();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, "Write\u2026", true).setEnabled(!exporters.isEmpty() && shown.assessment().isPresent());
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void okPressed() {
        Exporter exporter = exporters.get(Math.max(0, table.getSelectionIndex()));
        FileDialog dialog = new FileDialog(getShell(), SWT.SAVE);
        dialog.setOverwrite(true);
        dialog.setFileName(Ids.of(name, "design", List.of()) + "." + exporter.ending());
        String file = dialog.open();
        if (file != null) {
            write(exporter, Path.of(file));
        }
    }

    /** On a thread of its own, since a plug-in may take its time. */
    private void write(Exporter exporter, Path file) {
        getButton(IDialogConstants.OK_ID).setEnabled(false);
        say("Writing \u2026", Role.QUIET);
        Thread thread = new Thread(() -> {
            String problem = problem(exporter, file);
            if (!look().display().isDisposed()) {
                look().display().asyncExec(() -> written(problem));
            }
        }, "Culm export");
        thread.setDaemon(true);
        thread.start();
    }

    private void written(String problem) {
        if (getShell() == null || getShell().isDisposed()) {
            return;
        }
        if (problem.isEmpty()) {
            close();
        } else {
            say(problem, Role.DOES_NOT);
            getButton(IDialogConstants.OK_ID).setEnabled(true);
        }
    }

    private String problem(Exporter exporter, Path file) {
        try {
            SafeFile.overwrite(file, content(exporter, name, shown));
            return "";
        } catch (FileProblemException e) {
            return e.problem().message();
        } catch (GeometryException | Supervised.Overdue e) {
            return e.getMessage();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "Nothing was written.";
        }
    }

    /**
     * What an exporter makes of a design.
     *
     * @param exporter the exporter
     * @param name the design's name
     * @param shown what is shown of it; it has an assessment
     * @return the bytes
     * @throws Supervised.Overdue when it does not come back; it is left behind
     * @throws InterruptedException when this thread is stopped
     */
    public static byte[] content(Exporter exporter, String name, Shown shown) throws Supervised.Overdue, InterruptedException {
        return Supervised.call(LONGEST, () -> exporter.bytes(name, shown.assessment().orElseThrow(), shown.findings()));
    }
}

package culm.workbench.internal.bench;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import culm.bench.csv.CsvStyle;
import culm.model.files.SafeFile;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;

/** Tables of the bench as files: asks where, reads, writes. */
public final class TableFiles {
    private final Shell shell;

    /**
     * Files of a window.
     *
     * @param shell the window
     */
    public TableFiles(Shell shell) {
        this.shell = shell;
    }

    /** Asks which table to read. @return empty when none was chosen */
    public Optional<Path> toRead() {
        FileDialog dialog = new FileDialog(shell, SWT.OPEN);
        dialog.setText("Read a table");
        dialog.setFilterExtensions(new String[] {"*.csv;*.tsv;*.txt", "*"});
        dialog.setFilterNames(new String[] {"tables (csv, tsv, txt)", "all files"});
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    /**
     * Asks what to write and where, and writes it.
     *
     * @param name what the file is called at first
     * @param tables what can be written, in words
     * @param texts makes each of them
     */
    public void write(String name, List<String> tables, List<Function<CsvStyle, String>> texts) {
        Optional<TableDialog.Chosen> chosen = new TableDialog(shell, tables).ask();
        if (chosen.isEmpty()) {
            return;
        }
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Write a table");
        dialog.setOverwrite(true);
        dialog.setFileName(Ids.of(name, "table", List.of()) + ".csv");
        String file = dialog.open();
        if (file == null) {
            return;
        }
        try {
            SafeFile.overwrite(Path.of(file), texts.get(chosen.get().table()).apply(chosen.get().style()).getBytes(StandardCharsets.UTF_8));
        } catch (FileProblemException e) {
            MessageDialog.openError(shell, "It was not written", e.problem().message());
        }
    }
}

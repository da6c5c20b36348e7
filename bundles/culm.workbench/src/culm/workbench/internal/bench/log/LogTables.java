package culm.workbench.internal.bench.log;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

import culm.bench.csv.CsvFile;
import culm.bench.log.LogCsv;
import culm.bench.log.Tied;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.bench.TableFiles;

/** A log's blanks from and to tables. */
public final class LogTables {
    private final LogEditor editor;
    private final LogEdits edits;

    LogTables(LogEditor editor, LogEdits edits) {
        this.editor = editor;
        this.edits = edits;
    }

    private Shell shell() {
        return editor.getSite().getShell();
    }

    void read() {
        new TableFiles(shell()).toRead().ifPresent(this::read);
    }

    /**
     * Takes the blanks of a table; says which rows were left out.
     *
     * @param file the table
     */
    public void read(Path file) {
        try {
            String name = file.getFileName().toString();
            LogCsv.Result read = LogCsv.read(CsvFile.read(file, name), name);
            int[] counts = edits.take(read.log());
            StringBuilder said = new StringBuilder(counts[0] + (counts[0] == 1 ? " blank was taken." : " blanks were taken."));
            if (counts[1] > 0) {
                said.append(" ").append(counts[1]).append(" have a number that is in the log already; they were left as they are.");
            }
            if (!read.problems().isEmpty()) {
                said.append("\n\nLeft out:");
                read.problems().stream().limit(20).forEach(p -> said.append('\n').append(p.message()));
                if (read.problems().size() > 20) {
                    said.append("\nand ").append(read.problems().size() - 20).append(" more");
                }
            }
            if (read.problems().isEmpty()) {
                MessageDialog.openInformation(shell(), "The table was read", said.toString());
            } else {
                MessageDialog.openWarning(shell(), "Not all of it was read", said.toString());
            }
        } catch (FileProblemException e) {
            MessageDialog.openError(shell(), "That cannot be read", e.problem().message());
        }
    }

    void write(List<Tied> blanks) {
        new TableFiles(shell()).write(editor.session().name(), List.of("the blanks that are shown"), List.of(style -> LogCsv.write(blanks, style)));
    }
}

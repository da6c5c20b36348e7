package culm.workbench.internal.bench.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

import culm.bench.batch.BatchCsv;
import culm.bench.batch.BatchModel;
import culm.bench.batch.PlanCsv;
import culm.bench.batch.StapleBatch;
import culm.bench.csv.CsvFile;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.bench.DesignChoice;
import culm.workbench.internal.bench.TableFiles;
import culm.workbench.internal.bench.paper.CardDialog;

/** What can be done with a whole batch. */
public final class BatchActions {
    private final BatchEditor editor;

    /**
     * Acts on the batch of an editor.
     *
     * @param editor the editor
     */
    public BatchActions(BatchEditor editor) {
        this.editor = editor;
    }

    private Shell shell() {
        return editor.getSite().getShell();
    }

    /** Opens the cards of the batch. @param setting of this setting first, counted from 0; empty for all */
    public void card(Optional<Integer> setting) {
        editor.settle();
        BatchShown shown = editor.shown();
        if (shown.plan().isEmpty() || shown.plan().get().served() == 0) {
            MessageDialog.openInformation(shell(), "No card yet", editor.sentence());
            return;
        }
        DesignChoice.file(editor.session().file(), editor.session().document().getDesign())
                .ifPresent(file -> CardDialog.of(shell(), editor.session().workshop(), file, shown.design().get(), shown.plan(), setting).open());
    }

    /** Asks for a table and takes its staples. */
    public void readTable() {
        new TableFiles(shell()).toRead().ifPresent(this::read);
    }

    /**
     * Takes the staples of a table; says which rows were left out.
     *
     * @param file the table
     */
    public void read(Path file) {
        try {
            StapleBatch before = BatchModel.read(editor.session().document(), 0.5);
            BatchCsv.Result read = BatchCsv.read(CsvFile.read(file, file.getFileName().toString()), file.getFileName().toString(), before);
            boolean whole = before.staples().isEmpty();
            String said = BatchPaste.took(editor.edits(), read, whole);
            editor.say(said);
            if (!read.problems().isEmpty()) {
                MessageDialog.openWarning(shell(), "Not all of it was read", rows(read.problems()));
            }
        } catch (FileProblemException e) {
            MessageDialog.openError(shell(), "That cannot be read", e.problem().message());
        }
    }

    private static String rows(List<FileProblem> problems) {
        StringBuilder text = new StringBuilder("These rows were left out, all others were taken:\n");
        problems.stream().limit(20).forEach(p -> text.append('\n').append(p.message()));
        return problems.size() > 20 ? text + "\nand " + (problems.size() - 20) + " more" : text.toString();
    }

    /** Asks which table to write and where, and writes it. */
    public void writeTable() {
        editor.settle();
        StapleBatch batch = BatchModel.read(editor.session().document(), 0.5);
        TableFiles files = new TableFiles(shell());
        if (editor.shown().plan().isEmpty()) {
            files.write(batch.name(), List.of("the staples as measured"), List.of(style -> BatchCsv.write(batch, style)));
        } else {
            files.write(batch.name(), List.of("the staples as measured", "the settings, one row for each staple"),
                    List.of(style -> BatchCsv.write(batch, style), style -> PlanCsv.write(editor.shown().plan().get(), style)));
        }
    }
}

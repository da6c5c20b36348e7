package culm.bench.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import culm.bench.csv.CsvFile;
import culm.model.Batch;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;

/** A batch from a file, whichever of both forms it has: {@code .batch}, or a table as CSV. */
public final class BatchFile {
    private BatchFile() {
    }

    /**
     * Reads it.
     * @param file         absolute
     * @param shown        its name for messages
     * @param caliper      used where a table does not say
     * @param wrapBelowTop used where the file does not say, mm
     */
    public static BatchCsv.Result read(Path file, String shown, Caliper caliper, double wrapBelowTop) throws FileProblemException {
        if (CsvFile.isTable(file)) {
            String name = file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
            return BatchCsv.read(CsvFile.read(file, shown), shown, new StapleBatch(name, List.of(), caliper, wrapBelowTop));
        }
        Batch batch = new ModelFiles().load(file, shown, Batch.class).document();
        return new BatchCsv.Result(BatchModel.read(batch, wrapBelowTop), List.of());
    }

    /**
     * The design a batch is meant for, as an address that counts from the batch's folder; empty when it names none, as no table does.
     * @param file  absolute
     * @param shown its name for messages
     */
    public static Optional<String> design(Path file, String shown) throws FileProblemException {
        return CsvFile.isTable(file) ? Optional.empty()
                : Optional.ofNullable(new ModelFiles().load(file, shown, Batch.class).document().getDesign()).filter(d -> !d.isBlank());
    }
}

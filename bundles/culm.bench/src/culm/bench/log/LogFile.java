package culm.bench.log;

import java.nio.file.Path;
import java.util.List;

import culm.bench.csv.CsvFile;
import culm.model.ReedLog;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;

/** A reed log from a file, whichever of both forms it has: {@code .log}, or a table as CSV. */
public final class LogFile {
    private LogFile() {
    }

    /** Reads it. @param file absolute; @param shown its name for messages */
    public static LogCsv.Result read(Path file, String shown) throws FileProblemException {
        if (CsvFile.isTable(file)) {
            return LogCsv.read(CsvFile.read(file, shown), shown);
        }
        ReedLog log = new ModelFiles().load(file, shown, ReedLog.class).document();
        return new LogCsv.Result(LogModel.read(log), List.of());
    }
}

package culm.bench.log;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import culm.bench.csv.CsvFile;
import culm.model.ReedLog;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;

/** A reed log from a file, whichever of both forms it has: {@code .log}, or a table as CSV. */
public final class LogFile {
    private LogFile() {
    }

    /** Reads it; a blank that cannot be is left out, one that is in doubt is kept, and both are told. @param file absolute; @param shown its name for messages */
    public static LogCsv.Result read(Path file, String shown) throws FileProblemException {
        if (CsvFile.isTable(file)) {
            LogCsv.Result table = LogCsv.read(CsvFile.read(file, shown), shown);
            return told(table.log(), table.problems(), new LogChecks(shown));
        }
        LogChecks checks = new LogChecks(shown);
        List<Tied> log = checks.possible(LogModel.read(new ModelFiles().load(file, shown, ReedLog.class).document()));
        checks.twice(log);
        return told(log, List.of(), checks);
    }

    private static LogCsv.Result told(List<Tied> log, List<FileProblem> before, LogChecks checks) {
        checks.doubt(log);
        return new LogCsv.Result(log, Stream.concat(before.stream(), checks.problems().stream()).sorted(Comparator.comparingInt(FileProblem::line)).toList());
    }
}

package culm.cli.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import culm.bench.batch.BatchCsv;
import culm.bench.batch.BatchFile;
import culm.bench.batch.Caliper;
import culm.bench.card.CardHead;
import culm.bench.card.DesignHead;
import culm.bench.log.LogCsv;
import culm.bench.log.LogFile;
import culm.cli.CommandException;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.figures.Drawing;
import culm.figures.Palette;
import culm.figures.pdf.PdfWriter;
import culm.model.Document;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblemException;

/** Reads what the bench's commands are given and writes what they make; whatever goes wrong is one sentence. */
final class Files {
    private final Bridge bridge;
    private final Terminal terminal;

    Files(Bridge bridge, Terminal terminal) {
        this.bridge = bridge;
        this.terminal = terminal;
    }

    DesignedBlank design(String file) throws CommandException, FileProblemException {
        return bridge.read(terminal.file(file));
    }

    /** The design that a batch names; its address counts from the batch's own folder. */
    DesignedBlank designOf(String batch) throws CommandException, FileProblemException {
        Path file = terminal.file(batch);
        String named = BatchFile.design(file, batch)
                .orElseThrow(() -> CommandException.usage("--design FILE is missing: " + batch + " does not say which design its staples are meant for"));
        try {
            return bridge.read(file.resolveSibling(named).normalize());
        } catch (InvalidPathException e) {
            throw CommandException.unreadable(batch + ": no file can be called '" + e.getInput() + "', as its design is");
        }
    }

    CardHead head(String file) throws CommandException, FileProblemException {
        return DesignHead.read(terminal.file(file));
    }

    BatchCsv.Result batch(String file, Caliper caliper, double wrapBelowTop) throws CommandException, FileProblemException {
        return BatchFile.read(terminal.file(file), file, caliper, wrapBelowTop);
    }

    LogCsv.Result log(String file) throws CommandException, FileProblemException {
        return LogFile.read(terminal.file(file), file);
    }

    /** Names every row that was left out; whether there were any. */
    boolean told(List<FileProblem> problems) {
        problems.forEach(p -> terminal.err().println(p.message()));
        return !problems.isEmpty();
    }

    void write(String folder, String name, byte[] content) throws CommandException {
        Path file = terminal.file(folder).resolve(name);
        try {
            java.nio.file.Files.createDirectories(file.getParent());
            java.nio.file.Files.write(file, content);
        } catch (IOException e) {
            throw CommandException.unreadable(file + ": it cannot be written (" + e.getClass().getSimpleName() + ")");
        }
        terminal.err().println("wrote " + file);
    }

    void write(String folder, String name, String content) throws CommandException {
        write(folder, name, content.getBytes(StandardCharsets.UTF_8));
    }

    void pdf(String folder, String name, List<Drawing> pages) throws CommandException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            PdfWriter.write(pages, Palette.PRINT, out);
        } catch (IOException e) {
            throw CommandException.unreadable(name + ": it cannot be made (" + e.getMessage() + ")");
        }
        write(folder, name, out.toByteArray());
    }

    /** A new file of the studio; one that is there is never overwritten. */
    void save(String name, Document document) throws CommandException, FileProblemException {
        new ModelFiles().save(document, terminal.file(name), Optional.empty());
        terminal.err().println("wrote " + terminal.file(name));
    }
}

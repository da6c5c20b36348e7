package culm.cli.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.export.Exporter;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.extensions.Extensions;
import culm.geometry.GeometryException;
import culm.model.problem.FileProblemException;

/** {@code culm export FILE --as ID [--out FILE]}: one design through one exporter; without {@code --as} it lists them. */
public final class ExportCommand implements Command {
    private final Extensions extensions;

    /** @param extensions the types, rules and exporters that are known */
    public ExportCommand(Extensions extensions) {
        this.extensions = extensions;
    }

    @Override
    public String name() {
        return "export";
    }

    @Override
    public String arguments() {
        return "[FILE --as EXPORTER [--out FILE]]";
    }

    @Override
    public String summary() {
        return "writes a design's numbers and findings for another program; alone it lists the exporters";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of(), List.of("--as", "--out"));
        if (arguments.rest().isEmpty() && arguments.value("--as").isEmpty()) {
            extensions.exporters().all().forEach(e -> terminal.out().printf("%-28s .%-5s %s%n", e.id(), e.ending(), e.name()));
            return ExitCode.FINE;
        }
        String file = arguments.only("a design's file");
        Exporter exporter = exporter(arguments.value("--as").orElseThrow(() -> CommandException.usage("--as and an exporter are missing; culm export lists them")));
        byte[] bytes = bytes(exporter, terminal.file(file));
        Optional<String> out = arguments.value("--out");
        if (out.isEmpty()) {
            terminal.out().write(bytes, 0, bytes.length);
            return ExitCode.FINE;
        }
        Path target = terminal.file(out.get());
        try {
            Files.write(target, bytes);
        } catch (IOException e) {
            throw CommandException.unreadable(target + ": it cannot be written (" + e.getClass().getSimpleName() + ")");
        }
        terminal.err().println("wrote " + target);
        return ExitCode.FINE;
    }

    private Exporter exporter(String id) throws CommandException {
        return extensions.exporters().find(id).orElseThrow(() -> CommandException.usage("there is no exporter '" + id + "'; culm export lists them"));
    }

    private byte[] bytes(Exporter exporter, Path file) throws CommandException, FileProblemException {
        try {
            DesignedBlank designed = new Bridge(extensions.profiles()).read(file);
            Assessment assessment = designed.assess();
            return exporter.bytes(designed.name(), assessment, designed.judge(assessment, extensions.rules()));
        } catch (GeometryException e) {
            throw CommandException.unreadable(file + ": " + e.getMessage());
        }
    }
}

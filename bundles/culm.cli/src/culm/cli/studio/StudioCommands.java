package culm.cli.studio;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.Terminal;
import culm.design.parts.PartAddress;
import culm.extensions.Extensions;
import culm.model.files.ModelFiles;
import culm.model.studio.Studio;

/** The commands for a studio's files, and what they share. */
public final class StudioCommands {
    static final Gson GSON = new GsonBuilder().serializeNulls().setPrettyPrinting().disableHtmlEscaping().create();

    private StudioCommands() {
    }

    /** All of them, in the order in which the usage lists them. */
    public static List<Command> all(Extensions extensions) {
        return List.of(new CompareCommand(extensions), new PartsCommand(), new UsedByCommand(), new ReplaceCommand(extensions), new DuplicatesCommand());
    }

    /** The studio in a folder. */
    static Studio studio(Terminal terminal, String folder) throws CommandException {
        Path path = terminal.file(folder);
        if (!Files.isDirectory(path)) {
            throw CommandException.unreadable(path + ": there is no such folder");
        }
        return Studio.at(path, new ModelFiles());
    }

    /** A part as it is written on the command line: {@code class.parts#staple-47}. */
    static PartAddress part(Terminal terminal, String word) throws CommandException {
        int hash = word.lastIndexOf('#');
        if (hash <= 0 || hash == word.length() - 1) {
            throw CommandException.usage("'" + word + "' is no part; write it as its file and its id, class.parts#staple-47");
        }
        Path file = terminal.file(word.substring(0, hash));
        if (!Files.isRegularFile(file)) {
            throw CommandException.unreadable(file + ": there is no such file");
        }
        return new PartAddress(file, word.substring(hash + 1));
    }
}

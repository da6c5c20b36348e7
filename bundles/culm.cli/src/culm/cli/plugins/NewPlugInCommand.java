package culm.cli.plugins;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

import javax.lang.model.SourceVersion;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.Terminal;

/** {@code culm new-plug-in NAME}: a project of one's own from a template, built, tested and installed. */
public final class NewPlugInCommand implements Command {
    private final PlugInBuild build;

    /** @param build builds the project once it is there */
    public NewPlugInCommand(PlugInBuild build) {
        this.build = build;
    }

    @Override
    public String name() {
        return "new-plug-in";
    }

    @Override
    public String arguments() {
        return "NAME [--kind " + kinds("|") + "] [--in FOLDER]";
    }

    @Override
    public String summary() {
        return "makes a plug-in project from a template, builds it and puts it into the folder of plug-ins";
    }

    @Override
    public String help() {
        return "NAME is small letters and digits, with dots if you like: harbour.bells. It becomes the folder, the Java package and the beginning of the ids in files.\n"
                + "Without --kind the plug-in adds a shape. Building needs a Java development kit.\n";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of(), List.of("--kind", "--in"));
        String name = arguments.only("a name");
        if (!name.matches("[a-z][a-z0-9]*(\\.[a-z][a-z0-9]*)*") || !SourceVersion.isName(name)) {
            throw CommandException.usage("'" + name + "' cannot be a plug-in's name: small letters and digits, a letter first, dots between, no word of Java, as in harbour.bells");
        }
        if (name.equals("culm") || name.startsWith("culm.")) {
            throw CommandException.usage("names that begin with culm are Culm's own");
        }
        PlugInTemplate template = template(arguments.value("--kind").orElse("shape"));
        Path folder = terminal.file(arguments.value("--in").orElse(".")).resolve(name);
        if (Files.exists(folder)) {
            throw CommandException.unreadable(folder + ": there is something of this name already; nothing was written");
        }
        try {
            template.write(folder, name);
        } catch (IOException e) {
            throw CommandException.unreadable(folder + ": the project cannot be written there (" + e.getMessage() + ")");
        }
        terminal.out().println("made " + folder);
        return build.run(folder, true, terminal);
    }

    private static PlugInTemplate template(String word) throws CommandException {
        return Arrays.stream(PlugInTemplate.values()).filter(t -> t.word().equals(word)).findFirst()
                .orElseThrow(() -> CommandException.usage("a plug-in is of " + kinds(", ") + ", not '" + word + "'"));
    }

    private static String kinds(String between) {
        return Arrays.stream(PlugInTemplate.values()).map(PlugInTemplate::word).collect(Collectors.joining(between));
    }
}

package culm.cli.studio;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import culm.blank.rules.Verdict;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.parts.PartAddress;
import culm.design.parts.Replacement;
import culm.design.parts.Replacement.Preview;
import culm.extensions.Extensions;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;

/** {@code culm replace PART BY}: shows what becomes of every design that uses a part, and with {@code --write} does it. */
final class ReplaceCommand implements Command {
    private final Extensions extensions;

    ReplaceCommand(Extensions extensions) {
        this.extensions = extensions;
    }

    @Override
    public String name() {
        return "replace";
    }

    @Override
    public String arguments() {
        return "FILE.parts#PART FILE.parts#OTHER [--only DESIGN,DESIGN] [--write] [--json]";
    }

    @Override
    public String summary() {
        return "shows what becomes of each design when one part takes another's place; with --write it is done";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--write", "--json"), List.of("--only"));
        if (arguments.rest().size() != 2) {
            throw CommandException.usage("two parts are needed: the one in use, and the one to take its place");
        }
        PartAddress from = StudioCommands.part(terminal, arguments.rest().get(0));
        PartAddress to = StudioCommands.part(terminal, arguments.rest().get(1));
        Studio studio = Studio.around(from.file(), new ModelFiles());
        Replacement replacement = new Replacement(studio, new Bridge(extensions.profiles()), extensions.rules(), from, to);
        List<Preview> previews = only(arguments, terminal, replacement.preview(studio.index()));
        if (arguments.has("--write")) {
            for (Preview preview : previews) {
                replacement.apply(preview.design());
            }
        }
        if (arguments.has("--json")) {
            terminal.out().println(StudioCommands.GSON.toJson(json(studio, previews)));
        } else {
            previews.forEach(p -> terminal.out().print(text(studio, p)));
            terminal.out().println(previews.isEmpty() ? "No design uses it." : arguments.has("--write") ? "Written." : "Nothing was written; --write does it.");
        }
        return ExitCode.FINE;
    }

    private static List<Preview> only(Arguments arguments, Terminal terminal, List<Preview> all) throws CommandException {
        if (arguments.value("--only").isEmpty()) {
            return all;
        }
        List<Path> wanted = new java.util.ArrayList<>();
        for (String name : Arrays.asList(arguments.value("--only").get().split(","))) {
            Path file = terminal.file(name.strip());
            if (all.stream().noneMatch(p -> p.design().equals(file))) {
                throw CommandException.usage(name.strip() + " is no design that uses this part");
            }
            wanted.add(file);
        }
        return all.stream().filter(p -> wanted.contains(p.design())).toList();
    }

    private static String text(Studio studio, Preview p) {
        return studio.shown(p.design()) + "\n  now    " + sentence(p.before(), p.reason()) + "\n  then   " + sentence(p.after(), p.reason()) + "\n";
    }

    private static String sentence(Optional<Verdict> verdict, String reason) {
        return verdict.map(v -> "[" + v.sign().word() + "] " + v.sentence()).orElse("cannot be told: " + reason);
    }

    private static JsonArray json(Studio studio, List<Preview> previews) {
        JsonArray all = new JsonArray();
        for (Preview p : previews) {
            JsonObject o = new JsonObject();
            o.addProperty("design", studio.shown(p.design()));
            o.addProperty("name", p.name());
            o.addProperty("signNow", p.before().map(v -> v.sign().name()).orElse(null));
            o.addProperty("now", p.before().map(Verdict::sentence).orElse(null));
            o.addProperty("signThen", p.after().map(v -> v.sign().name()).orElse(null));
            o.addProperty("then", p.after().map(Verdict::sentence).orElse(null));
            o.addProperty("reason", p.reason());
            all.add(o);
        }
        return all;
    }
}

package culm.cli.studio;

import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.model.studio.Studio;
import culm.model.studio.StudioIndex;
import culm.model.studio.StudioIndex.Held;

/** {@code culm parts FOLDER}: every part of a studio and how many designs use it. */
final class PartsCommand implements Command {
    @Override
    public String name() {
        return "parts";
    }

    @Override
    public String arguments() {
        return "FOLDER [--find WORDS] [--json]";
    }

    @Override
    public String summary() {
        return "lists a studio's staples, gouges, shapes and threads, and how many designs use each";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of("--find"));
        Studio studio = StudioCommands.studio(terminal, arguments.only("a studio's folder"));
        StudioIndex index = studio.index();
        List<Held> parts = arguments.value("--find").map(index::findParts).orElseGet(index::parts);
        JsonArray json = new JsonArray();
        for (Held held : parts) {
            int users = index.usersOf(held.file().file(), held.part().id()).size();
            if (arguments.has("--json")) {
                JsonObject o = new JsonObject();
                o.addProperty("address", address(held));
                o.addProperty("kind", held.part().kind());
                o.addProperty("name", held.part().name());
                o.addProperty("designs", users);
                json.add(o);
            } else {
                terminal.out().printf("%-7s %-40s %3d %-8s %s%n", held.part().kind(), address(held), users, users == 1 ? "design" : "designs", held.part().name());
            }
        }
        if (arguments.has("--json")) {
            terminal.out().println(StudioCommands.GSON.toJson(json));
        }
        index.problems().forEach(problem -> terminal.err().println(problem.message()));
        return ExitCode.FINE;
    }

    private static String address(Held held) {
        return held.file().shown() + "#" + held.part().id();
    }
}

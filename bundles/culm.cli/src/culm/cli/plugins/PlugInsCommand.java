package culm.cli.plugins;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.extensions.Contribution;
import culm.extensions.Extensions;
import culm.extensions.PlugIn;
import culm.extensions.PlugInJar;

/** {@code culm plug-ins [--json]}: who contributes what, and what could not be used and why. */
public final class PlugInsCommand implements Command {
    private final Extensions extensions;

    /** @param extensions what Culm and the plug-ins contribute */
    public PlugInsCommand(Extensions extensions) {
        this.extensions = extensions;
    }

    @Override
    public String name() {
        return "plug-ins";
    }

    @Override
    public String arguments() {
        return "[--json]";
    }

    @Override
    public String summary() {
        return "lists which plug-in brings which staples, gouges, shapes, rules and exporters";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of());
        if (!arguments.rest().isEmpty()) {
            throw CommandException.usage("nothing is needed behind it, not '" + arguments.rest().get(0) + "'");
        }
        terminal.out().print(arguments.has("--json") ? json() : text());
        return ExitCode.FINE;
    }

    private String text() {
        Map<PlugIn, StringBuilder> byPlugIn = new LinkedHashMap<>();
        for (Contribution c : extensions.contributions().stream().sorted(Comparator.comparing(c -> !c.plugIn().ships())).toList()) {
            StringBuilder lines = byPlugIn.computeIfAbsent(c.plugIn(), p -> new StringBuilder());
            lines.append(String.format("  %-12s %-24s %s%n", c.point().word(), c.id(), c.name()));
            c.failure().ifPresent(why -> lines.append("      not in use: ").append(why).append('\n'));
        }
        StringBuilder text = new StringBuilder();
        byPlugIn.forEach((plugIn, lines) -> text.append(plugIn.said()).append(" (").append(plugIn.id()).append(')').append(file(plugIn)).append('\n')
                .append(lines).append('\n'));
        for (PlugInJar jar : extensions.jars()) {
            if (jar.problem().isPresent()) {
                text.append(jar.file()).append(" is not in use. ").append(jar.problem().get()).append('\n');
            } else if (byPlugIn.keySet().stream().noneMatch(p -> p.equals(jar.plugIn().orElseThrow()))) {
                text.append(jar.file()).append(" contributes nothing.\n");
            }
        }
        return text.toString();
    }

    private String file(PlugIn plugIn) {
        return extensions.jars().stream().filter(j -> j.plugIn().filter(plugIn::equals).isPresent()).findFirst().map(j -> ", from " + j.file()).orElse("");
    }

    private String json() {
        JsonArray contributions = new JsonArray();
        for (Contribution c : extensions.contributions()) {
            JsonObject o = new JsonObject();
            o.addProperty("point", c.point().fullName());
            o.addProperty("id", c.id());
            o.addProperty("name", c.name());
            o.addProperty("class", c.className());
            o.addProperty("plugIn", c.plugIn().id());
            o.addProperty("plugInName", c.plugIn().name());
            o.addProperty("plugInVersion", c.plugIn().version());
            o.add("failure", c.failure().<com.google.gson.JsonElement>map(JsonPrimitive::new).orElse(JsonNull.INSTANCE));
            contributions.add(o);
        }
        JsonArray jars = new JsonArray();
        for (PlugInJar jar : extensions.jars()) {
            JsonObject o = new JsonObject();
            o.addProperty("file", jar.file());
            o.addProperty("plugIn", jar.plugIn().map(PlugIn::id).orElse(null));
            o.addProperty("problem", jar.problem().orElse(null));
            jars.add(o);
        }
        JsonObject all = new JsonObject();
        all.add("contributions", contributions);
        all.add("files", jars);
        return new GsonBuilder().serializeNulls().setPrettyPrinting().disableHtmlEscaping().create().toJson(all) + "\n";
    }
}

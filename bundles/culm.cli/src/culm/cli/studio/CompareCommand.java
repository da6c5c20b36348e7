package culm.cli.studio;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignComparison;
import culm.design.DesignComparison.InputRow;
import culm.design.DesignComparison.ResultRow;
import culm.design.DesignedBlank;
import culm.extensions.Extensions;
import culm.figures.Numbers;
import culm.model.problem.FileProblemException;

/** {@code culm compare A B}: where two designs differ, and their results side by side. */
final class CompareCommand implements Command {
    private final Extensions extensions;

    CompareCommand(Extensions extensions) {
        this.extensions = extensions;
    }

    @Override
    public String name() {
        return "compare";
    }

    @Override
    public String arguments() {
        return "DESIGN OTHER [--json]";
    }

    @Override
    public String summary() {
        return "shows where two designs differ and their results side by side";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of());
        if (arguments.rest().size() != 2) {
            throw CommandException.usage("two designs are needed");
        }
        DesignComparison comparison = DesignComparison.of(read(terminal, arguments.rest().get(0)), read(terminal, arguments.rest().get(1)), extensions.rules());
        terminal.out().print(arguments.has("--json") ? StudioCommands.GSON.toJson(json(comparison)) + "\n" : text(comparison));
        return ExitCode.FINE;
    }

    private DesignedBlank read(Terminal terminal, String file) throws CommandException, FileProblemException {
        return new Bridge(extensions.profiles()).read(terminal.file(file));
    }

    private static String text(DesignComparison c) {
        StringBuilder text = new StringBuilder();
        text.append("A  ").append(c.left().name()).append(": ").append(c.left().verdict().sentence()).append('\n');
        text.append("B  ").append(c.right().name()).append(": ").append(c.right().verdict().sentence()).append("\n\n");
        text.append(String.format("%-44s %-28s %s%n", "Given", "A", "B"));
        for (InputRow row : c.inputs()) {
            text.append(String.format("  %-42s %-28s %s%n", row.label(), dash(row.left()), dash(row.right())));
        }
        text.append(c.inputs().isEmpty() ? "  nothing differs\n" : "").append('\n');
        text.append(String.format("%-44s %10s %10s %18s%n", "Computed", "A", "B", "B less A, as shown"));
        for (ResultRow row : c.results()) {
            text.append(String.format("  %-42s %10s %10s %18s%n", row.label() + unit(row), number(row, row.left()), number(row, row.right()), change(row)));
        }
        return text.toString();
    }

    private static String dash(String value) {
        return value.isEmpty() ? "-" : value;
    }

    private static String unit(ResultRow row) {
        return row.name().equals("boreVolume") ? ", mm\u00b3" : row.quantity().unit().isEmpty() ? "" : ", " + row.quantity().unit();
    }

    /** No more digits than a caliper sees: hundredths across the reed, tenths along it. */
    private static String number(ResultRow row, OptionalDouble value) {
        if (value.isEmpty()) {
            return "-";
        }
        String text = String.format(Locale.ROOT, row.name().startsWith("open") ? "%.2f" : "%.1f", value.getAsDouble());
        return text.matches("-0\\.0+") ? text.substring(1) : text;
    }

    /** The difference of what is shown, so that the columns add up. */
    private static String change(ResultRow row) {
        return row.left().isEmpty() || row.right().isEmpty() ? "-" : Numbers.difference(number(row, row.right()), number(row, row.left())).replace('\u2212', '-');
    }

    private static JsonObject json(DesignComparison c) {
        JsonObject all = new JsonObject();
        all.addProperty("left", c.left().name());
        all.addProperty("right", c.right().name());
        all.addProperty("leftVerdict", c.left().verdict().sentence());
        all.addProperty("rightVerdict", c.right().verdict().sentence());
        JsonArray inputs = new JsonArray();
        for (InputRow row : c.inputs()) {
            JsonObject o = new JsonObject();
            o.addProperty("path", row.path());
            o.addProperty("label", row.label());
            o.addProperty("left", row.left());
            o.addProperty("right", row.right());
            inputs.add(o);
        }
        all.add("inputs", inputs);
        JsonObject results = new JsonObject();
        for (ResultRow row : c.results()) {
            JsonObject o = new JsonObject();
            o.addProperty("left", row.left().isPresent() ? row.left().getAsDouble() : null);
            o.addProperty("right", row.right().isPresent() ? row.right().getAsDouble() : null);
            results.add(row.name(), o);
        }
        all.add("results", results);
        return all;
    }
}

package culm.cli.explore;

import java.util.List;

import com.google.gson.JsonObject;

import culm.bench.plots.PlotWords;
import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.explore.Axis;
import culm.explore.TwoWayMap;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm map FILE X=FROM:TO:COUNT Y=FROM:TO:COUNT}: where two numbers together pass every rule, and which rule ends it. */
final class MapCommand extends Exploring {
    private static final int REGIONS = 12;

    MapCommand(Profiles profiles, Rules rules) {
        super(profiles, rules);
    }

    @Override
    public String name() {
        return "map";
    }

    @Override
    public String arguments() {
        return "FILE INPUT=VALUES INPUT=VALUES [--threads N] [--json] [--out DIR]";
    }

    @Override
    public String summary() {
        return "maps two inputs: where the blank passes every rule, and which rule bounds that";
    }

    @Override
    public String help() {
        return """
                The first input goes to the right, the second upwards; VALUES as FROM:TO:COUNT, FROM:TO:/STEP or a list.
                --out      writes map.svg into a folder
                """ + INPUTS;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of("--threads", "--out"));
        Question question = question(arguments, terminal);
        List<Axis> axes = Axes.of(question);
        if (axes.size() != 2 || !(axes.get(0) instanceof Axis.Numbers x) || !(axes.get(1) instanceof Axis.Numbers y)) {
            throw CommandException.usage("a map needs two numbers, INPUT=VALUES twice");
        }
        TwoWayMap map;
        try {
            map = TwoWayMap.of(question.study(List.of()), x, y, threads(arguments), watcher(terminal, "crossings"));
        } catch (IllegalArgumentException e) {
            throw CommandException.usage(e.getMessage());
        }
        JsonObject json = Json.map(map);
        json.addProperty("file", question.file);
        terminal.out().print(arguments.has("--json") ? Json.text(json) : text(question.design.name(), map));
        draw(arguments, Plots.map(question.design.blank(), map), terminal);
        return ExitCode.FINE;
    }

    private static String text(String name, TwoWayMap map) {
        int all = map.x().size() * map.y().size();
        StringBuilder text = new StringBuilder(Words.say("%s: %s across %s, %,d crossings%n%n", name, map.x().label(), map.y().label(), all));
        for (TwoWayMap.Region r : map.regions().subList(0, Math.min(REGIONS, map.regions().size()))) {
            text.append(Words.say("  %7s  around %s %s, %s %s: %s%n", Words.percent((double) r.cells() / all), map.x().id(), map.x().text(r.labelX()), map.y().id(),
                    map.y().text(r.labelY()), r.failed().isEmpty() ? "passes every rule; bounded by " + PlotWords.rules(r.bounds()) : "not passed: " + PlotWords.rules(r.failed())));
        }
        return text.toString();
    }
}

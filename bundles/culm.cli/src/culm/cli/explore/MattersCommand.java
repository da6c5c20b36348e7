package culm.cli.explore;

import java.util.List;

import com.google.gson.JsonObject;

import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.explore.Sensitivities;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm matters FILE}: which reading moves turns left how far. */
final class MattersCommand extends Exploring {
    MattersCommand(Profiles profiles, Rules rules) {
        super(profiles, rules);
    }

    @Override
    public String name() {
        return "matters";
    }

    @Override
    public String arguments() {
        return "FILE [--json] [--out DIR]";
    }

    @Override
    public String summary() {
        return "ranks the inputs by how far they move turns left: what to measure better";
    }

    @Override
    public String help() {
        return """
                For each input: turns for 0.01 mm (or one percent) more of it, turns for its own give or take, and its share of the whole give or take.
                --out      writes what-matters.svg and per-hundredth.svg into a folder
                """;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of("--out"));
        Question question = question(arguments, terminal);
        if (!question.assignments.isEmpty()) {
            throw CommandException.usage("one file is enough");
        }
        Blank blank = question.blank();
        Sensitivities found = Sensitivities.of(Assessor.assess(blank));
        JsonObject json = Json.matters(found);
        json.addProperty("file", question.file);
        terminal.out().print(arguments.has("--json") ? Json.text(json) : Words.matters(question.design.name(), found, blank.fit().isPresent()));
        draw(arguments, Plots.matters(found), terminal);
        return ExitCode.FINE;
    }
}

package culm.cli.explore;

import java.util.ArrayList;
import java.util.List;

import com.google.gson.JsonObject;

import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.explore.BestChoice;
import culm.explore.Chosen;
import culm.explore.Free;
import culm.explore.Usual;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm choose FILE INPUT=VALUES ...}: the choice that works most often. */
final class ChooseCommand extends Exploring {
    ChooseCommand(Profiles profiles, Rules rules) {
        super(profiles, rules);
    }

    @Override
    public String name() {
        return "choose";
    }

    @Override
    public String arguments() {
        return "FILE INPUT=VALUES ... [--seed N] [--threads N] [--json] [--out DIR]";
    }

    @Override
    public String summary() {
        return "finds the values that make the most blanks work, and says what that gains";
    }

    @Override
    public String help() {
        return """
                What may be chosen:
                  tie.length=70:75         anything in between
                  tie.length=70:75:/0.5    these steps
                  staple.length=45,46,47   what is in stock
                  shape=A.reed,B.reed      the shapes (staple=, gouge= likewise) of other designs
                The inputs vary within their own give or take, as in culm tolerances; up to 3000 combinations are all tried.
                --out      writes best-choice.svg into a folder
                """ + INPUTS;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of("--seed", "--threads", "--out"));
        Question question = question(arguments, terminal);
        List<Free> free = Axes.free(question);
        Chosen chosen;
        try {
            chosen = BestChoice.search(question.study(new ArrayList<>(Usual.of(question.blank()))), free, seed(arguments), threads(arguments), watcher(terminal, "tried"));
        } catch (IllegalArgumentException e) {
            throw CommandException.usage(e.getMessage());
        }
        List<String> inputs = free.stream().map(f -> f.axis().id()).toList();
        JsonObject json = Json.chosen(chosen, inputs);
        json.addProperty("file", question.file);
        terminal.out().print(arguments.has("--json") ? Json.text(json) : text(question.design.name(), free, chosen));
        draw(arguments, Plots.chosen(chosen), terminal);
        return ExitCode.FINE;
    }

    private static String text(String name, List<Free> free, Chosen c) {
        StringBuilder text = new StringBuilder(name).append(": the best of ").append(Words.say("%,d", c.tried())).append(c.every() ? ", all there are\n\n" : " tried\n\n");
        for (int i = 0; i < free.size(); i++) {
            text.append(Words.say("  %-36s %s%n", free.get(i).axis().label(), c.texts().get(i)));
        }
        text.append(Words.say("%n  now   %s%n  then  %s%n  gain  %+.1f points (%+.1f to %+.1f)%s%n", Words.share(c.baseline().passed()), Words.share(c.best().passed()), 100 * c.gain(),
                100 * c.gainLow(), 100 * c.gainHigh(), c.certain() ? "" : ": no more than chance"));
        return text.toString();
    }
}

package culm.cli.explore;

import java.io.IOException;
import java.util.List;

import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.explore.Axis;
import culm.explore.Study;
import culm.explore.VariantCsv;
import culm.explore.VariantPlan;
import culm.explore.Variants;
import culm.explore.Watcher;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm vary FILE INPUT=VALUES ...}: variants as CSV. */
final class VaryCommand extends Exploring {
    VaryCommand(Profiles profiles, Rules rules) {
        super(profiles, rules);
    }

    @Override
    public String name() {
        return "vary";
    }

    @Override
    public String arguments() {
        return "FILE INPUT=VALUES ... [--one | --sample N] [--threads N] [--csv FILE]";
    }

    @Override
    public String summary() {
        return "makes variants of a design and writes where each closes, as CSV";
    }

    @Override
    public String help() {
        return """
                VALUES:
                  70,71.5,73               a list
                  70:75:11                 11 values from 70 to 75
                  70:75:/0.5               steps of 0.5
                  staple=A.reed,B.reed     the staples (gouge=, shape= likewise) of other designs
                Every combination is made, the first input changing slowest.
                --one      each input alone through its values, the others as in the design; the design itself first
                --sample   so many combinations spread evenly over the ranges (Sobol), for many inputs
                --csv      writes to a file; else to the standard output. Rows are written as they are made.
                """ + INPUTS;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--one"), List.of("--sample", "--threads", "--csv"));
        Question question = question(arguments, terminal);
        List<Axis> axes = Axes.of(question);
        if (axes.isEmpty()) {
            throw CommandException.usage("nothing varies; give INPUT=VALUES");
        }
        if (arguments.has("--one") && arguments.has("--sample")) {
            throw CommandException.usage("--one and --sample exclude each other");
        }
        VariantPlan plan = arguments.has("--one") ? new VariantPlan.OneAtATime() : arguments.has("--sample")
                ? new VariantPlan.Sample((int) Question.whole(arguments, "--sample", 1, 1, Integer.MAX_VALUE - 2)) : new VariantPlan.Grid();
        Study study = question.study(List.of());
        int threads = threads(arguments);
        Watcher<Void> watcher = watcher(terminal, "variants");
        Content content = stream -> make(study, axes, plan, threads, stream, watcher);
        try {
            if (arguments.value("--csv").isPresent()) {
                write(terminal.file(arguments.value("--csv").get()), content, terminal);
            } else {
                content.to(terminal.out());
            }
        } catch (IllegalArgumentException e) {
            throw CommandException.usage(e.getMessage());
        } catch (IOException e) {
            throw CommandException.unreadable("the variants cannot be written (" + e.getClass().getSimpleName() + ")");
        }
        return ExitCode.FINE;
    }

    private static void make(Study study, List<Axis> axes, VariantPlan plan, int threads, java.io.OutputStream stream, Watcher<Void> watcher) throws IOException {
        Variants.run(study, axes, plan, threads, new VariantCsv(stream), watcher);
    }
}

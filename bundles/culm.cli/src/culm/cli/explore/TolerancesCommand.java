package culm.cli.explore;

import java.util.List;

import com.google.gson.JsonObject;

import culm.blank.ClosingFinder;
import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.explore.Study;
import culm.explore.ToleranceResult;
import culm.explore.ToleranceRun;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm tolerances FILE [INPUT=SPREAD ...]}: how many of many blanks work. */
final class TolerancesCommand extends Exploring {
    private static final long BLANKS = 100_000;
    private static final long MOST = 10_000_000_000L;
    private static final long SECONDS = 1_000_000_000L;

    TolerancesCommand(Profiles profiles, Rules rules) {
        super(profiles, rules);
    }

    @Override
    public String name() {
        return "tolerances";
    }

    @Override
    public String arguments() {
        return "FILE [INPUT=SPREAD ...] [--only] [--blanks N] [--seed N] [--threads N] [--speed] [--json] [--out DIR]";
    }

    @Override
    public String summary() {
        return "draws many blanks within their give or take and says how many work";
    }

    @Override
    public String help() {
        return """
                Every input of the design varies within its own give or take, unless a SPREAD says otherwise:
                  0.1                      anywhere within plus or minus 0.1
                  uniform:-0.1,0.2         anywhere between two deviations
                  normal:0.05              normal, standard deviation 0.05
                  triangular:-0.1,0,0.2    most often at the middle one
                  measured:FILE:COLUMN     one of the rows of a CSV file; columns of the same file stay together
                  fixed                    does not vary
                --only     only the inputs named vary
                --blanks   how many, 100000 unless said otherwise; --seed: the same seed draws the same blanks, for any --threads
                --speed    says how many closings a second were made, beside the reference path on one thread
                --out      writes turns-left.svg, rules.svg and causes.svg into a folder
                """ + INPUTS;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--json", "--only", "--speed"), List.of("--blanks", "--seed", "--threads", "--out"));
        Question question = question(arguments, terminal);
        Study study = question.study(Spreads.of(question, arguments.has("--only")));
        long blanks = Question.whole(arguments, "--blanks", BLANKS, 1, MOST);
        int threads = threads(arguments);
        long start = System.nanoTime();
        ToleranceResult result;
        try {
            result = ToleranceRun.run(study, blanks, seed(arguments), threads, watcher(terminal, "blanks"));
        } catch (IllegalArgumentException e) {
            throw CommandException.usage(e.getMessage());
        }
        double seconds = (System.nanoTime() - start) / (double) SECONDS;
        JsonObject json = Json.tolerances(result);
        json.addProperty("file", question.file);
        if (arguments.has("--speed")) {
            double reference = reference(study);
            terminal.err().println(Words.say("%,d closings in %.2f s on %d threads: %,.0f a second; reference path on one thread: %,.0f a second", blanks, seconds, threads,
                    blanks / seconds, reference));
            json.addProperty("seconds", seconds);
            json.addProperty("closingsPerSecond", blanks / seconds);
            json.addProperty("referencePerSecond", reference);
        }
        terminal.out().print(arguments.has("--json") ? Json.text(json) : Words.tolerances(question.design.name(), result));
        draw(arguments, Plots.tolerances(result, question.limits()), terminal);
        return ExitCode.FINE;
    }

    /** Closings a second of the reference path on the base, for two seconds; the tie moved a little each time. */
    private static double reference(Study study) {
        double tie = study.base().number(culm.blank.Inputs.TIE_LENGTH);
        long start = System.nanoTime();
        long made = 0;
        while (System.nanoTime() - start < 2 * SECONDS) {
            ClosingFinder.find(study.base().with(culm.blank.Inputs.TIE_LENGTH, tie + 1e-4 * (made % 1000)));
            made++;
        }
        return made * (double) SECONDS / (System.nanoTime() - start);
    }
}

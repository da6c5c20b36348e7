package culm.cli.bench;

import java.util.List;

import culm.bench.batch.BatchCsv;
import culm.bench.batch.BatchModel;
import culm.bench.batch.BatchPlan;
import culm.bench.batch.BatchPlanner;
import culm.bench.batch.Caliper;
import culm.bench.batch.Doubt;
import culm.bench.batch.PlanCsv;
import culm.bench.batch.Served;
import culm.bench.batch.SetAside;
import culm.bench.batch.Setting;
import culm.bench.batch.SplitBy;
import culm.bench.batch.StapleBatch;
import culm.bench.csv.CsvStyle;
import culm.blank.Inputs;
import culm.blank.rules.Say;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;

/** {@code culm batch}: measured staples split into the fewest tie lengths. */
public final class BatchCommand implements Command {
    private static final int NAMED = 20;
    private final Profiles profiles;

    public BatchCommand(Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public String name() {
        return "batch";
    }

    @Override
    public String arguments() {
        return "STAPLES [--design FILE] [--caliper MM] [--below MM] [--step MM] [--margin TURNS] [--comma] [--out DIR] [--save FILE]";
    }

    @Override
    public String summary() {
        return "splits measured staples into the fewest tie lengths that serve all";
    }

    @Override
    public String help() {
        return """

                  STAPLES          measured staples: a .batch file, or a table (.csv) with the columns staple, length, top wide, top narrow;
                                   point or comma, columns and rows repeated for repeated readings
                  --design FILE    the design they are meant for, ending in .reed: cane, thread, limits; without it: the one that a .batch file names
                  --caliper MM     %s
                                   Without it: what the file says, else 0.03.
                  --below MM       how far the wrap stops below each staple's own top; without it: what the file says, else as in the design
                  --step MM        %s; without it: what the file says, else 0.1
                  --margin TURNS   %s;
                                   without it: what the file says, else 0
                  --comma          writes tables with decimal commas
                  --out DIR        also writes settings.csv there, one row for each staple
                  --save FILE      also writes the staples as a new .batch file

                Ends with 0: every row was read and some staple can be used, 1: look at what is said, 2: wrong usage, 3: unreadable input.
                """.formatted(Caliper.HELP.replace(". ", ".\n                   "), BatchPlanner.STEP_HELP, BatchPlanner.MARGIN_HELP);
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--comma"), List.of("--design", "--caliper", "--below", "--step", "--margin", "--out", "--save"));
        String file = arguments.only("a file of staples");
        Files files = new Files(new Bridge(profiles), terminal);
        DesignedBlank design = arguments.value("--design").isPresent() ? files.design(arguments.value("--design").get()) : files.designOf(file);
        BatchCsv.Result read = read(arguments, file, files, design);
        boolean unread = files.told(read.problems());
        BatchPlan plan = planner(design, read.batch()).plan(design.blank(), read.batch());
        print(plan, terminal);
        CsvStyle style = arguments.has("--comma") ? CsvStyle.COMMA : CsvStyle.POINT;
        if (arguments.value("--out").isPresent()) {
            files.write(arguments.value("--out").get(), "settings.csv", PlanCsv.write(plan, style));
        }
        if (arguments.value("--save").isPresent()) {
            files.save(arguments.value("--save").get(), BatchModel.write(read.batch(), Ids.of(read.batch().name(), "batch", List.of())));
        }
        return unread || plan.served() == 0 ? ExitCode.WILL_NOT_WORK : ExitCode.FINE;
    }

    /** What splits a batch as the command line asks for, {@link #read} before. */
    static BatchPlanner planner(DesignedBlank design, StapleBatch batch) {
        return new BatchPlanner(design.limits(), batch.by().step(), batch.by().margin());
    }

    /** The batch; what the command line says goes before what the file says. */
    static BatchCsv.Result read(Arguments arguments, String file, Files files, DesignedBlank design) throws CommandException, FileProblemException {
        double below = Math.max(0, design.blank().number(Inputs.STAPLE_LENGTH) - design.blank().number(Inputs.WRAP_TOP));
        BatchCsv.Result read = files.batch(file, Caliper.ASSUMED, below);
        double caliper = arguments.number("--caliper", 0, 1, read.batch().caliper().largestError());
        double stop = arguments.number("--below", 0, 20, read.batch().wrapBelowTop());
        SplitBy by = new SplitBy(arguments.number("--step", BatchPlanner.LEAST_STEP, BatchPlanner.MOST_STEP, read.batch().by().step()),
                arguments.number("--margin", 0, BatchPlanner.MOST_MARGIN, read.batch().by().margin()));
        return new BatchCsv.Result(new StapleBatch(read.batch().name(), read.batch().staples(), new Caliper(caliper), stop, by), read.problems());
    }

    private static void print(BatchPlan plan, Terminal terminal) {
        StringBuilder out = new StringBuilder();
        out.append(plan.batch().name()).append(": ").append(plan.served()).append(" of ").append(plan.batch().staples().size()).append(" staples in ")
                .append(plan.settings().size()).append(plan.settings().size() == 1 ? " setting" : " settings")
                .append(plan.fewest() ? "; fewer cannot serve them" : "; perhaps fewer would do, the search was stopped").append('\n');
        int number = 0;
        for (Setting setting : plan.settings()) {
            number++;
            out.append(String.format(java.util.Locale.ROOT, "%n  setting %d: tie at %s, %s to %s left%s%n", number, Say.mm(setting.tie()), Say.tenth(setting.fewestTurns()),
                    Say.turns(setting.mostTurns()), Double.isNaN(setting.giveOrTake()) ? "" : ", each give or take " + Say.tenth(setting.giveOrTake())).replace("\r\n", "\n"));
            for (Served s : setting.staples().subList(0, Math.min(NAMED, setting.staples().size()))) {
                out.append(String.format(java.util.Locale.ROOT, "    %-12s length %.2f   pencil mark %.1f   stop at %.1f   %s left%n", s.staple().label(), s.staple().length().getAsDouble(),
                        s.caneAbove(), s.wrapTop(), Say.turns(s.turnsLeft())).replace("\r\n", "\n"));
            }
            if (setting.staples().size() > NAMED) {
                out.append("    and ").append(setting.staples().size() - NAMED).append(" more; --out writes them all\n");
            }
        }
        section(out, "Set aside", plan.aside().stream().map((SetAside a) -> a.staple().label() + ": " + a.why()).toList());
        section(out, "Look again", plan.doubts().stream().map((Doubt d) -> d.staple().label() + ": " + d.why()).toList());
        terminal.out().print(out);
    }

    private static void section(StringBuilder out, String head, List<String> lines) {
        if (!lines.isEmpty()) {
            out.append('\n').append(head).append('\n');
            lines.forEach(l -> out.append("  ").append(l).append('\n'));
        }
    }
}

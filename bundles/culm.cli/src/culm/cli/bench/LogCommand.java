package culm.cli.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import culm.bench.csv.CsvStyle;
import culm.bench.log.GroupBy;
import culm.bench.log.GroupStats;
import culm.bench.log.LogCharts;
import culm.bench.log.LogCsv;
import culm.bench.log.LogDesigns;
import culm.bench.log.LogFilter;
import culm.bench.log.LogModel;
import culm.bench.log.PlannedSeen;
import culm.bench.log.ShareChart;
import culm.bench.log.Tied;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.figures.Palette;
import culm.figures.TextMeasure;
import culm.figures.font.ShippedFont;
import culm.figures.svg.SvgWriter;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;
import culm.model.text.Ids;

/** {@code culm log}: what the reed log says. */
public final class LogCommand implements Command {
    private static final double WIDTH = 760;
    private final Profiles profiles;

    public LogCommand(Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public String name() {
        return "log";
    }

    @Override
    public String arguments() {
        return "LOG [--by WHAT] [--only WHAT=NAME] [--from DAY] [--to DAY] [--design FILE] [--comma] [--out DIR] [--save FILE]";
    }

    @Override
    public String summary() {
        return "says whose blanks leak, which batch makes keepers, what is drying, and how far the plan was met";
    }

    @Override
    public String help() {
        return """

                  LOG              the reed log: a .log file, or a table (.csv) whose first row names its columns
                  --by WHAT        groups: person (that is assumed), cane, staples, shape, design, ends or for
                  --only WHAT=NAME only those blanks; several are separated by semicolons: person=Ines;cane=bank 12
                  --from, --to DAY only blanks tied on these days, such as 2026-03-09
                  --design FILE    the design of blanks that name none
                  --comma          writes tables with decimal commas
                  --out DIR        also writes log.csv, leaks.svg, keepers.svg, turns.svg and, where designs are known, expected.svg there
                  --save FILE      also writes the blanks as a new .log file

                Shares come with their 95 % interval (Wilson). Ends with 0: every row was read, 1: some blanks were left out or are in doubt, and named,
                2: wrong usage, 3: unreadable input.
                """;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--comma"), List.of("--by", "--only", "--from", "--to", "--design", "--out", "--save"));
        String file = arguments.only("a reed log's file");
        GroupBy by = groupBy(arguments.value("--by").orElse("person"));
        LogFilter filter = filter(arguments);
        Bridge bridge = new Bridge(profiles);
        Files files = new Files(bridge, terminal);
        LogCsv.Result read = files.log(file);
        boolean unread = files.told(read.problems());
        List<Tied> log = filter.of(read.log());
        Optional<java.nio.file.Path> design = arguments.value("--design").isEmpty() ? Optional.empty() : Optional.of(terminal.file(arguments.value("--design").get()));
        LogDesigns designs = new LogDesigns(bridge, terminal.file(file), design);
        List<PlannedSeen> compared = new ArrayList<>();
        log.forEach(t -> designs.apply(t).ifPresent(b -> compared.add(PlannedSeen.of(t, b))));
        designs.problems().forEach(terminal.err()::println);
        terminal.out().print(LogText.text(log, by, compared, LocalDate.now()));
        if (arguments.value("--out").isPresent()) {
            String folder = arguments.value("--out").get();
            TextMeasure measure = ShippedFont.load();
            List<GroupStats> groups = GroupStats.by(by, log);
            files.write(folder, "log.csv", LogCsv.write(log, arguments.has("--comma") ? CsvStyle.COMMA : CsvStyle.POINT));
            files.write(folder, "leaks.svg", SvgWriter.write(ShareChart.draw("Leaked, by " + by.words(), groups, GroupStats::leaks, WIDTH, measure), Palette.PRINT));
            files.write(folder, "keepers.svg", SvgWriter.write(ShareChart.draw("Keepers, by " + by.words(), groups, GroupStats::keepers, WIDTH, measure), Palette.PRINT));
            files.write(folder, "turns.svg", SvgWriter.write(LogCharts.turns(log, by, designs.limits(), WIDTH, 360, measure), Palette.PRINT));
            if (!compared.isEmpty()) {
                files.write(folder, "expected.svg", SvgWriter.write(LogCharts.expected(compared, 480, 480, measure), Palette.PRINT));
            }
        }
        if (arguments.value("--save").isPresent()) {
            files.save(arguments.value("--save").get(), LogModel.write(log, Ids.of("log", "log", List.of()), "Reed log"));
        }
        return unread ? ExitCode.WILL_NOT_WORK : ExitCode.FINE;
    }

    private static GroupBy groupBy(String word) throws CommandException {
        for (GroupBy by : GroupBy.values()) {
            if (by.name().toLowerCase(Locale.ROOT).equals(word.strip().toLowerCase(Locale.ROOT))) {
                return by;
            }
        }
        throw CommandException.usage("blanks are grouped by person, cane, staples, shape, design, ends or for, not by " + word);
    }

    private static LogFilter filter(Arguments arguments) throws CommandException {
        LogFilter filter = LogFilter.ALL;
        for (String pair : arguments.value("--only").map(o -> o.split(";")).orElse(new String[0])) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw CommandException.usage("--only is like person=Ines, not " + pair);
            }
            filter = filter.with(groupBy(pair.substring(0, equals)), pair.substring(equals + 1));
        }
        LocalDate from = Options.day(arguments, "--from", LocalDate.MIN);
        LocalDate to = Options.day(arguments, "--to", LocalDate.MAX);
        return from.equals(LocalDate.MIN) && to.equals(LocalDate.MAX) ? filter : filter.between(from, to);
    }
}

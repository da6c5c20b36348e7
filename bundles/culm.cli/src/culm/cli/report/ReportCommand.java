package culm.cli.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import culm.blank.Assessment;
import culm.blank.Spool;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm report FILE [--json] [--out DIR]}: the verdict on one design, its marks, findings and numbers. */
public final class ReportCommand implements Command {
    /** Thread for the knots and what the hand holds, mm; an assumption. */
    static final double TAILS = 300;
    private final Profiles profiles;
    private final Rules rules;
    private final List<Finding> always;

    /** @param profiles the types that are known; @param rules what to judge by; @param always findings on the program itself, such as a plug-in that failed */
    public ReportCommand(Profiles profiles, Rules rules, List<Finding> always) {
        this.profiles = profiles;
        this.rules = rules;
        this.always = List.copyOf(always);
    }

    @Override
    public String name() {
        return "report";
    }

    @Override
    public String arguments() {
        return "FILE [--spool M [--tails MM]] [--json] [--out DIR]";
    }

    @Override
    public String summary() {
        return "says where the sides close, how the lengths stack, and what to change";
    }

    @Override
    public String help() {
        return ReportHelp.text();
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of("--json"), List.of("--out", "--spool", "--tails"));
        Optional<Spool> spool = spool(arguments);
        String file = arguments.only("a design's file");
        DesignedBlank designed = new Bridge(profiles).read(terminal.file(file));
        Assessment assessment = designed.assess();
        List<Finding> findings = new ArrayList<>(designed.judge(assessment, rules));
        findings.addAll(always);
        findings.sort(Comparator.comparing(Finding::severity));
        terminal.out().print(arguments.has("--json") ? ReportJson.text(file, designed.name(), assessment, findings, spool)
                : ReportText.text(designed.name(), assessment, findings, spool));
        if (arguments.value("--out").isPresent()) {
            write(terminal.file(arguments.value("--out").get()), ReportDrawings.of(assessment, designed.limits()), terminal);
        }
        return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR) ? ExitCode.WILL_NOT_WORK : ExitCode.FINE;
    }

    private static Optional<Spool> spool(Arguments arguments) throws CommandException {
        double tails = arguments.number("--tails", 0, 10_000, TAILS);
        if (arguments.value("--spool").isEmpty()) {
            if (arguments.value("--tails").isPresent()) {
                throw CommandException.usage("--tails goes with --spool");
            }
            return Optional.empty();
        }
        return Optional.of(new Spool(1000 * arguments.number("--spool", 0, 100_000, 0), tails));
    }

    private static void write(Path folder, Map<String, String> drawings, Terminal terminal) throws CommandException {
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, String> drawing : drawings.entrySet()) {
                Files.writeString(folder.resolve(drawing.getKey()), drawing.getValue());
                terminal.err().println("wrote " + folder.resolve(drawing.getKey()));
            }
        } catch (IOException e) {
            throw CommandException.unreadable(folder + ": the drawings cannot be written there (" + e.getClass().getSimpleName() + ")");
        }
    }
}

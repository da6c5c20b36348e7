package culm.cli.bench;

import java.util.List;
import java.util.Optional;

import culm.bench.log.LogCsv;
import culm.bench.log.LogDesigns;
import culm.bench.log.Tied;
import culm.bench.wrong.Cause;
import culm.bench.wrong.Company;
import culm.bench.wrong.Explanation;
import culm.bench.wrong.Verdict;
import culm.bench.wrong.WhatWentWrong;
import culm.blank.Blank;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** {@code culm wrong}: what went wrong with one blank of the log. */
public final class WrongCommand implements Command {
    private final Profiles profiles;

    public WrongCommand(Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public String name() {
        return "wrong";
    }

    @Override
    public String arguments() {
        return "LOG NUMBER [--design FILE]";
    }

    @Override
    public String summary() {
        return "says what would explain how a blank of the log closed, and what to check next";
    }

    @Override
    public String help() {
        return """

                  LOG            the reed log: a .log file, or a table (.csv)
                  NUMBER         the number on the blank
                  --design FILE  its design, where the log names none

                Causes are ordered by how far each would have to be off, in units of its own give or take. Causes that need at most 1.5
                times as many units fit about equally well: one blank cannot tell them apart.
                Ends with 0: an answer, 1: it cannot be told, 2: wrong usage, 3: unreadable input.
                """;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException, FileProblemException {
        Arguments arguments = Arguments.read(words, List.of(), List.of("--design"));
        if (arguments.rest().size() != 2) {
            throw CommandException.usage("a reed log's file and the number of a blank are needed");
        }
        String file = arguments.rest().get(0);
        String number = arguments.rest().get(1);
        Bridge bridge = new Bridge(profiles);
        Files files = new Files(bridge, terminal);
        LogCsv.Result read = files.log(file);
        files.told(read.problems());
        List<Tied> found = read.log().stream().filter(t -> t.number().equalsIgnoreCase(number)).toList();
        if (found.size() != 1) {
            throw CommandException.usage(file + " has " + (found.isEmpty() ? "no blank" : found.size() + " blanks") + " number " + number);
        }
        LogDesigns designs = new LogDesigns(bridge, terminal.file(file), arguments.value("--design").isEmpty() ? Optional.empty()
                : Optional.of(terminal.file(arguments.value("--design").get())));
        Optional<Blank> planned = designs.apply(found.get(0));
        designs.problems().forEach(terminal.err()::println);
        if (planned.isEmpty()) {
            throw CommandException.unreadable(file + ": the design of blank " + number + " is not known; give it with --design");
        }
        Explanation e = WhatWentWrong.explain(planned.get(), found.get(0));
        StringBuilder out = new StringBuilder("Blank ").append(found.get(0).number()).append('\n');
        e.sentences().forEach(s -> out.append("  ").append(s).append('\n'));
        Company.of(found.get(0), read.log(), designs).ifPresent(c -> out.append("  ").append(c.text()).append('\n'));
        if (!e.causes().isEmpty()) {
            out.append("\nEach of these alone would explain it; the least far off first\n");
            for (Cause cause : e.causes()) {
                out.append("  ").append(cause.text()).append("\n      ").append(cause.check()).append('\n');
            }
        }
        terminal.out().print(out);
        return e.verdict() == Verdict.CANNOT_TELL ? ExitCode.WILL_NOT_WORK : ExitCode.FINE;
    }
}

package culm.cli.explore;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.blank.Limits;
import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.design.DesignedBlank;
import culm.explore.Study;
import culm.explore.Varied;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;
import culm.model.text.Numbers;

/** The words behind an exploring command: a design's file, then assignments such as {@code tie.length=70:75:0.5}. */
final class Question {
    final String file;
    final DesignedBlank design;
    final List<Assignment> assignments = new ArrayList<>();
    private final Profiles profiles;
    private final Rules rules;
    private final Terminal terminal;

    /** INPUT=VALUE. */
    record Assignment(String input, String value) {
    }

    Question(Arguments arguments, Profiles profiles, Rules rules, Terminal terminal) throws CommandException, FileProblemException {
        this.profiles = profiles;
        this.rules = rules;
        this.terminal = terminal;
        if (arguments.rest().isEmpty()) {
            throw CommandException.usage("a design's file is missing");
        }
        file = arguments.rest().get(0);
        design = read(terminal.file(file));
        for (String word : arguments.rest().subList(1, arguments.rest().size())) {
            int equals = word.indexOf('=');
            if (equals < 1 || equals == word.length() - 1) {
                throw CommandException.usage("'" + word + "' is not INPUT=VALUE");
            }
            assignments.add(new Assignment(word.substring(0, equals), word.substring(equals + 1)));
        }
    }

    DesignedBlank read(Path path) throws FileProblemException {
        return new Bridge(profiles).read(path);
    }

    DesignedBlank readNamed(String name) throws CommandException, FileProblemException {
        return read(terminal.file(name));
    }

    Path path(String name) throws CommandException {
        return terminal.file(name);
    }

    Blank blank() {
        return design.blank();
    }

    Limits limits() {
        return design.limits();
    }

    Study study(List<Varied> varied) throws CommandException {
        try {
            return new Study(blank(), varied, limits(), rules);
        } catch (IllegalArgumentException e) {
            throw CommandException.usage(e.getMessage());
        }
    }

    /** The input's path, if the design has such a number. */
    String number(String input) throws CommandException {
        try {
            Varied.value(blank(), input);
            return input;
        } catch (IllegalArgumentException e) {
            throw CommandException.usage("there is no input '" + input + "' in " + file + "; culm parameters lists them, and shape.width stands for all widths at once");
        }
    }

    /** A whole number option. */
    static long whole(Arguments arguments, String option, long standard, long least, long most) throws CommandException {
        String text = arguments.value(option).orElse(Long.toString(standard)).replace("_", "");
        try {
            long value = Long.parseLong(text);
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw CommandException.usage(option + " needs a whole number, not '" + text + "'");
        }
        throw CommandException.usage(option + " has to be between " + least + " and " + most + ", not " + text);
    }

    static double real(String text, String where) throws CommandException {
        try {
            return Numbers.parse(text);
        } catch (NumberFormatException e) {
            throw CommandException.usage(where + ": '" + text.strip() + "' is not a number (with a point)");
        }
    }
}

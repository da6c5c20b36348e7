package culm.cli.bench;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.figures.paper.Paper;

/** Values of options as what they mean. */
final class Options {
    private Options() {
    }

    static Paper paper(Arguments arguments) throws CommandException {
        String word = arguments.value("--paper").orElse("a4").toLowerCase(Locale.ROOT);
        return switch (word) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            default -> throw CommandException.usage("--paper is a4 or letter, not " + word);
        };
    }

    static LocalDate day(Arguments arguments, String option, LocalDate otherwise) throws CommandException {
        Optional<String> text = arguments.value(option);
        try {
            return text.map(LocalDate::parse).orElse(otherwise);
        } catch (DateTimeException e) {
            throw CommandException.usage(option + ": \"" + text.orElse("") + "\" is no day such as 2026-03-09");
        }
    }
}

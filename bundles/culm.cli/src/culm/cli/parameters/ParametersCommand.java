package culm.cli.parameters;

import java.util.ArrayList;
import java.util.List;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.cli.parameters.Reference.Row;
import culm.cli.parameters.Reference.Section;
import culm.geometry.profile.Profiles;

/** {@code culm parameters [WORD] [--markdown]}: the reference table of every described number, or of those with a word in them. */
public final class ParametersCommand implements Command {
    private final Profiles profiles;

    /** @param profiles the types that are known */
    public ParametersCommand(Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public String name() {
        return "parameters";
    }

    @Override
    public String arguments() {
        return "[WORD] [--markdown]";
    }

    @Override
    public String summary() {
        return "lists every number a design may give: its range, its unit, what is assumed";
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of("--markdown"), List.of());
        String word = arguments.rest().isEmpty() ? "" : arguments.only("a word");
        List<Section> sections = with(word, new Reference(profiles).sections());
        if (sections.isEmpty()) {
            throw CommandException.usage("no number has to do with '" + word + "'");
        }
        terminal.out().print(arguments.has("--markdown") ? ReferenceText.markdown(sections) : ReferenceText.plain(sections));
        return ExitCode.FINE;
    }

    private static List<Section> with(String word, List<Section> all) {
        List<Section> found = new ArrayList<>();
        for (Section s : all) {
            boolean whole = has(s.title(), word) || has(s.id(), word);
            List<Row> rows = s.rows().stream().filter(r -> whole || has(r.path(), word) || has(r.label(), word)).toList();
            if (!rows.isEmpty() || whole && s.rows().isEmpty()) {
                found.add(new Section(s.title(), s.id(), s.help(), rows));
            }
        }
        return found;
    }

    private static boolean has(String text, String word) {
        return text.toLowerCase(java.util.Locale.ROOT).contains(word.toLowerCase(java.util.Locale.ROOT));
    }
}

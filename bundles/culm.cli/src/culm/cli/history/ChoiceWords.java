package culm.cli.history;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import culm.cli.Arguments;
import culm.cli.CommandException;
import culm.design.compare.Choice;
import culm.history.Choices;

/** What was chosen on the command line. */
final class ChoiceWords {
    private ChoiceWords() {
    }

    static Choices read(Arguments arguments) throws CommandException {
        Map<String, Map<String, Choice>> byFile = new HashMap<>();
        if (arguments.value("--choose").isPresent()) {
            for (String one : arguments.value("--choose").get().split(",")) {
                int colon = one.indexOf(':');
                int equals = one.lastIndexOf('=');
                if (colon <= 0 || equals < colon) {
                    throw CommandException.usage("'" + one + "' is no choice; write FILE:PATH=yours, as receive shows it");
                }
                byFile.computeIfAbsent(one.substring(0, colon).strip(), key -> new HashMap<>()).put(one.substring(colon + 1, equals), choice(one.substring(equals + 1)));
            }
        }
        return new Choices(byFile, arguments.value("--rest").isPresent() ? choice(arguments.value("--rest").get()) : null);
    }

    private static Choice choice(String word) throws CommandException {
        return Arrays.stream(Choice.values()).filter(c -> c.name().equalsIgnoreCase(word.strip())).findFirst()
                .orElseThrow(() -> CommandException.usage("one can choose yours, theirs or before, not '" + word + "'"));
    }
}

package culm.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import culm.model.text.Numbers;

/** The words behind a command, told apart: switches, options with a value, and the rest. */
public final class Arguments {
    private final List<String> rest = new ArrayList<>();
    private final Map<String, String> options = new HashMap<>();

    private Arguments() {
    }

    /**
     * Tells the words apart; behind {@code --} nothing is an option.
     *
     * @param words    what followed the command
     * @param switches options without a value
     * @param valued   options followed by their value
     * @throws CommandException for an unknown option, one given twice, or one whose value is missing
     */
    public static Arguments read(List<String> words, List<String> switches, List<String> valued) throws CommandException {
        Arguments result = new Arguments();
        boolean plain = false;
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (plain || !word.startsWith("--")) {
                result.rest.add(word);
            } else if (word.equals("--")) {
                plain = true;
            } else if (switches.contains(word)) {
                result.put(word, "");
            } else if (valued.contains(word)) {
                if (i + 1 == words.size()) {
                    throw CommandException.usage(word + " needs a value behind it");
                }
                result.put(word, words.get(++i));
            } else {
                throw CommandException.usage("there is no option " + word);
            }
        }
        return result;
    }

    private void put(String option, String value) throws CommandException {
        if (options.putIfAbsent(option, value) != null) {
            throw CommandException.usage(option + " is given twice");
        }
    }

    /** Whether a switch was given. */
    public boolean has(String option) {
        return options.containsKey(option);
    }

    /** The value of an option, if it was given. */
    public Optional<String> value(String option) {
        return Optional.ofNullable(options.get(option));
    }

    /**
     * The number behind an option, with a point or a comma.
     *
     * @param least     the least it may be
     * @param most      the most it may be
     * @param otherwise the number when the option is not given
     * @throws CommandException for what is no number or outside the range
     */
    public double number(String option, double least, double most, double otherwise) throws CommandException {
        String text = options.get(option);
        if (text == null) {
            return otherwise;
        }
        try {
            double value = Numbers.parseTyped(text);
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw CommandException.usage(option + ": \"" + text + "\" " + e.getMessage());
        }
        throw CommandException.usage(option + " " + text + " is outside " + Numbers.format(least) + " to " + Numbers.format(most));
    }

    /** The words that are no options. */
    public List<String> rest() {
        return List.copyOf(rest);
    }

    /** The only word that is no option. @param what it stands for, in the sentence when it is not one */
    public String only(String what) throws CommandException {
        if (rest.size() != 1) {
            throw CommandException.usage(rest.isEmpty() ? what + " is missing" : "one file is enough, not " + rest.size());
        }
        return rest.get(0);
    }
}

package culm.cli.history;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.geometry.profile.Profiles;
import culm.history.HistoryException;
import culm.history.Received;
import culm.history.StudioHistory;
import culm.history.Version;

/** {@code culm history STUDIO ...}: versions of a studio, going back, sharing. */
public final class HistoryCommand implements Command {
    private static final Map<String, Integer> WORDS = Map.of("list", 1, "begin", 0, "keep", 0, "changes", 2, "back", 2, "share", 1, "send", 0, "receive", 0, "join", 1);
    private final Profiles profiles;

    /** @param profiles the types that are known, for the words of their numbers */
    public HistoryCommand(Profiles profiles) {
        this.profiles = profiles;
    }

    @Override
    public String name() {
        return "history";
    }

    @Override
    public String arguments() {
        return "STUDIO [begin | keep | changes [VERSION] | back VERSION [FILE] | share ADDRESS | send | receive | join ADDRESS]";
    }

    @Override
    public String summary() {
        return "keeps versions of a studio, says what changed, goes back, and shares it through a folder or server";
    }

    @Override
    public String help() {
        return """
                STUDIO alone lists the versions, the newest first; list FILE those of one file. Nothing is kept before begin.
                  begin [--who NAME]        begins a history in the studio's folder
                  keep [--note WORDS]       keeps what is there as a version; without words it says what changed
                  changes [FROM [TO]]       what changed since the newest version, since FROM, or from FROM to TO
                  back VERSION [FILE]       goes back to a version, with one file or all; what is there is kept first
                  share ADDRESS             shares the studio through a folder or server; no password is stored
                  send                      sends the versions there
                  receive                   takes over what others sent; what both changed is shown, and nothing is taken over until it is chosen:
                                            --rest yours|theirs|before for all, --choose FILE:PATH=yours for one, separated by commas
                  join ADDRESS [--who NAME] puts a studio that others share into the new folder STUDIO
                A server's name and password are asked for, or taken from CULM_USER and CULM_PASSWORD.
                """;
    }

    @Override
    public int run(List<String> words, Terminal terminal) throws CommandException {
        Arguments arguments = Arguments.read(words, List.of(), List.of("--who", "--note", "--rest", "--choose"));
        List<String> rest = new ArrayList<>(arguments.rest());
        if (rest.isEmpty()) {
            throw CommandException.usage("a studio's folder is missing");
        }
        Path studio = terminal.file(rest.remove(0));
        String word = rest.isEmpty() ? "list" : rest.remove(0);
        if (!WORDS.containsKey(word)) {
            throw CommandException.usage("'" + word + "' is nothing that can be done with a history");
        }
        if (rest.size() > WORDS.get(word) || rest.isEmpty() && List.of("back", "share", "join").contains(word)) {
            throw CommandException.usage(word + (rest.isEmpty() ? " needs one word more" : " has too many words behind it"));
        }
        try {
            return begins(word) ? began(studio, word, rest, arguments, terminal) : within(studio, word, rest, arguments, terminal);
        } catch (HistoryException e) {
            throw CommandException.unreadable(e.getMessage());
        }
    }

    private static boolean begins(String word) {
        return word.equals("begin") || word.equals("join");
    }

    private int began(Path studio, String word, List<String> rest, Arguments arguments, Terminal terminal) throws HistoryException, CommandException {
        if (word.equals("begin") && !Files.isDirectory(studio)) {
            throw CommandException.unreadable(studio + ": there is no such folder");
        }
        String who = arguments.value("--who").orElseGet(() -> System.getProperty("user.name", "someone"));
        try (StudioHistory history = word.equals("begin") ? StudioHistory.begin(studio, profiles, who)
                : StudioHistory.join(rest.get(0), studio, profiles, who, new AskedSecrets(terminal))) {
            terminal.out().println(word.equals("begin") ? "The history begins." : "Joined, with every version; the newest: " + history.versions().get(0).title());
            return ExitCode.FINE;
        }
    }

    private int within(Path studio, String word, List<String> rest, Arguments arguments, Terminal terminal) throws HistoryException, CommandException {
        Optional<StudioHistory> opened = StudioHistory.open(studio, profiles);
        if (opened.isEmpty()) {
            throw CommandException.unreadable(studio + ": it has no history; culm history " + studio.getFileName() + " begin starts one");
        }
        try (StudioHistory history = opened.get()) {
            HistoryText text = new HistoryText(terminal.out());
            switch (word) {
                case "list" -> text.versions(rest.isEmpty() ? history.versions() : history.versions(terminal.file(rest.get(0))));
                case "keep" -> text.kept(history.keep(arguments.value("--note").orElse("")));
                case "changes" -> text.changes(rest.isEmpty() ? history.unkept() : rest.size() == 1 ? history.changesSince(history.version(rest.get(0)))
                        : history.changes(history.version(rest.get(0)), history.version(rest.get(1))));
                case "back" -> back(history, rest, terminal);
                case "share" -> {
                    history.share(rest.get(0));
                    terminal.out().println("Shared through " + history.sharedThrough().orElseThrow() + "; send comes next.");
                }
                case "send" -> {
                    history.send(new AskedSecrets(terminal));
                    terminal.out().println("Sent.");
                }
                default -> {
                    Received received = history.receive(new AskedSecrets(terminal), ChoiceWords.read(arguments));
                    text.received(received);
                    return received.outcome() == Received.Outcome.CHOICE_NEEDED ? ExitCode.WILL_NOT_WORK : ExitCode.FINE;
                }
            }
            return ExitCode.FINE;
        }
    }

    private static void back(StudioHistory history, List<String> rest, Terminal terminal) throws HistoryException, CommandException {
        Version version = history.version(rest.get(0));
        history.back(version, rest.size() == 1 ? List.of() : List.of(terminal.file(rest.get(1))));
        terminal.out().println("Back to " + version.shortId() + " " + version.title());
    }
}

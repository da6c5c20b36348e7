package culm.cli.explore;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import culm.blank.rules.Rules;
import culm.cli.Arguments;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.Terminal;
import culm.explore.Watcher;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** What the exploring commands share: how they are read, their threads, their progress, their files. */
abstract class Exploring implements Command {
    static final String INPUTS = """
            An INPUT is a path such as tie.length, gouge.tube or shape.places[3].width; culm parameters lists them.
            shape.width stands for one length added to every width at once.
            """;
    private static final int MOST_THREADS = 64;
    private static final long SAY_EVERY_NANOS = 1_000_000_000L;
    private final Profiles profiles;
    private final Rules rules;

    Exploring(Profiles profiles, Rules rules) {
        this.profiles = profiles;
        this.rules = rules;
    }

    /** The commands that explore. */
    static List<Command> all(Profiles profiles, Rules rules) {
        return List.of(new TolerancesCommand(profiles, rules), new MattersCommand(profiles, rules), new VaryCommand(profiles, rules), new MapCommand(profiles, rules),
                new ChooseCommand(profiles, rules));
    }

    Question question(Arguments arguments, Terminal terminal) throws CommandException, FileProblemException {
        return new Question(arguments, profiles, rules, terminal);
    }

    static int threads(Arguments arguments) throws CommandException {
        return (int) Question.whole(arguments, "--threads", Runtime.getRuntime().availableProcessors(), 1, MOST_THREADS);
    }

    static long seed(Arguments arguments) throws CommandException {
        return Question.whole(arguments, "--seed", 1, Long.MIN_VALUE, Long.MAX_VALUE);
    }

    /** Says how far a run is, once a second. */
    static <R> Watcher<R> watcher(Terminal terminal, String what) {
        long start = System.nanoTime();
        long[] said = {start};
        return new Watcher<>() {
            @Override
            public void progress(long done, long all, Supplier<R> soFar) {
                if (System.nanoTime() - said[0] > SAY_EVERY_NANOS) {
                    said[0] = System.nanoTime();
                    terminal.err().println(Words.say("%,d of %,d %s", done, all, what));
                    terminal.err().flush();
                }
            }
        };
    }

    /** Writes to a file. */
    interface Content {
        void to(OutputStream stream) throws IOException;
    }

    static void write(Path file, Content content, Terminal terminal) throws CommandException {
        try {
            if (file.getParent() != null) {
                Files.createDirectories(file.getParent());
            }
            try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(file))) {
                content.to(stream);
            }
            terminal.err().println("wrote " + file);
        } catch (IOException e) {
            throw CommandException.unreadable(file + " cannot be written (" + e.getClass().getSimpleName() + ")");
        }
    }

    static void draw(Arguments arguments, Map<String, String> drawings, Terminal terminal) throws CommandException {
        if (arguments.value("--out").isPresent()) {
            Path folder = terminal.file(arguments.value("--out").get());
            for (Map.Entry<String, String> drawing : drawings.entrySet()) {
                write(folder.resolve(drawing.getKey()), stream -> stream.write(drawing.getValue().getBytes(java.nio.charset.StandardCharsets.UTF_8)), terminal);
            }
        }
    }
}

package culm.cli.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.blank.rules.Rules;
import culm.cli.Command;
import culm.cli.CommandException;
import culm.cli.ExitCode;
import culm.cli.Terminal;
import culm.design.Bridge;
import culm.geometry.profile.Profiles;
import culm.model.problem.FileProblemException;

/** The bench's commands on a copy of the example studio, without a process. */
class BenchCommandsTest {
    private static final Profiles PROFILES = Profiles.load();
    private static final List<Command> COMMANDS = List.of(new BatchCommand(PROFILES), new CardCommand(PROFILES, Rules.load()), new TemplateCommand(PROFILES),
            new LogCommand(PROFILES), new WrongCommand(PROFILES), new LearnCommand(PROFILES));
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    @TempDir
    private Path studio;

    @BeforeEach
    void copyTheStudio() throws IOException {
        Path examples = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(examples.resolve("examples/studio"))) {
            examples = examples.getParent();
        }
        try (Stream<Path> files = Files.list(examples.resolve("examples/studio"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, studio.resolve(file.getFileName().toString()));
            }
        }
    }

    private int run(String... words) {
        out.reset();
        err.reset();
        Terminal terminal = new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), studio);
        Command command = COMMANDS.stream().filter(c -> c.name().equals(words[0])).findFirst().orElseThrow();
        try {
            return command.run(List.of(words).subList(1, words.length), terminal);
        } catch (CommandException e) {
            terminal.err().println(e.getMessage());
            return e.code();
        } catch (FileProblemException e) {
            terminal.err().println(e.problem().message());
            return ExitCode.UNREADABLE;
        }
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aBatchIsSplitAsItSaysUnlessTheCommandSaysOtherwise() throws Exception {
        Path file = studio.resolve("class-box.batch");
        Files.writeString(file, Files.readString(file).replaceFirst("  <staple id=", "  <tieStep value=\"0.5\"/>\n  <staple id="));
        assertEquals(0, run("batch", "class-box.batch"));
        String halves = out();
        assertTrue(halves.lines().filter(l -> l.contains("tie at")).allMatch(l -> l.matches(".*tie at \\d+\\.[05] mm.*")) && halves.contains("tie at"), halves);
        assertEquals(0, run("batch", "class-box.batch", "--step", "0.1"));
        assertTrue(out().lines().anyMatch(l -> l.matches(".*tie at \\d+\\.[1-46-9] mm.*")), out());
    }

    @Test
    void aBatchIsSplitAndWritten() throws IOException {
        assertEquals(0, run("batch", "class-box.batch", "--design", "trial-14.reed", "--out", "plan"));
        assertTrue(out().contains("17 of 18 staples") && out().contains("13: Dented at the top.") && out().contains("Look again\n  7: Length"), out());
        assertEquals(18, Files.readAllLines(studio.resolve("plan/settings.csv")).stream().filter(l -> !l.startsWith("#")).count() - 1);
    }

    @Test
    void aBatchThatNamesItsDesignNeedsNoOther() throws IOException {
        assertEquals(0, run("batch", "class-box.batch", "--design", "trial-14.reed"));
        String said = out();
        Path other = Files.createDirectories(studio.resolve("boxes")).resolve("class-box.batch");
        Files.writeString(other, Files.readString(studio.resolve("class-box.batch")).replace(">trial-14.reed<", ">../trial-14.reed<"));
        assertEquals(0, run("batch", "class-box.batch"));
        assertEquals(said, out());
        assertEquals(0, run("batch", "boxes/class-box.batch"));
        assertEquals(said, out());
        assertEquals(0, run("batch", "class-box.batch", "--design", "trial-13-two-gouges.reed"));
        assertNotEquals(said, out(), "what the command line says goes first");
    }

    @Test
    void withoutADesignItIsAskedFor() throws IOException {
        String text = Files.readString(studio.resolve("class-box.batch"));
        Files.writeString(studio.resolve("class-box.batch"), text.replace("<design>trial-14.reed</design>", ""));
        assertEquals(2, run("batch", "class-box.batch"));
        assertEquals("--design FILE is missing: class-box.batch does not say which design its staples are meant for\n", err());
        Files.writeString(studio.resolve("box.csv"), "staple;length;top wide;top narrow\n1;47,0;3,38;2,12\n");
        assertEquals(2, run("batch", "box.csv"));
        Files.writeString(studio.resolve("class-box.batch"), text.replace("trial-14.reed", "lost.reed"));
        assertEquals(3, run("batch", "class-box.batch"));
        assertTrue(err().contains("lost.reed: "), err());
        assertEquals(3, run("batch", "none.batch"));
        assertTrue(err().startsWith("none.batch: "), err());
    }

    @Test
    void aTableWithABadRowIsReadAndTheRowNamed() throws IOException {
        Files.writeString(studio.resolve("box.csv"), "staple;length;top wide;top narrow\n1;47,0;3,38;2,12\n2;47,o;3,38;2,12\n3;46,9;3,39;2,11\n");
        assertEquals(1, run("batch", "box.csv", "--design", "trial-14.reed", "--save", "box.batch"));
        assertEquals("box.csv, line 3: the length \"47,o\" is not a number; the row was left out\n", err().lines().findFirst().orElseThrow() + "\n");
        assertTrue(out().contains("2 of 2 staples"), out());
        assertEquals(0, run("batch", "box.batch", "--design", "trial-14.reed"));
        assertEquals(3, run("batch", "box.csv", "--design", "trial-14.reed", "--save", "box.batch"));
        assertTrue(Files.readString(studio.resolve("box.batch")).contains("<batch"));
    }

    @Test
    void wrongUsageAndUnreadableInputAreOneSentence() {
        assertEquals(2, run("batch", "class-box.batch", "--design", "trial-14.reed", "--caliper", "2"));
        assertEquals("--caliper 2 is outside 0 to 1\n", err());
        assertEquals(3, run("batch", "none.csv", "--design", "trial-14.reed"));
        assertTrue(err().startsWith("none.csv: "), err());
        assertEquals(3, run("card", "class.log"));
        assertEquals(2, run("card", "trial-14.reed", "--paper", "a5"));
        assertEquals(2, run("log", "class.log", "--by", "colour"));
        assertEquals(2, run("log", "class.log", "--from", "yesterday"));
        assertEquals(2, run("wrong", "class.log", "999"));
        assertEquals("class.log has no blank number 999\n", err());
    }

    @Test
    void cardsForABlankABatchAndAClass() throws IOException {
        assertEquals(0, run("card", "trial-14.reed", "--for", "Ines", "--number", "27", "--out", "one", "--paper", "letter"));
        assertTrue(Files.readString(studio.resolve("one/card.svg")).contains("Ines"));
        assertTrue(Files.readString(studio.resolve("one/card.svg")).contains("mooring"));
        assertTrue(Files.size(studio.resolve("one/card.pdf")) > 5000);
        assertEquals(0, run("card", "trial-14.reed", "--batch", "class-box.batch", "--out", "sets"));
        assertTrue(Files.exists(studio.resolve("sets/card-2.svg")) && !Files.exists(studio.resolve("sets/card-5.svg")));
        assertEquals(0, run("card", "trial-14.reed", "--batch", "class-box.batch", "--each", "class", "--out", "all"));
        assertTrue(Files.exists(studio.resolve("all/card.svg")));
        assertEquals(1, run("card", "trial-8-overwrapped.reed", "--out", "bad"));
        assertTrue(err().contains("It will not work like this"), err());
        assertTrue(Files.readString(studio.resolve("bad/card.svg")).contains("Do not tie it like this"));
    }

    @Test
    void aTemplateInThreeForms() throws IOException {
        assertEquals(0, run("template", "horn-3.reed", "--out", "t"));
        assertTrue(Files.readString(studio.resolve("t/template.dxf")).contains("AC1009"));
        assertTrue(Files.readString(studio.resolve("t/template.svg")).contains("Width gauge"));
        assertTrue(Files.size(studio.resolve("t/template.pdf")) > 5000);
    }

    @Test
    void theLogByPersonAndBatch() throws IOException {
        assertEquals(0, run("log", "class.log", "--by", "cane", "--only", "person=Mira", "--out", "l"));
        assertTrue(out().startsWith("8 blanks.") && out().contains("reed bank 13") && out().contains("Furthest from the plan"), out());
        for (String name : List.of("log.csv", "leaks.svg", "keepers.svg", "turns.svg", "expected.svg")) {
            assertTrue(Files.exists(studio.resolve("l/" + name)), name);
        }
        assertEquals(0, run("log", "l/log.csv", "--by", "cane", "--design", "trial-14.reed"));
        assertTrue(out().startsWith("8 blanks."), out());
    }

    @Test
    void whatWentWrongPointsToCrooked() {
        assertEquals(0, run("wrong", "class.log", "11"));
        assertTrue(out().contains("points to crooked cane") && out().contains("not to the tie length"), out());
        assertEquals(0, run("wrong", "class.log", "10"));
        assertTrue(out().contains("Each of these alone would explain it"), out());
    }

    @Test
    void whatWasLearnedIsUsedAndDropped() throws Exception {
        assertEquals(0, run("learn", "class.log"));
        assertTrue(out().contains("The cane batch changed there from reed bank 12 to reed bank 13") && out().contains("Worth using."), out());
        String before = Files.readString(studio.resolve("trial-12.reed"));
        assertEquals(2, run("learn", "class.log", "--use", "trial-12.reed"));
        assertEquals(before, Files.readString(studio.resolve("trial-12.reed")));
        assertEquals(0, run("learn", "class.log", "--use", "trial-12.reed", "--of", "Ines"));
        var blank = new Bridge(PROFILES).read(studio.resolve("trial-12.reed")).blank();
        assertTrue(blank.fit().isPresent());
        assertEquals(blank.fit().get().turnsLeft(), culm.blank.Assessor.assess(blank.fit().get().worked().with(culm.blank.Inputs.DELTA, blank.fit().get().delta())).turnsLeft()
                .getAsDouble(), 1e-9);
        assertEquals(0, run("learn", "--drop", "trial-12.reed"));
        assertFalse(new Bridge(PROFILES).read(studio.resolve("trial-12.reed")).blank().fit().isPresent());
        assertEquals(2, run("learn", "--drop", "trial-12.reed"));
    }
}

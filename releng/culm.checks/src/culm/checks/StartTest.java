package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How {@code ./culm} starts what is built: from any folder, any number at once, leaving nothing behind. */
class StartTest {

    private static final Path STUDIO = Tree.ROOT.resolve("examples/studio");
    private static final String WORKS = STUDIO.resolve("trial-12.reed").toString();

    @TempDir
    Path folder;

    @Test
    void aNameCountsFromTheFolderOfTheCallerAndMayHoldSpaces() throws Exception {
        Path mine = Files.createDirectory(folder.resolve("my blanks"));
        Files.copy(STUDIO.resolve("trial-12.reed"), mine.resolve("the first one.reed"));
        Files.copy(STUDIO.resolve("harbour-row.parts"), mine.resolve("harbour-row.parts"));
        CommandLine run = CommandLine.run(mine, "report", "the first one.reed");
        assertEquals(0, run.code(), run.err());
        assertEquals("", run.err());
    }

    @Test
    void manyMayRunAtOnce() throws Exception {
        String alone = CommandLine.run(folder, "report", WORKS, "--json").out();
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            List<Future<CommandLine>> runs = new ArrayList<>();
            for (int i = 0; i < 4; i++)
                runs.add(hands.submit(() -> CommandLine.run(folder, "report", WORKS, "--json")));
            for (Future<CommandLine> run : runs)
                assertEquals(new CommandLine(0, alone, ""), run.get());
        } finally {
            hands.shutdownNow();
        }
    }

    @Test
    void theProgramStaysAsItWasBuilt() throws Exception {
        Map<Path, Long> before = program();
        assertTrue(before.size() > 50, "only " + before.size() + " files in the program");
        CommandLine.run(folder, "report", WORKS);
        assertEquals(before, program());
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(), left.toList());
        }
    }

    @Test
    void withoutADisplayItSaysSoAndReports() throws Exception {
        CommandLine run = CommandLine.run(folder);
        assertEquals(0, run.code(), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains("no display"), run.err());
        assertEquals(CommandLine.run(folder, "report", WORKS).out(), run.out());
    }

    @Test
    void helpIsNoError() throws Exception {
        CommandLine run = CommandLine.run(folder, "help");
        assertEquals(0, run.code());
        assertTrue(run.out().startsWith("usage: culm"), run.out());
        assertEquals("", run.err());
    }

    @Test
    void anUnknownCommandIsWrongUsage() throws Exception {
        CommandLine run = CommandLine.run(folder, "reprot", WORKS);
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().contains("'reprot'"), run.err());
    }

    /** Every file of the built program with the time it was written. */
    private static Map<Path, Long> program() throws IOException {
        Path products = Tree.ROOT.resolve("releng/culm.product/target/products");
        Map<Path, Long> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(products)) {
            for (Path file : all.filter(Files::isRegularFile).toList())
                files.put(file, Files.getLastModifiedTime(file).toMillis());
        }
        return files;
    }
}

package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs that die while they save, or save at the same time. */
class KilledWhileSavingTest {
    private static final int KILLS = Boolean.getBoolean("culm.long") ? 300 : 30;

    @TempDir
    private Path folder;

    @Test
    void theFileIsTheOldOrTheNewOneWhole() throws Exception {
        SplittableRandom random = new SplittableRandom(30);
        Path file = folder.resolve("a.reed");
        for (int i = 0; i < KILLS; i++) {
            Process process = OtherProgram.start("save", file, Integer.toString(i));
            int told = 0;
            try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
                told = Integer.parseInt(out.readLine());
                process.waitFor(random.nextLong(0, 40_000), TimeUnit.MICROSECONDS);
                process.toHandle().destroyForcibly();
                // What it had told by then is still to be read.
                for (String line = out.readLine(); line != null && !line.isEmpty(); line = out.readLine()) {
                    told = Integer.parseInt(line);
                }
            }
            int there = OtherProgram.number(Files.readAllBytes(file));
            assertTrue(there == told || there == told + 1, "told " + told + ", there is " + there);
            if (Files.exists(folder.resolve("a.reed.bak"))) {
                OtherProgram.number(Files.readAllBytes(folder.resolve("a.reed.bak")));
            }
        }
        try (var left = Files.list(folder)) {
            assertTrue(left.count() <= 5, "what dead programs leave is swept up");
        }
    }

    @Test
    void twoProgramsLoseNoUpdate() throws Exception {
        Path file = Files.writeString(folder.resolve("count.reed"), "0");
        Process one = OtherProgram.start("count", file, "100");
        Process two = OtherProgram.start("count", file, "100");
        String again = new String(one.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                + new String(two.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, one.waitFor());
        assertEquals(0, two.waitFor());
        assertEquals("200", Files.readString(file));
        assertTrue(again.contains("again"), "they did meet");
    }
}

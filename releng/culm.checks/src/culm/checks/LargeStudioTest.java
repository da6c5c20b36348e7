package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The maker of large studios, and what measures them, still run; a small one will do here. */
class LargeStudioTest {
    @TempDir
    Path folder;

    @Test
    void aSmallOneIsMadeAndMeasured() throws Exception {
        ProcessBuilder builder = new ProcessBuilder(Tree.ROOT.resolve("releng/large-studio/run").toString(), folder.resolve("large").toString(), "80", "40").redirectErrorStream(true);
        builder.environment().put("CULM_BUILD", "never");
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        assertTrue(said.contains("users of one part") && said.contains("duplicates among all parts"), said);
    }
}

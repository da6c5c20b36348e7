package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

/** Two designs side by side, as a process. */
class CompareTest {
    private static final Path STUDIO = Tree.ROOT.resolve("examples/studio");

    @Test
    void whatStandsBesideEachOtherAddsUp() throws Exception {
        int rows = 0;
        for (String other : List.of("trial-12.reed", "trial-9-open.reed", "trial-10-closes-low.reed")) {
            CommandLine run = CommandLine.run(STUDIO, "compare", "trial-14.reed", other);
            assertEquals(0, run.code(), run.err());
            List<String> computed = run.out().substring(run.out().indexOf("Computed")).lines().toList();
            assertTrue(computed.get(0).endsWith("B less A, as shown"), computed.get(0));
            for (String row : computed.subList(1, computed.size())) {
                String[] words = row.split(" +");
                int last = words.length - 1;
                if (words[last].matches("-?[0-9.]+")) {
                    assertEquals(new BigDecimal(words[last - 1]), new BigDecimal(words[last - 2]).add(new BigDecimal(words[last])), row);
                    rows++;
                }
            }
        }
        assertTrue(rows > 15, rows + " rows");
    }
}

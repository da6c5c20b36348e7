package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Document;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Files broken by chance: each is read or refused with a clear message within two seconds, in the 256 MiB that this
 * whole test has. Those that can still be read are saved and read back the same.
 */
class BrokenFilesTest {
    private static final int MANY = Boolean.getBoolean("culm.long") ? 20_000 : 2_000;
    private static final String[] TRICKS = {"1e308", "-1e308", "NaN", "1e999999999", "9".repeat(5000), "0x10", "1,5",
            "&a;", "&#0;", "&#xD800;", "<!DOCTYPE a>", "<![CDATA[", "]]>", "<!--", "--", "<?x", "<a>".repeat(5000),
            "<length/>".repeat(3000), "\uFFFE", "\u0000", " xmlns:a=\"b\"", "format=\"2\"", "<!ENTITY a \"b\">", "/", "\""};

    private final ModelFiles files = new ModelFiles();
    private final TreeMap<String, Integer> outcomes = new TreeMap<>();

    @Test
    void noBrokenFileCrashesOrHangs() throws Exception {
        List<byte[]> seeds = new ArrayList<>();
        for (String name : new String[] {"full.reed", "unknown.reed", "hand.reed", "full.parts", "full.batch", "full.log"}) {
            seeds.add(Samples.bytes(Samples.text(name)));
        }
        for (int i = 0; i < MANY; i++) {
            byte[] broken = broken(seeds, new SplittableRandom(i));
            int seed = i;
            Quickly.get(() -> check(broken, seed));
        }
        assertEquals(MANY, outcomes.values().stream().mapToInt(Integer::intValue).sum());
        assertTrue(outcomes.size() > 8, "many ways to be broken were tried: " + outcomes);
        assertTrue(outcomes.getOrDefault("read", 0) < MANY / 2, "most were really broken: " + outcomes);
    }

    private Void check(byte[] broken, int seed) throws FileProblemException {
        String outcome;
        try {
            Document document = files.read(broken, "broken", Document.class).document();
            String text = files.text(document);
            assertEquals(text, files.text(files.read(Samples.bytes(text), "again", Document.class).document()),
                    () -> "seed " + seed);
            outcome = "read";
        } catch (FileProblemException e) {
            String message = e.getMessage();
            if (message.startsWith("again")) {
                throw e;
            }
            assertTrue(message.startsWith("broken") && message.length() > 15 && message.length() < 400, message);
            assertFalse(message.contains("\n") || message.contains("Exception"), message);
            outcome = e.problem().kind().name();
        }
        outcomes.merge(outcome, 1, Integer::sum);
        return null;
    }

    private static byte[] broken(List<byte[]> seeds, SplittableRandom random) {
        byte[] bytes = seeds.get(random.nextInt(seeds.size())).clone();
        int times = 1 + random.nextInt(3);
        for (int i = 0; i < times; i++) {
            bytes = switch (random.nextInt(6)) {
                case 0 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
                case 1 -> flipped(bytes, random);
                case 2 -> insert(bytes, TRICKS[random.nextInt(TRICKS.length)].getBytes(StandardCharsets.UTF_8), random);
                case 3 -> insert(bytes, garbage(random), random);
                case 4 -> swapped(bytes, random);
                default -> valueReplaced(bytes, random);
            };
        }
        return bytes;
    }

    private static byte[] flipped(byte[] bytes, SplittableRandom random) {
        for (int i = 0; i < 1 + random.nextInt(8) && bytes.length > 0; i++) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    private static byte[] garbage(SplittableRandom random) {
        byte[] garbage = new byte[random.nextInt(2000)];
        random.nextBytes(garbage);
        return garbage;
    }

    private static byte[] insert(byte[] bytes, byte[] piece, SplittableRandom random) {
        int at = random.nextInt(bytes.length + 1);
        byte[] longer = Arrays.copyOf(bytes, bytes.length + piece.length);
        System.arraycopy(bytes, at, longer, at + piece.length, bytes.length - at);
        System.arraycopy(piece, 0, longer, at, piece.length);
        return longer;
    }

    /** Two lines change places. */
    private static byte[] swapped(byte[] bytes, SplittableRandom random) {
        String[] lines = new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1);
        int a = random.nextInt(lines.length);
        int b = random.nextInt(lines.length);
        String line = lines[a];
        lines[a] = lines[b];
        lines[b] = line;
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** One quoted value becomes a trick. */
    private static byte[] valueReplaced(byte[] bytes, SplittableRandom random) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int start = text.indexOf('"', random.nextInt(text.length() + 1)) + 1;
        int end = text.indexOf('"', start);
        if (start == 0 || end < 0) {
            return bytes;
        }
        String trick = TRICKS[random.nextInt(TRICKS.length)];
        return (text.substring(0, start) + trick + text.substring(end)).getBytes(StandardCharsets.ISO_8859_1);
    }
}

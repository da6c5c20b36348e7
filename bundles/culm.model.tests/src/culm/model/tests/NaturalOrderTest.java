package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.text.NaturalOrder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Names as people sort them. */
class NaturalOrderTest {
    private static final NaturalOrder ORDER = NaturalOrder.INSTANCE;

    @Test
    void numbersStandByTheirValueAndCaseDoesNotMatter() {
        List<String> sorted = List.of("", "English horn 3", "english horn 12", "gouge 0.45", "gouge 0.6", "gouge 10", "term 2/trial-9-open.reed", "term 2/trial-10.reed",
                "term 10/trial-1.reed", "Trial 8", "trial 9", "Trial 10", "trial 14", "trial 123456789012345678901234567890", "trial x");
        List<String> mixed = new ArrayList<>(sorted);
        for (int run = 0; run < 50; run++) {
            Collections.shuffle(mixed, new Random(run));
            mixed.sort(ORDER);
            assertEquals(sorted, mixed);
        }
    }

    @Test
    void namesThatAreAlikeHaveAnOrderTooAndOnlyTheSameIsEqual() {
        List<String> alike = List.of("Trial 07", "Trial 7", "trial 07", "trial 7", "trial 7.0", "trial 7.");
        for (String a : alike) {
            for (String b : alike) {
                assertEquals(a.equals(b), ORDER.compare(a, b) == 0, a + " and " + b);
            }
        }
    }

    @Test
    void itIsAnOrder() {
        Random random = new Random(21);
        List<String> names = new ArrayList<>();
        for (int i = 0; i < 120; i++) {
            StringBuilder name = new StringBuilder();
            for (int k = random.nextInt(7); k > 0; k--) {
                name.append("0129.aA-/\u00e4".charAt(random.nextInt(10)));
            }
            names.add(name.toString());
        }
        for (String a : names) {
            for (String b : names) {
                assertEquals(Integer.signum(ORDER.compare(a, b)), -Integer.signum(ORDER.compare(b, a)), a + " and " + b);
                for (String c : names) {
                    assertTrue(ORDER.compare(a, b) > 0 || ORDER.compare(b, c) > 0 || ORDER.compare(a, c) <= 0, a + ", " + b + ", " + c);
                }
            }
        }
    }
}

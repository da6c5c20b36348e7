package culm.bench.wrong;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import culm.bench.log.GroupBy;
import culm.bench.log.PlannedSeen;
import culm.bench.log.Seen;
import culm.bench.log.Tied;
import culm.bench.log.TiedFrom;
import culm.bench.log.TiedHow;
import culm.blank.Blank;

class CompanyTest {
    private final Blank design = Makers.design();
    private final double planned = PlannedSeen.turns(design).getAsDouble();

    private Tied tied(int number, String by, String cane, double off) {
        return new Tied(Integer.toString(number), Optional.empty(), by, "", new TiedFrom("", "", "", "", cane, "mooring", ""), TiedHow.NOTHING,
                Seen.closing(72.6, 46.5, planned + off, planned + off), "", 0);
    }

    private List<Tied> log(double oldCane, double newCane) {
        List<Tied> log = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            log.add(tied(i, i % 2 == 0 ? "Ines" : "Tomas", i < 8 ? "bank 12" : "bank 13", (i < 8 ? oldCane : newCane) + 0.1 * (i % 3 - 1)));
        }
        return log;
    }

    @Test
    void aCaneBatchThatIsOffIsNamed() {
        List<Tied> log = log(0, -1.2);
        Company company = Company.of(log.get(12), log, t -> Optional.of(design)).orElseThrow();
        assertEquals(GroupBy.CANE, company.by());
        assertEquals(7, company.count());
        assertEquals(-1.2, company.mean(), 0.1);
        assertTrue(company.text().contains("the 7 other blanks with the same cane batch, bank 13, are off the same way, by 1.2 turns on average; the 8 others by 0.0. Look at that cane first"), company.text());
        assertEquals(Optional.empty(), Company.of(log.get(2), log, t -> Optional.of(design)));
    }

    @Test
    void whereAllAreAlikeNobodyIsBlamed() {
        List<Tied> log = log(0.1, 0.1);
        assertEquals(Optional.empty(), Company.of(log.get(12), log, t -> Optional.of(design)));
        assertEquals(Optional.empty(), Company.of(log.get(12), log.subList(10, 16), t -> Optional.of(design)));
        assertEquals(Optional.empty(), Company.of(log.get(12), log, t -> Optional.empty()));
    }
}

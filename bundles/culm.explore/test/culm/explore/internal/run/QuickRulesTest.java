package culm.explore.internal.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeMap;
import java.util.Map;

import org.junit.jupiter.api.Test;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.blank.TopAxes;
import culm.blank.rules.Finding;
import culm.blank.rules.Rule;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;
import culm.explore.Designs;
import culm.explore.internal.fast.BlockCloser;
import culm.explore.internal.fast.Closers;
import culm.explore.internal.fast.Columns;

/** Each rule that ships, judged on columns and by itself. */
class QuickRulesTest {
    private static final int SEEN = Boolean.getBoolean("culm.long") ? 3000 : 150;

    private static Blank changedOver(Blank blank) {
        TopAxes top = TopAxes.of(blank).orElseThrow();
        return blank.edit().set(top.wide(), blank.value(top.narrow()).getAsDouble()).set(top.narrow(), blank.value(top.wide()).getAsDouble()).build();
    }

    @Test
    void judgeAsTheRulesThemselvesDo() {
        Designs designs = new Designs(77);
        Map<String, int[]> seen = new TreeMap<>();
        for (int i = 0; i < SEEN; i++) {
            Blank blank = i % 9 == 0 ? changedOver(designs.next()) : designs.next();
            Columns columns = new Columns(blank, Map.of());
            BlockCloser closer = Closers.of(columns);
            closer.close(1);
            Judge judge = new Judge(Rules.load(), Limits.STANDARD, columns, closer);
            assertEquals(List.of(), judge.oneByOne());
            judge.judge(1);
            Assessment assessment = Assessor.assess(OneByOne.exact(blank));
            for (int r = 0; r < judge.rules().size(); r++) {
                Rule rule = judge.rules().get(r);
                boolean fails = rule.judge(assessment, Limits.STANDARD).stream().map(Finding::severity).anyMatch(s -> s == Severity.ERROR || s == Severity.WARNING);
                boolean quick = (judge.failed()[0] & 1 << r) != 0;
                assertEquals(fails, quick, () -> rule.id() + " on " + blank.inputs() + " " + assessment.troubles());
                seen.computeIfAbsent(rule.id(), x -> new int[2])[fails ? 1 : 0]++;
            }
        }
        seen.forEach((rule, counts) -> System.out.println(rule + ": passed " + counts[0] + ", failed " + counts[1]));
        for (String rule : List.of("overwrapped", "sidesOpen", "turnsLeft", "pinched", "endOfCane", "finishedLength", "crooked", "changedOver", "notComputed")) {
            assertTrue(seen.get(rule)[0] > 0 && seen.get(rule)[1] > 0, rule + " was not seen both ways");
        }
    }
}

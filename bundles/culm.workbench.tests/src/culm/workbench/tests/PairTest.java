package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.pair.PairEditor;

/** Two designs drawn over each other, their results side by side. */
class PairTest extends StudioTest {
    @BeforeEach
    void openStudio() throws Exception {
        ui(() -> Workshop.of(workbench()).studio().open(folder));
        until("the studio is read", () -> Workshop.of(workbench()).studio().index().filter(i -> i.entries().stream().anyMatch(e -> e.file().startsWith(folder))).isPresent());
    }

    private PairEditor compare(String first, String second) throws Exception {
        open(first);
        Shell dialog = dialog("culm.sharing.compare", "Compare with");
        ui(() -> {
            Table table = find(dialog, Table.class).get(0);
            table.setSelection(List.of(Stream.of(table.getItems()).map(i -> i.getText()).toArray()).indexOf(second));
            table.notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
        });
        press(dialog, "OK");
        until("the comparison is shown", () -> page().getActiveEditor() instanceof PairEditor pair && !pair.pending());
        return ui(() -> (PairEditor) page().getActiveEditor());
    }

    @Test
    void whatDiffersStandsSideBySide() throws Exception {
        PairEditor pair = compare("trial-12.reed", "Harbour Row, trial 10");
        keepPicture("two-designs");
        List<String> lines = ui(pair::lines);
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("turns left|1.2|3.4|+2.")), lines.toString());
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("Given, where they differ")), lines.toString());
        List<String[]> numbers = lines.stream().map(l -> l.replace('\u2212', '-').split("\\|")).filter(l -> l.length == 4 && l[3].matches("[+-].*")).toList();
        assertTrue(numbers.size() > 4, lines.toString());
        for (String[] row : numbers) {
            assertEquals(number(row[2]), number(row[1]).add(number(row[3])), String.join("|", row) + " adds up");
        }
        assertEquals(2, ui(() -> pair.verdicts().size()));
        assertTrue(ui(() -> figure("Two reeds").getSize().y) > 200);
    }

    @Test
    void whatIsGivenFollowsTheUnit() throws Exception {
        PairEditor pair = compare("trial-12.reed", "Harbour Row, trial 9");
        List<String> mm = ui(pair::lines);
        assertTrue(mm.contains("shape, width at 26 mm from the fold|4.83 \u00b1 0.03 mm, measured|4.71 \u00b1 0.03 mm, measured|"), mm.toString());
        inThousandths(() -> {
            List<String> thou = ui(pair::lines);
            assertTrue(thou.contains("shape, width at 1023.6 thou from the fold|190.2 \u00b1 1.2 thou, measured|185.4 \u00b1 1.2 thou, measured|"), thou.toString());
            assertTrue(thou.stream().noneMatch(l -> l.matches(".*[0-9\\u2009 ]mm\\b.*")), thou.toString());
            keepPicture("two-designs-thou");
        });
        assertEquals(mm, ui(pair::lines));
    }

    private static java.math.BigDecimal number(String withUnit) {
        return new java.math.BigDecimal(withUnit.replace("+", "").replaceAll("\u2009.*", ""));
    }

    @Test
    void itFollowsTheFiles() throws Exception {
        PairEditor pair = compare("trial-12.reed", "Harbour Row, trial 10");
        Files.writeString(folder.resolve("trial-12.reed"), text("trial-12.reed").replace("<length value=\"72\"", "<length value=\"71.6\""));
        until("the change is shown", () -> pair.lines().stream().anyMatch(l -> l.startsWith("tie length|71.6")));
    }
}

package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.junit.jupiter.api.Test;

import culm.model.LogEntry;
import culm.workbench.internal.bench.grid.Grid;
import culm.workbench.internal.bench.log.LogEditor;

/** A click on a head of the list of blanks sorts it; the chosen blank stays chosen, and the file stays as it is. */
class LogOrderTest extends BenchTest {
    private static final String FILE = "class.log";
    private static final int NUMBER = 10;
    private static final int DAY = 60;

    private void head(LogEditor editor, int x) throws Exception {
        ui(() -> mouse(editor.grid(), SWT.MouseDown, x, 5));
        settle();
    }

    private String number() throws Exception {
        return ui(() -> find(window().getShell(), StyledText.class).stream().filter(t -> "number".equals(t.getData("culm.path"))).findFirst().orElseThrow().getText());
    }

    /** The numbers of all blanks as the list has them. */
    private List<String> listed(LogEditor editor, int many) throws Exception {
        List<String> all = new ArrayList<>();
        for (int row = 0; row < many; row++) {
            int to = row;
            ui(() -> {
                Grid grid = editor.grid();
                grid.choose(to);
            });
            all.add(number());
        }
        return all;
    }

    @Test
    void aClickOnAHeadSortsAndChangesNothingElse() throws Exception {
        LogEditor editor = openLog(FILE);
        String before = ui(() -> editor.session().text());
        List<LogEntry> entries = ui(() -> List.copyOf(editor.session().document().getEntries()));
        List<String> inFile = entries.stream().map(LogEntry::getNumber).toList();
        assertEquals(inFile, listed(editor, inFile.size()));
        ui(() -> editor.choose("17"));
        settle();
        head(editor, NUMBER);
        assertEquals("17", number());
        head(editor, NUMBER);
        assertEquals("17", number(), "the chosen one stays so");
        List<String> down = inFile.stream().sorted(Comparator.comparing(Integer::valueOf, Collections.reverseOrder())).toList();
        assertEquals(down.indexOf("17"), ui(() -> editor.grid().row()), "and is marked where it stands now");
        assertEquals(down, listed(editor, inFile.size()));
        head(editor, DAY);
        List<String> byDay = entries.stream().sorted(Comparator.comparing(LogEntry::getTiedOn, Comparator.nullsLast(Comparator.naturalOrder()))).map(LogEntry::getNumber).toList();
        assertEquals(byDay, listed(editor, inFile.size()));
        assertEquals(before, ui(() -> editor.session().text()));
        assertFalse(ui(editor::isDirty));
    }
}

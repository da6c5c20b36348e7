package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import culm.blank.Inputs;
import culm.blank.export.Exporter;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.plugins.WriteDialog;

/** Plug-ins in the window: listed, named when they fail, and never the end of it. */
class PlugInsWindowTest extends StudioTest {

    private DesignEditor hostile(String id) throws Exception {
        String text = text("trial-12.reed").replaceFirst("<shape link=\"[^\"]*\"/>", "<shape id=\"bad\"><foldedLength value=\"37\" how=\"measured\"/>"
                + "<profile type=\"tests.shape." + id + "\" version=\"1\"><parameter name=\"width\" value=\"6\"/></profile></shape>");
        assertTrue(text.contains("tests.shape." + id));
        Files.writeString(folder.resolve("bad.reed"), text);
        return open("bad.reed");
    }

    @ParameterizedTest
    @CsvSource({ "throwing, out of cane", "noNumber, gives no number", "slow, too slow" })
    void oneThatFailsIsNamedAndTheWindowLives(String id, String how) throws Exception {
        DesignEditor bad = hostile(id);
        until("it is named", () -> session(bad).shown().findings().stream()
                .anyMatch(f -> f.text().contains("hostile, " + id) && f.text().contains("Culm Workbench: tests") && f.text().contains(how)));
        keepPicture("hostile-" + id);
        type(bad, Inputs.TIE_LENGTH, "71");
        assertEquals(71, value(bad, Inputs.TIE_LENGTH), 1e-9);
        ui(() -> {
            for (DesignEditor.Page page : DesignEditor.Page.values()) {
                bad.showPage(page);
            }
        });
        settle();
        DesignEditor good = open("trial-12.reed");
        assertTrue(ui(() -> session(good).shown().assessment().orElseThrow().turnsLeft().isPresent()));
    }

    @Test
    void whoBringsWhatIsListed() throws Exception {
        Shell dialog = dialog("culm.sharing.plugIns", "Plug-ins");
        keepPicture("plug-ins");
        List<String> said = ui(() -> find(dialog, Label.class).stream().map(Label::getText).toList());
        for (String wanted : List.of("straight-sided oval", "culm.staple.oval", "turns left when the sides close", "hostile, throwing", "tests.shape.throwing")) {
            assertTrue(said.contains(wanted), wanted);
        }
        assertTrue(said.stream().anyMatch(s -> s.startsWith("Not in use: ") && s.contains("NotThere")), said.toString());
        assertTrue(said.stream().anyMatch(s -> s.startsWith("Culm Workbench: tests")));
        press(dialog, "Close");
    }

    @Test
    void numbersAreWrittenThroughAnExporter() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        Shell dialog = dialog("culm.sharing.writeAs", "Write numbers and findings");
        keepPicture("write-numbers");
        assertTrue(ui(() -> find(dialog, Table.class).get(0).getItem(0).getText()).startsWith("note in Markdown"));
        press(dialog, "Cancel");
        Exporter note = ui(() -> Workshop.of(workbench()).extensions().exporters().find("culm.export.note").orElseThrow());
        String text = new String(WriteDialog.content(note, "trial 12", ui(() -> session(editor).shown())), StandardCharsets.UTF_8);
        assertTrue(text.contains("trial 12") && text.contains("turns left"), text);
    }

    @Test
    void oneThatCannotBeUsedIsSaidInEveryDesign() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        assertTrue(ui(() -> session(editor).shown().findings().stream().anyMatch(f -> f.text().contains("tests.shape.notThere"))));
    }
}

package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import culm.figures.Drawing;
import culm.figures.Text;
import culm.workbench.internal.bench.paper.CardDialog;
import culm.workbench.internal.bench.paper.PagesDialog;
import culm.workbench.internal.bench.paper.TemplateDialog;
import culm.workbench.internal.editor.DesignEditor;

/** Cards and templates in the window: seen as the page they will be, and written. */
class CardDialogTest extends StudioTest {

    private static String words(Drawing page) {
        return page.flat().stream().filter(Text.class::isInstance).map(i -> ((Text) i).text()).collect(Collectors.joining(" | "));
    }

    private static PagesDialog dialog(Shell shell) {
        return (PagesDialog) shell.getData();
    }

    @Test
    void theCardOfADesignSaysWhatIsTypedAndIsAsLargeAsThePaper() throws Exception {
        DesignEditor editor = open("trial-14.reed");
        type(editor, "tie.length", "71.8");
        Shell shell = dialog("culm.bench.card", "Bench card");
        assertTrue(ui(() -> dialog(shell)) instanceof CardDialog);
        fill(shell, "for", "Ines");
        fill(shell, "number", "27");
        Drawing page = ui(() -> dialog(shell).shown().orElseThrow());
        assertTrue(words(page).contains("Ines") && words(page).contains("27") && words(page).contains("71.8"), words(page));
        assertEquals(210, page.width() / Drawing.UNITS_PER_MM, 1e-6);
        ui(() -> {
            Combo paper = find(shell, Combo.class).stream().filter(c -> "paper".equals(c.getData("culm.ask"))).findFirst().orElseThrow();
            paper.select(1);
            paper.notifyListeners(SWT.Selection, new Event());
        });
        assertEquals(215.9, ui(() -> dialog(shell).shown().orElseThrow()).width() / Drawing.UNITS_PER_MM, 1e-6);
        Path pdf = folder.resolve("card.pdf");
        Path svg = folder.resolve("card.svg");
        ui(() -> {
            dialog(shell).pdf(pdf);
            dialog(shell).svg(svg);
        });
        assertTrue(Files.readString(svg).contains("71.8"));
        assertEquals("%PDF", new String(Files.readAllBytes(pdf), 0, 4, java.nio.charset.StandardCharsets.US_ASCII));
        ui(shell::close);
    }

    @Test
    void templatesAreSeenAndWritten() throws Exception {
        open("trial-14.reed");
        Shell shell = dialog("culm.bench.template", "Templates");
        assertTrue(ui(() -> dialog(shell)) instanceof TemplateDialog);
        String words = words(ui(() -> dialog(shell).shown().orElseThrow()));
        assertTrue(words.contains("Width gauge"), words);
        Path dxf = folder.resolve("cane.dxf");
        ui(() -> ((TemplateDialog) dialog(shell)).dxf(dxf));
        assertTrue(Files.readString(dxf).contains("AC1009"));
        ui(shell::close);
    }
}

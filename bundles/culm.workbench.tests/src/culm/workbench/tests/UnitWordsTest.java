package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.workbench.internal.bench.batch.BatchEditor;
import culm.workbench.internal.bench.log.LogEditor;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.studio.Node;
import culm.workbench.internal.studio.StudioView;

/** What is said at the bench, and what cannot be taken, follows the unit that is chosen. */
class UnitWordsTest extends BenchTest {
    private static final String LENGTH = ".*[0-9] mm\\b.*";

    /** Whether a label of the window says something. */
    private void assertSaid(String words) throws Exception {
        List<String> said = ui(() -> find(window().getShell(), Label.class).stream().map(Label::getText).filter(t -> t.length() > 20).toList());
        assertTrue(said.contains(words), words + " in " + said);
    }

    private static void assertNoMm(List<String> lines) {
        assertTrue(lines.stream().noneMatch(l -> l.matches(LENGTH)), lines.toString());
    }

    @Test
    void whyAStapleIsSetAsideAndWhatIsInDoubt() throws Exception {
        Files.writeString(folder.resolve("class-box.batch"), text("class-box.batch").replace("trial-14.reed", "trial-9-open.reed"));
        BatchEditor editor = openBatch("class-box.batch");
        List<String> mm = ui(editor::notes);
        String aside = "Staple 7: Even tied at 69.0 mm only 0.8 turns would be left: a top of 3.40 x 2.12 mm is too large for this cane.";
        assertTrue(mm.contains(aside), mm.toString());
        inThousandths(() -> {
            List<String> thou = ui(editor::notes);
            assertTrue(thou.stream().anyMatch(n -> n.matches("Staple 7: Even tied at 2717 thou only 0\\.8 turns would be left: a top of 133\\.\\d x 83\\.\\d thou is too large.*")), thou.toString());
            assertTrue(thou.stream().anyMatch(n -> n.matches("Staple 7: Length 1797\\.6.thou is 50\\.\\d.thou less.*")), thou.toString());
            assertNoMm(thou);
            keepPicture("thousandths-aside");
        });
        assertEquals(mm, ui(editor::notes));
    }

    @Test
    void whatABatchCannotTakeIsSaidInTheUnit() throws Exception {
        BatchEditor editor = openBatch("class-box.batch");
        String before = ui(() -> editor.session().text());
        write("caliper", "2");
        assertSaid("It lies between 0 and 1 mm.");
        inThousandths(() -> {
            write("caliper", "50");
            assertSaid("It lies between 0 and 39.4 thou.");
            ui(() -> editor.grid().go(0, 1));
            caliper(editor.grid(), "9000");
            assertSaid("The length 9000 thou is no measure of a staple.");
        });
        assertEquals(before, ui(() -> editor.session().text()));
    }

    @Test
    void whatALogSaysFollowsTheUnit() throws Exception {
        LogEditor editor = openLog("class.log");
        ui(() -> editor.choose("15"));
        for (LogEditor.Page each : List.of(LogEditor.Page.WRONG, LogEditor.Page.WHO, LogEditor.Page.LEARN)) {
            ui(() -> editor.showPage(each));
            shown(editor);
            List<String> mm = ui(editor::lines);
            assertTrue(mm.stream().anyMatch(l -> l.matches(LENGTH)), mm.toString());
            inThousandths(() -> {
                List<String> thou = ui(editor::lines);
                assertTrue(thou.stream().anyMatch(l -> l.matches(".*[0-9] thou\\b.*")), thou.toString());
                assertNoMm(thou);
                keepPicture("thousandths-log-" + each.name().toLowerCase(java.util.Locale.ROOT));
            });
            assertEquals(mm, ui(editor::lines));
        }
    }

    @Test
    void whatALogCannotTakeIsSaidInTheUnit() throws Exception {
        LogEditor editor = openLog("class.log");
        String before = ui(() -> editor.session().text());
        write("tieLength", "7200");
        assertSaid("Tie length 7200 is outside 10 to 150 mm. Usual is 72.1 mm.");
        inThousandths(() -> {
            write("tieLength", "9000");
            assertSaid("Tie length 9000 is outside 393.7 to 5905.5 thou. Usual is 2839 thou.");
        });
        assertEquals(before, ui(() -> editor.session().text()));
    }

    @Test
    void arrowKeysGoInTheUnitsSteps() throws Exception {
        LogEditor log = openLog("class.log");
        ui(() -> log.choose("15"));
        shown(log);
        String mm = ui(() -> log.session().text());
        step("tieLength");
        assertTrue(ui(() -> log.session().text()).contains("<tieLength value=\"72.3\""), "a tenth of a mm");
        command("org.eclipse.ui.edit.undo");
        inThousandths(() -> step("tieLength"));
        assertTrue(ui(() -> log.session().text()).contains("<tieLength value=\"72.2254\""), "one thousandth of an inch");
        command("org.eclipse.ui.edit.undo");
        assertEquals(mm, ui(() -> log.session().text()));
        ui(() -> page().closeEditor(log, false));
        DesignEditor design = open("trial-12.reed");
        inThousandths(() -> step(Inputs.TIE_LENGTH));
        shown(design);
        assertEquals(72.0254, value(design, Inputs.TIE_LENGTH), 1e-9);
    }

    private void step(String path) throws Exception {
        ui(() -> {
            StyledText field = field(path);
            field.setFocus();
            key(field, SWT.ARROW_UP, 0);
        });
    }

    @Test
    void whatADesignCannotTakeIsSaidInTheUnit() throws Exception {
        DesignEditor editor = open("trial-12.reed");
        inThousandths(() -> {
            type(editor, Inputs.TIE_LENGTH, "90000");
            assertSaid("Tie length 90000 is outside 393.7 to 5905.5 thou.");
        });
    }

    @Test
    void whatAFitCannotMeetIsSaidInTheUnit() throws Exception {
        open("trial-12.reed");
        inThousandths(() -> {
            Shell fit = dialog("culm.design.fit", "Start from a blank that works");
            try {
                fill(fit, "turnsSeen", "-2");
                List<String> said = ui(() -> Stream.concat(find(fit, Text.class).stream().map(Text::getText), find(fit, Label.class).stream().map(Label::getText)).toList());
                assertTrue(said.stream().anyMatch(s -> s.strip().matches("-2\\.0 turns left put the closing at 1863 thou, which is not on the cane between \\d{4} thou and the staple's top\\.")),
                        said.toString());
            } finally {
                press(fit, "Cancel");
            }
        });
    }

    @Test
    void theStudiosVerdictsFollowTheUnit() throws Exception {
        openStudio();
        StudioView view = ui(() -> (StudioView) page().showView(StudioView.ID));
        until("the verdict is known", () -> tip(view).contains("open by"));
        String mm = ui(() -> tip(view));
        assertTrue(mm.matches("(?s).*open by 0\\.\\d\\d mm at the staple's top.*"), mm);
        inThousandths(() -> {
            String thou = ui(() -> tip(view));
            assertTrue(thou.matches("(?s).*open by \\d+\\.\\d thou at the staple's top.*"), thou);
            assertFalse(thou.contains(" mm"), thou);
        });
        assertEquals(mm, ui(() -> tip(view)));
    }

    /** What the tree tells of the design that stays open; asked on the workbench's thread. */
    private static String tip(StudioView view) {
        var labels = (DelegatingStyledCellLabelProvider) view.viewer().getLabelProvider(0);
        var tree = (ITreeContentProvider) view.viewer().getContentProvider();
        return Stream.of(tree.getElements(null)).flatMap(group -> Stream.of(tree.getChildren(group))).filter(n -> ((Node) n).words().equals("Harbour Row, trial 9")).findFirst()
                .map(labels::getToolTipText).orElse("");
    }
}

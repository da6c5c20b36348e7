package culm.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.explore.Chosen;
import culm.explore.ToleranceResult;
import culm.explore.Varied;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.DesignEditor;
import culm.workbench.internal.explore.ChoicePage;
import culm.workbench.internal.explore.ExplorePage.Question;
import culm.workbench.internal.explore.RowsCanvas;
import culm.workbench.internal.explore.SpreadRow;
import culm.workbench.internal.explore.TolerancesPage;
import culm.workbench.internal.explore.VariantsFound;
import culm.workbench.internal.explore.VariantsPage;

/** Exploring a design in the window. */
class ExploreTest extends ExploringTest {
    private static final String LONG = "10000000";

    @Test
    void variantsAreSortedFilteredAndComparedWithAPinnedOne() throws Exception {
        VariantsPage page = variants(ask(Question.VARIANTS));
        RowsCanvas table = ui(page::table);
        VariantsFound found = ui(() -> page.found().orElseThrow());
        double own = found.own().turns();
        assertEquals("70.0", ui(() -> table.cell(0, 0)));
        assertEquals(String.format(java.util.Locale.ROOT, "%+.1f", Math.rint(found.line(0).turns() * 10) / 10 - Math.rint(own * 10) / 10).replace('-', '−'), ui(() -> table.cell(0, 3)));
        ui(() -> table.sortBy(2));
        until("sorted", () -> !page.pending());
        int[] rising = ui(() -> table.rows());
        for (int i = 1; i < rising.length; i++) {
            assertTrue(Double.isNaN(found.line(rising[i]).turns()) || found.line(rising[i - 1]).turns() <= found.line(rising[i]).turns());
        }
        ui(() -> table.sortBy(2));
        until("sorted the other way", () -> !page.pending());
        int most = Arrays.stream(rising).filter(r -> !Double.isNaN(found.line(r).turns())).reduce((a, b) -> b).getAsInt();
        assertEquals(most, ui(() -> table.rows()[0]));
        choose("filter", 1);
        until("filtered", () -> !page.pending());
        int[] works = ui(() -> table.rows());
        assertEquals(found.works(), works.length);
        assertTrue(works.length > 0 && works.length < 27 && Arrays.stream(works).allMatch(r -> found.line(r).failed().isEmpty()));
        ui(() -> explore("filter from").setText("1"));
        until("filtered by a number", () -> !page.pending());
        assertArrayEquals(Arrays.stream(works).filter(r -> found.line(r).turns() >= 1).toArray(), ui(() -> table.rows()));
        ui(() -> {
            table.choose(0);
            page.pin();
        });
        VariantsFound.Line pinned = found.line(ui(table::chosen));
        assertEquals(pinned.turns(), ui(() -> table.pinned().turns()));
        assertEquals("0.0", ui(() -> table.cell(0, 3)));
    }

    @Test
    void theFilterIsTypedAndShownInTheUnit() throws Exception {
        VariantsPage page = variants(ask(Question.VARIANTS));
        VariantsFound found = ui(() -> page.found().orElseThrow());
        choose("filter column", 0);
        inThousandths(() -> {
            ui(() -> explore("filter from").setText("2825"));
            until("filtered by a length", () -> !page.pending());
            assertArrayEquals(java.util.stream.IntStream.range(0, 27).filter(r -> found.line(r).values()[0] >= 71.755).toArray(), ui(() -> page.table().rows()).clone());
            assertTrue(ui(() -> explore("filter from").getToolTipText()).endsWith("lengths in thou"), "it says its unit");
        });
        until("the same rows", () -> !page.pending());
        assertEquals("71.755", ui(() -> explore("filter from").getText()));
        assertEquals(15, ui(() -> page.table().rows().length), "ties of 72 to 74 mm");
        assertTrue(ui(() -> explore("filter from").getToolTipText()).endsWith("lengths in mm"));
        choose("filter column", 2);
        until("turns are no lengths", () -> !page.pending());
        assertEquals(0, ui(() -> page.table().rows().length));
    }

    @Test
    void whatMattersCountsInTheUnitsStep() throws Exception {
        DesignEditor editor = ask(Question.MATTERS);
        assertTrue(written("What matters").contains("Turns for 0.01 mm or 1 % more"), written("What matters").toString());
        inThousandths(() -> {
            List<String> thou = written("What matters");
            assertTrue(thou.contains("Turns for 1 thou or 1 % more"), thou.toString());
            assertTrue(ui(() -> find(window().getShell(), Label.class).stream().anyMatch(l -> l.getText().endsWith("the right one what 1 thou or 1 % does."))));
            double swelling = ui(() -> editor.figures().get(0).table().rows().get(0)[1]);
            double width = ui(() -> editor.figures().get(0).table().rows().get(2)[1]);
            List<String> numbers = thou.subList(thou.indexOf("Turns for 1 thou or 1 % more") + 1, thou.size()).stream().filter(w -> !w.isEmpty()).toList();
            assertEquals(culm.figures.Numbers.fixed(swelling, 2), numbers.get(0), "a share stays in percent");
            assertEquals(culm.figures.Numbers.fixed(2.54 * width, 2), numbers.get(2), "one thousandth of an inch is 2.54 hundredths of a mm");
        });
    }

    @Test
    void whatIsKeptFollowsTheUnit() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS, "trial-9-open.reed");
        VariantsPage page = variants(editor);
        ui(() -> page.table().choose(24)); // tie 74, the narrowest
        display().asyncExec(() -> page.actions().keep());
        Shell dialog = shell("Keep as a variant");
        ui(() -> find(dialog, Text.class).get(0).setText("open"));
        press(dialog, "OK");
        until("it is kept", () -> !page.kept().pending() && page.kept().words().size() == 1);
        String mm = ui(() -> page.kept().words().get(0));
        assertTrue(mm.matches("open: sides never close: open by 0\\.\\d\\d mm at the staple's top.*"), mm);
        inThousandths(() -> assertTrue(ui(() -> page.kept().words().get(0)).matches("open: sides never close: open by \\d+\\.\\d thou at the staple's top.*"), ui(() -> page.kept().words().get(0))));
        assertEquals(mm, ui(() -> page.kept().words().get(0)));
    }

    @Test
    void aRowBecomesADesignOfItsOwn() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = variants(editor);
        String before = ui(() -> session(editor).text());
        ui(() -> page.table().choose(2)); // tie 70, all widths 0.1 wider
        VariantsFound.Line line = ui(() -> page.found().orElseThrow().line(page.table().chosen()));
        display().asyncExec(() -> page.actions().open());
        press(shell("Open as a new design"), "OK");
        until("it is open", () -> page().getActiveEditor() instanceof DesignEditor other && other != editor);
        DesignEditor other = ui(() -> (DesignEditor) page().getActiveEditor());
        shown(other);
        assertEquals(line.turns(), ui(() -> session(other).shown().assessment().orElseThrow().turnsLeft().getAsDouble()), 1e-6);
        assertEquals(before, ui(() -> session(editor).text()));
        assertTrue(Files.exists(ui(() -> session(other).file())));
    }

    @Test
    void partsOfTheStudioAreTried() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = ui(() -> editor.explore().variants());
        ui(() -> {
            page.list().rows().get(0).values("71; 72");
            page.list().drop(page.list().rows().get(1));
            page.list().add("shape");
            page.list().add("staple");
            page.run();
        });
        until("the variants are there", () -> !page.pending() && page.found().isPresent());
        assertEquals("", ui(() -> page.bar().said().contains(" pass every rule, give or take aside") ? "" : page.bar().said()));
        VariantsFound found = ui(() -> page.found().orElseThrow());
        int shapes = found.axes().get(1).size();
        int staples = found.axes().get(2).size();
        assertTrue(shapes > 1 && staples > 1, shapes + " shapes, " + staples + " staples");
        assertEquals(2 * shapes * staples, found.table().rows());
        int row = shapes * staples - 1;
        ui(() -> {
            page.table().choose(row);
            page.actions().use();
        });
        shown(editor);
        assertEquals(found.line(row).turns(), ui(() -> session(editor).shown().assessment().orElseThrow().turnsLeft().orElse(Double.NaN)), 1e-6);
        keep("explore-parts");
    }

    @Test
    void aVariantIsKeptUsedAndGivenUp() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = variants(editor);
        String before = ui(() -> session(editor).text());
        ui(() -> page.table().choose(4));
        display().asyncExec(() -> page.actions().keep());
        Shell dialog = shell("Keep as a variant");
        ui(() -> find(dialog, Text.class).get(0).setText("shorter"));
        press(dialog, "OK");
        until("it is kept", () -> !page.kept().pending() && page.kept().words().size() == 1);
        assertTrue(ui(() -> page.kept().words().get(0)).startsWith("shorter: "), ui(() -> page.kept().words().get(0)));
        String kept = ui(() -> session(editor).text());
        assertTrue(kept.contains("<variant id=\"shorter\" name=\"shorter\">"), kept);
        assertEquals(72, value(editor, Inputs.TIE_LENGTH));
        ui(() -> page.kept().use());
        shown(editor);
        assertEquals(70.5, value(editor, Inputs.TIE_LENGTH), 1e-9);
        command("org.eclipse.ui.edit.undo");
        assertEquals(kept, ui(() -> session(editor).text()));
        command("org.eclipse.ui.edit.undo");
        assertEquals(before, ui(() -> session(editor).text()));
        assertFalse(ui(editor::isDirty));
    }

    @Test
    void variantsThatAreStoppedAreShownAsFarAsTheyWereMade() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS, "trial-13-two-gouges.reed");
        VariantsPage page = ui(() -> editor.explore().variants());
        ui(() -> {
            page.list().rows().get(0).values("70 to 74 in 1000");
            page.list().rows().get(1).values("-0.1 to 0.1 in 1000");
            page.run();
        });
        until("some were made", () -> page.bar().said().contains(" of 1,000,000 variants"));
        ui(() -> page.bar().stop());
        until("it has stopped", () -> !page.pending());
        VariantsFound found = ui(() -> page.found().orElseThrow());
        assertTrue(found.table().rows() > 0 && found.table().rows() < 1_000_000, found.table().rows() + " rows");
        assertEquals(found.table().rows(), ui(() -> page.table().rows().length));
        assertTrue(ui(() -> page.bar().said()).startsWith("Stopped after "), ui(() -> page.bar().said()));
    }

    @Test
    void whatIsNoValueIsSaid() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = ui(() -> editor.explore().variants());
        for (String wrong : List.of("", "long", "70 to 75 by 0", "70 to 75 in many", "-4 to 75 by 1", "70; 7o")) {
            ui(() -> {
                page.list().rows().get(0).values(wrong);
                page.run();
            });
            String said = ui(() -> page.bar().said());
            assertTrue(said.endsWith(".") && said.length() > 20, wrong + ": " + said);
            assertFalse(ui(() -> page.bar().running()));
        }
        ui(() -> {
            page.list().rows().get(0).values("70,5 to 71,5 in 3");
            page.run();
        });
        until("a decimal comma is read", () -> !page.pending() && page.found().isPresent());
        assertEquals(71, ui(() -> page.found().orElseThrow().line(9).values()[0]), 1e-9);
    }

    @Test
    void aMapNamesTheRulesThatBoundIt() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = ui(() -> editor.explore().variants());
        ui(() -> {
            page.list().rows().get(0).values("68 to 76 by 0.5");
            page.list().rows().get(1).values("-0.6 to 0.6 by 0.1");
            page.look(VariantsPage.Sight.MAP);
            page.run();
        });
        until("the map is there", () -> !page.pending());
        String said = ui(() -> page.bar().said());
        assertTrue(said.startsWith("Where every rule is passed is bounded by: "), said);
        assertTrue(said.contains("turns left"), said);
        settle();
        ui(() -> {
            Label status = find(page, Label.class).stream().filter(l -> l.getText().equals(page.bar().said())).findFirst().orElseThrow();
            Point whole = status.computeSize(status.getSize().x, SWT.DEFAULT);
            boolean wraps = (status.getStyle() & SWT.WRAP) != 0;
            assertTrue(wraps ? whole.y <= status.getSize().y : status.computeSize(SWT.DEFAULT, SWT.DEFAULT).x <= status.getSize().x, "all of it can be read: " + page.bar().said());
        });
        keep("explore-map");
        List<String> words = ui(() -> figure("Map of two numbers") instanceof culm.workbench.internal.graphs.Figure f ? f.onScreen().orElseThrow() : null).flat().stream()
                .filter(culm.figures.Text.class::isInstance).map(t -> ((culm.figures.Text) t).text()).toList();
        assertTrue(words.contains("tie length, mm") && words.contains("all widths, mm"), words.toString());
        assertTrue(words.contains("passes every rule") && !words.contains("works"), "by its numbers alone no place has a verdict: " + words);
        ui(() -> mouse(figure("Map of two numbers"), org.eclipse.swt.SWT.MouseDown, figure("Map of two numbers").getClientArea().width / 2, 200));
        assertTrue(ui(() -> page.bar().said()).matches("tie length \\d\\d\\.?\\d{0,2}.*"), "as it can be set at the bench: " + ui(() -> page.bar().said()));
        variants(editor, page);
        ui(() -> page.look(VariantsPage.Sight.PARALLEL));
        assertTrue(ui(() -> page.bar().said()).contains(" pass every rule"), "what is said belongs to what is seen: " + ui(() -> page.bar().said()));
        keep("explore-parallel");
        ui(() -> page.look(VariantsPage.Sight.TABLE));
        keep("explore-table");
    }

    @Test
    void howInputsScatterIsWrittenInTheUnitAndReadAsItWasTyped() throws Exception {
        DesignEditor editor = ask(Question.TOLERANCES);
        TolerancesPage page = ui(() -> editor.explore().tolerances());
        String usual = ui(() -> explore("spread " + Inputs.TIE_LENGTH).getText());
        String width = ui(() -> explore("spread gouge.middle").getText());
        assertTrue(usual.endsWith("mm"), usual);
        ui(() -> page.spreads().row(Inputs.TIE_LENGTH).type("0.5"));
        command("culm.window.thou");
        try {
            assertEquals("20", ui(() -> explore("spread " + Inputs.TIE_LENGTH).getText()));
            assertTrue(ui(() -> explore("spread gouge.middle").getText()).matches("\\d\\.\\d\u2009thou"), ui(() -> explore("spread gouge.middle").getText()));
            assertEquals(0.5, ui(() -> page.spreads().row(Inputs.TIE_LENGTH).varied().orElseThrow().spread() instanceof culm.explore.Spread.Uniform u ? u.high() : 0), "not what 20 thou are");
        } finally {
            command("culm.window.mm");
        }
        assertEquals("0.5", ui(() -> explore("spread " + Inputs.TIE_LENGTH).getText()));
        assertEquals(width, ui(() -> explore("spread gouge.middle").getText()));
    }

    @Test
    void mapsAndParallelAxesFollowTheUnit() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = variants(editor);
        ui(() -> page.look(VariantsPage.Sight.PARALLEL));
        assertTrue(written("Variants on parallel axes").contains("tie length, mm"), written("Variants on parallel axes").toString());
        command("culm.window.thou");
        try {
            assertTrue(written("Variants on parallel axes").contains("tie length, thou"), written("Variants on parallel axes").toString());
            keep("explore-parallel-thou");
            ui(() -> page.look(VariantsPage.Sight.MAP));
            until("the map is there", () -> !page.pending());
            assertTrue(written("Map of two numbers").containsAll(List.of("tie length, thou", "all widths, thou")), written("Map of two numbers").toString());
            ui(() -> mouse(figure("Map of two numbers"), org.eclipse.swt.SWT.MouseDown, figure("Map of two numbers").getClientArea().width / 2, 200));
            assertTrue(ui(() -> page.bar().said()).matches("tie length 28\\d\\d(\\.\\d)? thou, all widths [-+]?\\d(\\.\\d)? thou: .*"), ui(() -> page.bar().said()));
            keep("explore-map-thou");
        } finally {
            command("culm.window.mm");
        }
        assertTrue(written("Map of two numbers").contains("tie length, mm"), written("Map of two numbers").toString());
    }

    @Test
    void typedValuesKeepTheirLengthsInAnotherUnit() throws Exception {
        DesignEditor editor = ask(Question.VARIANTS);
        VariantsPage page = variants(editor);
        double first = ui(() -> page.found().orElseThrow().line(0).values()[0]);
        command("culm.window.thou");
        try {
            assertEquals("2756 to 2913 by 20", ui(() -> explore("values").getText()));
            ui(page::run);
            until("the variants are there again", () -> !page.pending());
            assertEquals(27, ui(() -> page.found().orElseThrow().table().rows()), ui(() -> page.bar().said()));
            assertEquals(first, ui(() -> page.found().orElseThrow().line(0).values()[0]), 0);
            ui(() -> page.list().rows().get(0).values("2800; 2850"));
        } finally {
            command("culm.window.mm");
        }
        assertEquals("71.12; 72.39", ui(() -> explore("values").getText()));
    }

    private List<String> written(String figure) throws Exception {
        return ui(() -> ((culm.workbench.internal.graphs.Figure) figure(figure)).onScreen().orElseThrow()).flat().stream()
                .filter(culm.figures.Text.class::isInstance).map(t -> ((culm.figures.Text) t).text()).toList();
    }

    private void variants(DesignEditor editor, VariantsPage page) throws Exception {
        ui(() -> {
            page.look(VariantsPage.Sight.TABLE);
            page.list().add("gouge.middle");
            page.plan().choose(2);
            page.plan().count("2000");
            page.run();
        });
        until("the sample is there", () -> !page.pending() && page.table().rows().length == 2000);
    }

    @Test
    void whatMattersIsRanked() throws Exception {
        DesignEditor editor = ask(Question.MATTERS);
        String said = ui(() -> editor.explore().matters().sentence());
        assertTrue(said.startsWith("Measure better first: "), said);
        assertTrue(ui(() -> editor.figures().get(0).title()).equals("What matters"));
        List<double[]> rows = ui(() -> editor.figures().get(0).table().rows());
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(Math.abs(rows.get(i - 1)[3]) >= Math.abs(rows.get(i)[3]));
        }
        keep("explore-matters");
        double first = rows.get(0)[3];
        type(editor, Inputs.TIE_LENGTH, "74");
        assertNotEquals(first, ui(() -> editor.figures().get(0).table().rows().get(0)[3]), "it follows the design");
    }

    @Test
    void aResultOfOtherSpreadsSaysSo() throws Exception {
        DesignEditor editor = ask(Question.TOLERANCES);
        TolerancesPage page = ui(() -> editor.explore().tolerances());
        until("it has run", () -> page.result().isPresent() && !page.bar().running());
        String ended = ui(() -> page.bar().said());
        String usual = ui(() -> explore("spread " + Inputs.TIE_LENGTH).getText());
        ui(() -> page.spreads().row(Inputs.TIE_LENGTH).type("0.7"));
        assertEquals("What varies has changed since: Run asks anew.", ui(() -> page.bar().said()));
        keepPicture("explore-tolerances-outdated");
        ui(() -> page.spreads().row(Inputs.TIE_LENGTH).type(usual));
        assertEquals(ended, ui(() -> page.bar().said()), "it is what was asked again");
        inThousandths(() -> assertEquals(ended, ui(() -> page.bar().said()), "another unit is no other spread"));
        ui(() -> page.blanks("20,000"));
        assertEquals("What varies has changed since: Run asks anew.", ui(() -> page.bar().said()));
        ui(() -> page.run());
        until("it has run", () -> !page.bar().running());
        assertTrue(ui(() -> page.bar().said()).startsWith("20,000 blanks"), ui(() -> page.bar().said()));
        ui(() -> {
            page.blanks(LONG);
            page.run();
            page.bar().stop(); // perhaps before it could begin
        });
        until("it has ended", () -> !page.bar().running());
        ui(page::run);
        until("it runs", () -> page.bar().said().contains(" of "));
        ui(() -> {
            page.spreads().row(Inputs.TIE_LENGTH).type("0.6");
            page.bar().stop();
        });
        until("it has stopped", () -> !page.bar().running());
        assertEquals("What varies has changed since: Run asks anew.", ui(() -> page.bar().said()), "typed while it ran");
    }

    @Test
    void aToleranceRunIsTheCommandsAndCanBeStopped() throws Exception {
        DesignEditor editor = ask(Question.TOLERANCES);
        TolerancesPage page = ui(() -> editor.explore().tolerances());
        ui(() -> page.run());
        until("it has run", () -> !page.bar().running());
        ToleranceResult whole = ui(() -> page.result().orElseThrow());
        assertEquals(100_000, whole.blanks());
        var blank = ui(() -> session(editor).blank().orElseThrow());
        var rules = ui(() -> Workshop.of(workbench()).rules());
        var study = new culm.explore.Study(blank.blank(), culm.explore.Usual.of(blank.blank()), blank.limits(), rules);
        assertEquals(whole.passed(), culm.explore.ToleranceRun.run(study, 100_000, 1, 2, culm.explore.Watcher.none()).passed());
        keep("explore-tolerances");
        ui(() -> {
            page.spreads().row(Inputs.TIE_LENGTH).choose(SpreadRow.Kind.NORMAL);
            page.spreads().row(Inputs.TIE_LENGTH).type("0.5");
            page.spreads().row(Varied.WIDTH).choose(SpreadRow.Kind.TRIANGULAR);
            page.spreads().row(Varied.WIDTH).type("-0.1; 0; 0.1");
            page.blanks(LONG);
            page.run();
        });
        until("something was found so far", () -> page.result().orElseThrow().blanks() != 100_000 && page.result().orElseThrow().blanks() > 0);
        ui(() -> page.bar().stop());
        until("it has stopped", () -> !page.bar().running());
        ToleranceResult part = ui(() -> page.result().orElseThrow());
        assertTrue(part.partial() && part.blanks() > 0 && part.blanks() < 10_000_000, part.blanks() + " blanks");
        assertTrue(ui(() -> page.bar().said()).startsWith("Stopped after "), ui(() -> page.bar().said()));
        assertTrue(part.passed().value() < whole.passed().value(), "a wilder tie makes fewer work");
        ui(() -> {
            page.spreads().row(Inputs.TIE_LENGTH).type("half a turn");
            page.run();
        });
        assertTrue(ui(() -> page.bar().said()).contains("tie length"), ui(() -> page.bar().said()));
    }

    @Test
    void theBestChoiceIsAppliedAndTakenBack() throws Exception {
        DesignEditor editor = ask(Question.CHOICE, "trial-9-open.reed");
        ChoicePage page = ui(() -> editor.explore().best());
        String before = ui(() -> session(editor).text());
        ui(() -> {
            page.list().rows().get(0).values("70 to 74 by 0.5");
            page.list().add("staple");
            page.run();
        });
        until("it was found", () -> !page.bar().running() && page.chosen().isPresent());
        Chosen chosen = ui(() -> page.chosen().orElseThrow());
        assertTrue(chosen.every() && chosen.certain() && chosen.gain() > 0.2);
        assertTrue(ui(page::sentence).contains("of the blanks pass instead of"), ui(page::sentence));
        keep("explore-choice");
        ui(() -> page.actions().use());
        shown(editor);
        assertEquals(chosen.values().get(0), value(editor, Inputs.TIE_LENGTH), 1e-9);
        assertNotEquals(before, ui(() -> session(editor).text()));
        command("org.eclipse.ui.edit.undo");
        shown(editor);
        assertEquals(before, ui(() -> session(editor).text()));
        assertFalse(ui(editor::isDirty));
        assertEquals(Optional.empty(), ui(() -> session(editor).undoLabel()));
    }

    private void choose(String combo, int item) throws Exception {
        ui(() -> {
            Combo found = find(window().getShell(), Combo.class).stream().filter(c -> combo.equals(c.getData("culm.explore"))).findFirst().orElseThrow();
            found.select(item);
            found.notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
        });
    }

    private Text explore(String name) {
        return find(window().getShell(), Text.class).stream().filter(c -> name.equals(c.getData("culm.explore"))).findFirst().orElseThrow();
    }
}

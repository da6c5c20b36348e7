package culm.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Severity;
import culm.cli.parameters.ParametersCommand;
import culm.cli.parameters.Reference;
import culm.cli.report.ReportCommand;
import culm.geometry.profile.Profiles;

/** The words of the command line without a process: help and reference come from the described numbers. */
class CommandsTest {
    private static final Profiles PROFILES = Profiles.load();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... words) {
        Commands commands = new Commands(List.of(new Commands.Group("A design", List.of(new ReportCommand(PROFILES, Rules.load(), List.of()), new ParametersCommand(PROFILES)))));
        return commands.run(List.of(words), new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                Path.of("").toAbsolutePath()));
    }

    @Test
    void theReferenceHasEveryNumber() {
        assertEquals(0, run("parameters"));
        String text = out.toString(StandardCharsets.UTF_8);
        Inputs.all().forEach((path, p) -> assertTrue(text.contains(path + " ") && text.contains(p.help()), path));
        Limits.all().keySet().forEach(id -> assertTrue(text.contains(id), id));
        PROFILES.staples().all().forEach(type -> {
            assertTrue(text.contains(type.id()), type.id());
            type.parameters().forEach(p -> assertTrue(text.contains("staple." + p.id()), p.id()));
        });
        assertTrue(text.contains("shape.places[row].width"));
        assertTrue(text.contains("10 to 150 mm, assumed 72"), text);
    }

    @Test
    void aWordNarrowsIt() {
        assertEquals(0, run("parameters", "tie length"));
        String text = out.toString(StandardCharsets.UTF_8);
        assertTrue(text.contains("tie.length") && !text.contains("gouge.tube"), text);
        assertEquals(2, run("parameters", "nonsense"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("no number has to do with 'nonsense'"));
    }

    @Test
    void thePageInTheDocsIsTheReferenceOfToday() throws Exception {
        assertEquals(0, run("parameters", "--markdown"));
        Path page = Path.of("../../docs/parameters.md");
        assertEquals(out.toString(StandardCharsets.UTF_8), Files.readString(page), "write it anew with culm parameters --markdown");
    }

    @Test
    void aFileThatCannotBeUsedIsToldInOneSentence() {
        assertEquals(ExitCode.UNREADABLE, run("report", "none.reed"));
        List<String> said = err.toString(StandardCharsets.UTF_8).lines().toList();
        assertEquals(1, said.size(), said.toString());
        assertTrue(said.get(0).startsWith("culm report: none.reed: "), said.toString());
        assertEquals("", out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void helpListsEveryCommandAndExplainsOne() {
        assertEquals(0, run("help"));
        String text = out.toString(StandardCharsets.UTF_8);
        assertTrue(text.contains("\nA design\n  report ") && text.contains("\n  parameters "), text);
        out.reset();
        assertEquals(0, run("help", "report"));
        String one = out.toString(StandardCharsets.UTF_8);
        out.reset();
        assertEquals(0, run("report", "--help"));
        assertEquals(out.toString(StandardCharsets.UTF_8), one);
        assertEquals(2, run("help", "nonsense"));
        assertTrue(err.toString(StandardCharsets.UTF_8).startsWith("culm: there is no command 'nonsense'"));
    }

    @Test
    void everyTableCellIsFilled() {
        for (Reference.Section section : new Reference(PROFILES).sections()) {
            for (Reference.Row row : section.rows()) {
                assertTrue(!row.label().isBlank() && !row.help().isBlank() && !row.range().isBlank() && !row.standard().isBlank(), row.toString());
            }
        }
    }

    @Test
    void helpOfTheReportNamesWhatToMeasureFirst() {
        assertEquals(0, run("report", "--help"));
        String text = out.toString(StandardCharsets.UTF_8);
        assertTrue(text.startsWith("usage: culm report FILE [--spool M [--tails MM]] [--json] [--out DIR]"), text);
        Inputs.all().values().stream().filter(p -> p.measureFirst()).forEach(p -> assertTrue(text.contains(p.help()), p.label()));
        assertTrue(text.contains("assumed 72.00"));
    }

    @Test
    void aPlugInThatFailedIsSaidInTheReport() {
        Finding failed = Finding.of("plugIns", Severity.WARNING, "The rule \"x\" of the plug-in y is not in use.");
        Commands commands = new Commands(List.of(new Commands.Group("A design", List.of(new ReportCommand(PROFILES, Rules.load(), List.of(failed))))));
        int code = commands.run(List.of("report", "../../examples/studio/trial-12.reed"), new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), Path.of("").toAbsolutePath()));
        assertEquals(0, code, err.toString(StandardCharsets.UTF_8));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("is not in use"));
    }
}

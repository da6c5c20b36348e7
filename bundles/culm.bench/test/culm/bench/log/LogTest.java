package culm.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import culm.bench.Blanks;
import culm.bench.csv.CsvStyle;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.explore.Share;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Palette;
import culm.figures.Text;
import culm.figures.font.ShippedFont;
import culm.figures.svg.SvgWriter;
import culm.model.ReedLog;
import culm.model.files.ModelFiles;

class LogTest {
    private static final String TABLE = String.join("\n",
            "number;date;tied by;made for;cane batch;staple batch;shape;tie length;turns on left;turns on right;wrap top;leak folded;leak cut;finished length;keeper;remarks",
            "1;2026-03-02;Ines;Ines;bank 12;May;mooring;72,0;1;1,5;46,5;none;none;70,1;yes;",
            "2;2.3.2026;Ines;;bank 12;May;mooring;72,1;1;1;46,4;none;slight;70;yes;=cmd",
            "3;2026-03-03;Tomas;;bank 13;May;mooring;71,6;2,5;0,5;46,5;leaks;;;;one side",
            "4;2026-03-04;Tomas;Ada;bank 13;May;mooring;72,4;-1;-1;46,5;leaks;leaks;70;no;",
            "5;2026-03-09;Ines;;bank 12;June;mooring;72;1;;46,5;;;;;");

    private static List<Tied> log() {
        LogCsv.Result result = LogCsv.read(TABLE, "class.csv");
        assertEquals(List.of(), result.problems());
        return result.log();
    }

    @Test
    void sharesByPersonAndBatch() {
        List<GroupStats> people = GroupStats.by(GroupBy.PERSON, log());
        assertEquals(List.of("Ines", "Tomas"), people.stream().map(GroupStats::group).toList());
        assertEquals(new Share(1, 2), people.get(0).leaks());
        assertEquals(new Share(2, 2), people.get(1).leaks());
        assertEquals(new Share(2, 2), people.get(0).keepers());
        assertEquals(new Share(1, 2), people.get(1).oneSided());
        assertEquals(1.0833333, people.get(0).meanTurns().getAsDouble(), 1e-6);
        assertEquals(OptionalDouble.empty(), GroupStats.of("x", log().subList(0, 1)).spread());
        assertEquals(List.of("bank 12", "bank 13"), GroupStats.by(GroupBy.CANE, log()).stream().map(GroupStats::group).toList());
        assertEquals("", GroupStats.by(GroupBy.DESIGN, log()).get(0).group());
    }

    @Test
    void plannedAndMeasuredAddUpAsTheyAreShown() {
        Blank planned = Blanks.check();
        Tied first = log().get(0);
        for (Lengths unit : List.of(Lengths.MM, Lengths.THOU)) {
            for (int i = 0; i < 40; i++) {
                Tied tied = new Tied("1", first.on(), "", "", first.from(), first.how(), Seen.closing(71 + 0.05 * i, 46.3 + 0.01 * i, 0.3 + 0.1 * i, 0.5 + 0.05 * i), "", 0);
                List<String> texts = PlannedTable.draw(tied, planned.with(Inputs.TIE_LENGTH, 71.5 + 0.03 * i), 300, unit).flat().stream().filter(Text.class::isInstance)
                        .map(t -> ((Text) t).text().replace('\u2212', '-').replace("+", "")).toList();
                for (String row : List.of("tie length", "top of the wrap", "turns left", "expected, as tied")) {
                    int at = texts.indexOf(row);
                    assertEquals(new BigDecimal(texts.get(at + 2)), new BigDecimal(texts.get(at + 1)).add(new BigDecimal(texts.get(at + 3))), row + " of " + texts);
                }
                assertEquals(tied.seen().turns().getAsDouble(), Double.parseDouble(texts.get(texts.indexOf("turns left") + 2)), 0.0051, "a reading is shown whole");
            }
        }
    }

    @Test
    void noWordsMeetInTheTableOfPlannedAndMeasured() {
        Tied first = log().get(0);
        for (Lengths unit : List.of(Lengths.MM, Lengths.THOU)) {
            Tied tied = new Tied("1", first.on(), "", "", first.from(), first.how(), Seen.closing(71.93, 46.37, 0.3, -0.55), "", 0);
            List<Text> texts = PlannedTable.draw(tied, Blanks.check(), 295, unit).flat().stream().filter(Text.class::isInstance).map(Text.class::cast).toList();
            for (Text a : texts) {
                assertTrue(texts.stream().allMatch(b -> a == b || !a.box(ShippedFont.load()).overlaps(b.box(ShippedFont.load()))), a + " in " + unit);
            }
            assertTrue(texts.stream().anyMatch(t -> t.text().equals("lengths in " + unit.sign())));
        }
    }

    @Test
    void filtersHoldTogether() {
        assertEquals(3, LogFilter.ALL.with(GroupBy.PERSON, "ines").of(log()).size());
        assertEquals(1, LogFilter.ALL.with(GroupBy.PERSON, "Ines").with(GroupBy.STAPLES, "June").of(log()).size());
        assertEquals(2, LogFilter.ALL.between(LocalDate.of(2026, 3, 3), LocalDate.of(2026, 3, 4)).of(log()).size());
        assertEquals(5, LogFilter.ALL.of(log()).size());
    }

    @Test
    void whatIsDryingAndWhatGoesToWhom() {
        LogSummary summary = LogSummary.of(log(), LocalDate.of(2026, 3, 10));
        assertEquals(List.of("3", "5"), summary.drying().stream().map(d -> d.tied().number()).toList());
        assertEquals(7, summary.drying().get(0).days());
        assertEquals(List.of("2"), summary.unheld().stream().map(Tied::number).toList());
        assertEquals(List.of("Ines"), summary.forWhom().stream().map(GroupStats::group).toList());
    }

    @Test
    void plannedAgainstMeasured() {
        PlannedSeen first = PlannedSeen.of(log().get(1), Blanks.check().with(Inputs.FINISHED, 70));
        assertEquals(0.1, first.tie().getAsDouble(), 1e-9);
        assertEquals(-0.1, first.wrapTop().getAsDouble(), 1e-9);
        assertEquals(0, first.finished().getAsDouble(), 1e-9);
        assertEquals(1 - (46.5 - 46.0488965) / 0.41, first.turns().getAsDouble(), 1e-6);
        double closes = culm.blank.ClosingFinder.find(Blanks.check().with(Inputs.TIE_LENGTH, 72.1)).at().orElseThrow();
        assertEquals(1 - (46.4 - closes) / 0.41, first.turnsHere().getAsDouble(), 1e-9);
        assertEquals(OptionalDouble.empty(), PlannedSeen.of(log().get(4), Blanks.check()).finished());
    }

    @ParameterizedTest
    @EnumSource(CsvStyle.class)
    void aLogGoesThroughItsTableAndItsFile(CsvStyle style) throws Exception {
        String csv = LogCsv.write(log(), style);
        assertTrue(csv.contains("'=cmd"), csv);
        LogCsv.Result again = LogCsv.read(csv, "again.csv");
        assertEquals(List.of(), again.problems());
        assertEquals(withoutLines(log()), withoutLines(again.log()));
        ModelFiles files = new ModelFiles();
        String text = files.text(LogModel.write(log(), "class-log", "Class"));
        List<Tied> read = LogModel.read(files.read(text.getBytes(StandardCharsets.UTF_8), "class.log", ReedLog.class).document());
        assertEquals(withoutLines(log()), withoutLines(read));
        assertTrue(read.get(0).line() > 0);
    }

    private static List<Tied> withoutLines(List<Tied> log) {
        return log.stream().map(t -> new Tied(t.number(), t.on(), t.by(), t.madeFor(), t.from(), t.how(), t.seen(), t.remarks(), 0)).toList();
    }

    @Test
    void badRowsAreNamedAndTheRestIsRead() {
        LogCsv.Result result = LogCsv.read(TABLE + "\n6;2026-02-30;A;;;;;72;;;;;;;;\n7;;A;;;;;7x;;;;perhaps;;;;\n;;A;;;;;;;;;;;;;\n8;;A;;;;;72;;;;;;;;", "class.csv");
        assertEquals(6, result.log().size());
        assertEquals(List.of(7, 8, 8, 9), result.problems().stream().map(p -> p.line()).toList());
        assertTrue(result.problems().get(0).message().startsWith("class.csv, line 7: the date \"2026-02-30\""), result.problems().get(0).message());
        assertTrue(result.problems().get(2).message().contains("none of none, slight, leaks"), result.problems().get(2).message());
    }

    @Test
    void chartsSayWhatTheyShow() {
        var font = ShippedFont.load();
        Drawing shares = ShareChart.draw("Leaked", GroupStats.by(GroupBy.PERSON, log()), GroupStats::leaks, 640, font);
        assertEquals("Ines 1 of 2, 50 % (9 to 91 %); Tomas 2 of 2, 100 % (34 to 100 %).", shares.description());
        String turns = SvgWriter.write(LogCharts.turns(log(), GroupBy.PERSON, Limits.STANDARD, 640, 300, font), Palette.PRINT);
        assertTrue(turns.contains("Tomas") && turns.contains("most allowed"));
        List<PlannedSeen> compared = log().stream().map(t -> PlannedSeen.of(t, Blanks.check())).toList();
        assertTrue(SvgWriter.write(LogCharts.expected(compared, 400, 400, font), Palette.PRINT).contains("both agree"));
    }
}

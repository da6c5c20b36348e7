package culm.bench.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import culm.bench.csv.CsvStyle;
import culm.bench.csv.CsvText;
import culm.model.problem.FileProblem;

class BatchCsvTest {
    private static final StapleBatch EMPTY = new StapleBatch("class", List.of(), Caliper.ASSUMED, 0.5);

    private static BatchCsv.Result read(String... lines) {
        return BatchCsv.read(String.join("\n", lines), "class.csv", EMPTY);
    }

    @Test
    void pointAndCommaReadAlike() {
        BatchCsv.Result point = read("staple,length (mm),Top wide,top narrow", "1,47.05,3.38,2.09", "2,46.90,3.40,2.11");
        BatchCsv.Result comma = read("staple;length (mm);Top wide;top narrow", "1;47,05;3,38;2,09", "2;46,90;3,40;2,11");
        BatchCsv.Result pasted = read("1\t47,05\t3,38\t2,09", "2\t46,90\t3,40\t2,11");
        assertEquals(List.of(), point.problems());
        assertEquals(point, comma);
        assertEquals(point, pasted);
        assertEquals(47.05, point.batch().staples().get(0).length().getAsDouble());
    }

    @Test
    void badRowsAreNamedAndTheRestIsRead() {
        BatchCsv.Result result = read("# invented", "staple,length,top wide,top narrow,colour", "1,47.05,3.38,2.09,red", "2,4x.0,3.38,2.09,", "3,47,3,38,2,09",
                "4,47.0,3.38,nan,", "5,\"47.0,3.38,2.09,", "6,470,3.38,2.09,", "7,46.8,3.39,2.10,");
        assertEquals(List.of("1", "7"), result.batch().staples().stream().map(StapleReadings::label).toList());
        assertEquals(List.of(2, 4, 5, 6, 7, 8), result.problems().stream().map(p -> p.line()).toList());
        assertEquals("class.csv, line 4: the length \"4x.0\" is not a number; the row was left out", result.problems().get(1).message());
        assertEquals("4x.0", result.problems().get(1).value());
        assertTrue(result.problems().get(0).message().contains("colour"));
        assertTrue(result.problems().get(2).message().contains("semicolons"));
        assertTrue(result.problems().get(4).message().contains("never closed"));
    }

    @Test
    void repeatedReadingsInColumnsAndRows() {
        BatchCsv.Result result = read("staple;length;length 2;top wide;top narrow", "a;47,01;47,03;3,38;2,09", "b;46,9;;3,37;2,08", "a;47,02;;3,40;2,09");
        assertEquals(2, result.batch().staples().size());
        assertEquals(List.of(47.01, 47.03, 47.02), result.batch().staples().get(0).lengths());
        assertEquals(3.39, result.batch().staples().get(0).topWide().getAsDouble(), 1e-12);
    }

    @Test
    void anEmptyOrHeadlessFileIsAProblemNotAnEmptyBatch() {
        assertEquals("class.csv: there is no staple in it", read("", "# only a remark").problems().get(0).message());
        assertTrue(read("what,ever", "1,2").problems().get(0).message().contains("should name the columns"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(\"x\")", "+1", "-2", "@SUM(A1)", "'=a", "''-b", "'", "plain", "a\tb", "\uFF1Dx", "say \"so\"", "a;b,c", "#1", "'quoted'"})
    void textGoesOutSafelyAndComesBackUnchanged(String text) {
        StapleBatch batch = new StapleBatch("b", List.of(new StapleReadings(text, List.of(47.0, 47.01), List.of(3.38), List.of(2.09), "", text)), new Caliper(0.02), 0.4);
        for (CsvStyle style : CsvStyle.values()) {
            String csv = BatchCsv.write(batch, style);
            assertFalse(csv.lines().anyMatch(l -> l.matches("\"?[=+@].*")), csv);
            BatchCsv.Result back = BatchCsv.read(csv, "b.csv", EMPTY);
            assertEquals(List.of(), back.problems(), csv);
            assertEquals(batch, back.batch(), csv);
        }
    }

    @Test
    void howItIsSplitGoesOutAndComesBack() {
        StapleBatch batch = new StapleBatch("b", List.of(StapleReadings.of("1", 47, 3.38, 2.09)), new Caliper(0.02), 0.4, new SplitBy(0.25, 0.5));
        for (CsvStyle style : CsvStyle.values()) {
            String csv = BatchCsv.write(batch, style);
            assertTrue(csv.contains("# ties in steps of: 0.25 mm") && csv.contains("# turns to spare: 0.5"), csv);
            assertEquals(batch, BatchCsv.read(csv, "b.csv", EMPTY).batch());
        }
    }

    @Test
    void anOlderTableIsSplitAsIsSaidElsewhereAndWhatCannotBeIsNamed() {
        StapleBatch otherwise = new StapleBatch("class", List.of(), Caliper.ASSUMED, 0.5, new SplitBy(0.5, 1));
        BatchCsv.Result older = BatchCsv.read("# caliper: 0.02 mm\nstaple,length,top wide,top narrow\n1,47,3.38,2.09", "class.csv", otherwise);
        assertEquals(List.of(), older.problems());
        assertEquals(new SplitBy(0.5, 1), older.batch().by());
        BatchCsv.Result wrong = BatchCsv.read("# ties in steps of: 0 mm\n# turns to spare: many\nstaple,length,top wide,top narrow\n1,47,3.38,2.09", "class.csv", otherwise);
        assertEquals(new SplitBy(0.5, 1), wrong.batch().by());
        assertEquals(List.of("class.csv: the remark \"ties in steps of\" is outside 0.01 to 5 mm and was left out", "class.csv: the remark \"turns to spare: many\" is not a number and was left out"),
                wrong.problems().stream().map(FileProblem::message).toList());
    }

    @Test
    void onlyWhatWouldRunIsTouched() {
        assertEquals("'=1+1", CsvText.safe("=1+1"));
        assertEquals("12 mm", CsvText.safe("12 mm"));
        assertEquals("''=x", CsvText.safe("'=x"));
        assertEquals("'tis", CsvText.plain("'tis"));
    }

    @Test
    void aPlanNamesEveryStaple() {
        StapleBatch batch = new StapleBatch("b", List.of(StapleReadings.of("-1", 47, 3.38, 2.09), StapleReadings.of("2", 47, 4.4, 3.1)), Caliper.ASSUMED, 0.5);
        BatchPlan plan = new BatchPlanner(culm.blank.Limits.STANDARD, 0.1, 0).plan(culm.bench.Blanks.check(), batch);
        List<String> lines = PlanCsv.write(plan, CsvStyle.COMMA).lines().filter(l -> !l.startsWith("#")).toList();
        assertEquals("1;'-1;47,00;3,38;2,09;72,1;25,1;46,5;1,0;71,2;73,1;", lines.get(1));
        assertTrue(lines.get(2).startsWith("set aside;2;47,00;4,40;3,10;;;;;;;Even tied at 67.0 mm"), lines.get(2));
    }
}

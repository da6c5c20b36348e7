package culm.bench.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import culm.blank.Inputs;
import culm.geometry.words.Told;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem;

class LogChecksTest {
    private static final String HEAD = "number;staple length;tie length;wrap top;finished length\n";
    @TempDir
    Path folder;

    private static List<String> messages(LogCsv.Result result) {
        return result.problems().stream().map(FileProblem::message).toList();
    }

    @Test
    void aTablesRowThatCannotBeIsLeftOutAndSoIsANumberThatStandsTwice() {
        LogCsv.Result read = LogCsv.read(HEAD + "1;47;72;46.5;70\n2;4.7;72;46.5;70\n1;47;71;46.5;70\n3;47;7200;46.5;70", "a.csv");
        assertEquals(List.of("1"), read.log().stream().map(Tied::number).toList());
        assertEquals(List.of("a.csv, line 3: the staple length 4.7 is outside 5 to 100 mm; the row was left out",
                "a.csv, line 4: the number \"1\" is that of the blank in line 2 as well; the row was left out",
                "a.csv, line 5: the tie length 7200 is outside 10 to 150 mm; the row was left out"), messages(read));
    }

    @Test
    void aLengthThatIsHardlyMeantIsKeptAndTold() throws Exception {
        Path table = folder.resolve("a.csv");
        Files.writeString(table, HEAD + "1;47;72;46.5;70\n2;47;72;4.65;70\n3;46.8;72.2;46.3;70");
        LogCsv.Result read = LogFile.read(table, "a.csv");
        assertEquals(3, read.log().size());
        assertEquals(List.of("a.csv, line 3: of blank 2: Top of the wrap 4.65 mm is far from what is usual, 46.4 mm; is a decimal point in the wrong place?"), messages(read));
    }

    @Test
    void whatIsUsualBesideEachIsThatOfTheOthers() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n = 1; n < 12; n++) {
            StringBuilder rows = new StringBuilder(HEAD);
            for (int i = 1; i <= n; i++) {
                rows.append(i).append(";").append(random.nextInt(3) == 0 ? "" : Integer.toString(45 + random.nextInt(4))).append(";72;46.5;\n");
            }
            List<Tied> log = LogCsv.read(rows.toString(), "a.csv").log();
            assertEquals(n, log.size());
            for (LogMeasure measure : LogMeasure.values()) {
                Usual usual = new Usual(measure, log);
                log.stream().filter(t -> measure.value(t).isPresent()).forEach(t ->
                        assertEquals(measure.usual(log.stream().filter(other -> other != t).toList()), usual.beside(measure.value(t).getAsDouble()), measure + " of " + rows));
            }
        }
    }

    @Test
    void aLogsFileIsHeldToTheSame() throws Exception {
        Path log = folder.resolve("a.log");
        List<Tied> good = LogCsv.read(HEAD + "1;47;72;46.5;70\n2;47;72;46.5;70\n3;47;72;46.5;70", "x").log();
        String text = new ModelFiles().text(LogModel.write(good, "a", "A"));
        text = text.replace("<number>2<", "<number>1<");
        int third = text.indexOf("<number>3<");
        Files.writeString(log, text.substring(0, third) + text.substring(third).replace("stapleLength value=\"47\"", "stapleLength value=\"4.7\""));
        LogCsv.Result read = LogFile.read(log, "a.log");
        assertEquals(List.of("1", "1"), read.log().stream().map(Tied::number).toList());
        assertEquals(2, read.problems().size(), messages(read).toString());
        assertTrue(messages(read).stream().anyMatch(m -> m.matches("a\\.log, line \\d+: the number \"1\" is that of the blank in line \\d+ as well; both are counted")), messages(read).toString());
        assertTrue(messages(read).stream().anyMatch(m -> m.matches("a\\.log, line \\d+: the staple length 4\\.7 is outside 5 to 100 mm; the blank was left out")), messages(read).toString());
    }

    @Test
    void rangesAreThoseOfTheDescribedNumbersAndWhatIsUsualComesFromTheLog() {
        for (LogMeasure measure : LogMeasure.values()) {
            assertEquals(Optional.empty(), measure.refusal(measure.described().min(), List.of()));
            assertTrue(measure.refusal(Math.nextDown(measure.described().min()), List.of()).isPresent());
            assertTrue(measure.refusal(Math.nextUp(measure.described().max()), List.of()).isPresent());
        }
        assertEquals(OptionalDouble.of(Inputs.all().get(Inputs.STAPLE_LENGTH).standard()), LogMeasure.STAPLE.usual(List.of()));
        List<Tied> small = LogCsv.read(HEAD + "1;30;;;\n2;31;;;\n3;29;;;", "x").log();
        assertEquals(OptionalDouble.of(30), LogMeasure.STAPLE.usual(small));
        assertEquals("Staple length 4.7 is outside 5 to 100 mm. Usual is 30.0 mm.", Told.mm(LogMeasure.STAPLE.refusal(4.7, small).orElseThrow()));
        assertEquals(Optional.empty(), LogMeasure.STAPLE.doubt(47, small));
        assertTrue(LogMeasure.STAPLE.doubt(61, small).isPresent());
        assertEquals(OptionalDouble.empty(), LogMeasure.FINISHED.usual(small));
        assertEquals(Optional.empty(), LogMeasure.FINISHED.doubt(7, small));
    }
}

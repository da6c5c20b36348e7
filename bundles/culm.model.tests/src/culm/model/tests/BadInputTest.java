package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Design;
import culm.model.PartsFile;
import culm.model.files.FileText;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.xml.XmlParser;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each bad file gives one clear sentence with the file, the line and the value, quickly. */
class BadInputTest {
    private final ModelFiles files = new ModelFiles();

    @Test
    void noFileAFolderAnEmptyFile(@TempDir Path folder) throws IOException {
        assertEquals(Kind.NO_FILE, loadProblem(folder.resolve("none.reed")).kind());
        assertEquals(Kind.NO_FILE, loadProblem(folder).kind());
        Path empty = Files.createFile(folder.resolve("empty.reed"));
        FileProblem problem = loadProblem(empty);
        assertEquals(Kind.EMPTY, problem.kind());
        assertEquals(empty + ": the file is empty", problem.message());
        assertEquals(Kind.EMPTY, problem(" \n\t\n").kind());
    }

    @Test
    void aFileLongerThanAnyStudioNeeds(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("long.reed");
        byte[] long1 = new byte[FileText.LONGEST + 1];
        Arrays.fill(long1, (byte) ' ');
        Files.write(file, long1);
        assertEquals(Kind.TOO_LARGE, loadProblem(file).kind());
    }

    @ParameterizedTest
    @ValueSource(strings = {"forty seven", "<reed", "<reed format=\"1\">", "<reed format=\"1\"></parts>",
            "<reed format=\"1\"/><reed/>", "<reed format=1/>", "<reed format=\"1\" format=\"1\"/>", "\u0000\u0001PK\u0003",
            "<reed format=\"1\">&#0;</reed>", "{\"reed\": 1}"})
    void notXml(String text) {
        FileProblem problem = problem(text);
        assertEquals(Kind.NOT_XML, problem.kind(), problem.message());
        assertTrue(problem.line() >= 1);
        assertFalse(problem.message().contains("\n"), problem.message());
    }

    @Test
    void xmlThatEndsTooEarlyNamesTheLine() {
        assertEquals(3, problem("<reed format=\"1\">\n  <name>a</name>\n  <notes></name>\n</reed>").line());
    }

    @Test
    void anotherRoot() {
        assertEquals("a.reed, line 2: its root is html, but a design (.reed) is needed here",
                problem("<!-- saved -->\n<html/>").message());
        assertEquals("a.reed, line 1: it is a parts file (.parts), but a design (.reed) is needed here",
                problem("<parts format=\"1\"/>").message());
    }

    @Test
    void theFormatIsNeededAndMustBeANumber() {
        assertEquals(Kind.BAD_FORMAT, problem("<reed/>").kind());
        assertEquals(Kind.BAD_FORMAT, problem("<reed format=\"one\"/>").kind());
        assertEquals(Kind.BAD_FORMAT, problem("<reed format=\"0\"/>").kind());
        assertEquals(Kind.BAD_FORMAT, problem("<reed format=\"99999999999999\"/>").kind());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "value=\"NaN\"|NOT_A_NUMBER|length value: \"NaN\" is not a number that can be measured",
            "value=\"Infinity\"|NOT_A_NUMBER|length value: \"Infinity\" is not a number that can be measured",
            "value=\"47,2\"|NOT_A_NUMBER|length value: \"47,2\" has a comma; in a file it is written 47.2",
            "value=\"\"|NOT_A_NUMBER|length value: \"\" is empty, a number belongs here",
            "value=\"47 mm\"|NOT_A_NUMBER|length value: \"47 mm\" is not a number",
            "value=\"1e308\"|NOT_A_NUMBER|length value: \"1e308\" is larger than anything at a bench",
            "value=\"-47\"|OUT_OF_RANGE|length value: \"-47\" is negative",
            "value=\"47\" tolerance=\"-0.1\"|OUT_OF_RANGE|length tolerance: \"-0.1\" is negative",
            "value=\"47\" how=\"guessed\"|BAD_VALUE|length how: \"guessed\" is none of assumed, measured"})
    void aNumberThatIsNone(String attributes, Kind kind, String sentence) {
        FileProblem problem = problem("<reed format=\"1\">\n<staple>\n<length " + attributes + "/>\n</staple></reed>");
        assertEquals(kind, problem.kind());
        assertEquals("a.reed, line 3: " + sentence, problem.message());
    }

    @Test
    void aLengthWrittenAsText() {
        assertEquals("a.reed, line 1: length holds the text \"47\", where none belongs",
                problem("<reed format=\"1\"><staple><length>47</length></staple></reed>").message());
    }

    @Test
    void allBadValuesAreToldAtOnce() {
        var e = assertThrows(FileProblemException.class, () -> read("<reed format=\"1\"><tie><length value=\"a\"/>"
                + "<wrapTop value=\"b\"/></tie><shape><measuredOn>2026-13-01</measuredOn></shape></reed>"));
        assertEquals(3, e.problems().size());
        assertEquals("2026-13-01", problemOf(e, Kind.BAD_VALUE).value());
    }

    @Test
    void theSameThingTwice() {
        assertEquals(Kind.TWICE, problem("<reed format=\"1\"><tie/><tie/></reed>").kind());
        FileProblem twice = problem("""
                <reed format="1"><shape><profile><table name="places">
                <row id="a" width="7"/>
                <row id="a" width="6"/>
                </table></profile></shape></reed>""");
        assertEquals("a.reed, line 3: the id \"a\" stands here and in line 2 as well", twice.message());
        assertEquals(Kind.DUPLICATE_ID, twice.kind());
        assertEquals(Kind.DUPLICATE_ID, problem("<reed format=\"1\"><staple><profile><parameter name=\"a\"/>"
                + "<parameter name=\"a\"/></profile></staple></reed>").kind());
    }

    @Test
    void partsWithOneId() {
        var e = assertThrows(FileProblemException.class, () -> files.read(Samples.bytes(
                "<parts format=\"1\"><staple id=\"a\"/><gouge id=\"a\"/></parts>"), "a.parts", PartsFile.class));
        assertEquals(Kind.DUPLICATE_ID, e.problem().kind());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a b", "a#b", "", "../x", "\u00a0", "-a"})
    void idsThatNoLinkCouldName(String id) {
        assertEquals(Kind.BAD_VALUE, problem("<reed format=\"1\"><staple id=\"" + id + "\"/></reed>").kind());
    }

    @Test
    void entitiesAreNeverResolved(@TempDir Path folder) throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "the secret");
        for (String text : new String[] {
                "<!DOCTYPE reed [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]><reed format=\"1\"><name>&x;</name></reed>",
                "<!DOCTYPE reed SYSTEM \"" + secret.toUri() + "\"><reed format=\"1\"/>",
                "<!DOCTYPE reed [<!ENTITY % p SYSTEM \"" + secret.toUri() + "\"> %p;]><reed format=\"1\"/>",
                "<reed format=\"1\"><name>&x;</name></reed>"}) {
            FileProblem problem = problem(text);
            assertEquals(Kind.ENTITIES, problem.kind(), problem.message());
            assertFalse(problem.message().contains("the secret"));
        }
    }

    @Test
    void entityBombsGoOffNowhere() {
        StringBuilder bomb = new StringBuilder("<!DOCTYPE reed [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 60; i++) {
            bomb.append("<!ENTITY a" + i + " \"" + ("&a" + (i - 1) + ";").repeat(10) + "\">");
        }
        bomb.append("]><reed format=\"1\"><name>&a59;</name></reed>");
        assertEquals(Kind.ENTITIES, problem(bomb.toString()).kind());
    }

    @Test
    void deepNesting() {
        assertEquals(Kind.TOO_LARGE, problem("<a>".repeat(1_000_000)).kind());
        assertEquals(Kind.TOO_LARGE,
                problem("<reed format=\"1\">" + "<x>".repeat(70) + "</x>".repeat(70) + "</reed>").kind());
    }

    @Test
    void moreElementsThanAnyStudioNeeds() {
        assertEquals(Kind.TOO_LARGE, problem("<reed format=\"1\">" + "<a/>".repeat(1_100_000) + "</reed>").kind());
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-32", "ISO-8859-1"})
    void anotherEncoding(String charset) {
        byte[] bytes = "<reed format=\"1\">\n<name>R\u00f6hrchen</name></reed>".getBytes(Charset.forName(charset));
        FileProblem problem = problem(bytes);
        assertTrue(problem.kind() == Kind.ENCODING || problem.kind() == Kind.NOT_XML, problem.message());
        assertEquals(Kind.ENCODING,
                problem("<?xml version=\"1.0\" encoding=\"" + charset + "\"?><reed format=\"1\"/>").kind());
    }

    @Test
    void wrongBytesNameTheirLine() {
        byte[] bytes = "<reed format=\"1\">\n\n<name>R\u00f6hrchen</name></reed>".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals("a.reed, line 3: it is not text in UTF-8; save it again as UTF-8", problem(bytes).message());
    }

    @Test
    void aByteOrderMarkDoesNoHarm() throws FileProblemException {
        assertEquals("a", read("\uFEFF<?xml version=\"1.0\" encoding=\"utf-8\"?><reed format=\"1\" id=\"a\"/>").getId());
    }

    @Test
    void manyProblemsStayFew() {
        var e = assertThrows(FileProblemException.class, () -> read("<reed format=\"1\"><shape><profile><table name=\"p\">"
                + "<row a=\"x\"/>".repeat(50_000) + "</table></profile></shape></reed>"));
        assertTrue(e.problems().size() <= 50);
    }

    @Test
    void manyRowsWithoutIdsAndManyCommentsAreQuick() {
        String rows = "<!-- row --><row width=\"7\"/>".repeat(60_000);
        Quickly.get(() -> files.text(read(
                "<reed format=\"1\"><shape><profile><table name=\"p\">" + rows + "</table></profile></shape></reed>")));
    }

    static Stream<String> pieces() {
        Stream<String> two = Stream.of("<row id=\"$\" fromFold=\"1.5\" width=\"7\"/>", "<a/>");
        return !Boolean.getBoolean("culm.long") ? two : Stream.concat(two, Stream.of("<!---->", "<row/>", "<row><x/></row>",
                "<row a=\"1\" b=\"2\" c=\"3\" d=\"4\" e=\"5\" f=\"6\" g=\"7\" h=\"8\"/>", "<column name=\"$\"/>"));
    }

    @ParameterizedTest
    @MethodSource("pieces")
    void theLargestFilesFitIntoMemory(String piece) {
        StringBuilder text = new StringBuilder("<reed format=\"1\"><shape><inside>");
        int nodes = 1 + (int) piece.chars().filter(c -> c == '=').count() + (piece.contains("<x") ? 1 : 0);
        for (int i = 0; i < (XmlParser.MOST_NODES - 10) / nodes && text.length() < FileText.LONGEST - 100; i++) {
            text.append(piece.replace("$", Integer.toString(i)));
        }
        byte[] bytes = Samples.bytes(text.append("</inside></shape></reed>").toString());
        text.setLength(0);
        text.trimToSize();
        assertDoesNotThrow(() -> files.read(bytes, "a.reed", Design.class));
    }

    private static FileProblem problemOf(FileProblemException e, Kind kind) {
        return e.problems().stream().filter(problem -> problem.kind() == kind).findFirst().orElseThrow();
    }

    private Design read(String text) throws FileProblemException {
        return files.read(Samples.bytes(text), "a.reed", Design.class).document();
    }

    private FileProblem problem(String text) {
        return problem(Samples.bytes(text));
    }

    private FileProblem problem(byte[] bytes) {
        return Quickly.get(() -> assertThrows(FileProblemException.class,
                () -> files.read(bytes, "a.reed", Design.class)).problem());
    }

    private FileProblem loadProblem(Path file) {
        return Quickly.get(() -> assertThrows(FileProblemException.class, () -> files.load(file, Design.class)).problem());
    }
}

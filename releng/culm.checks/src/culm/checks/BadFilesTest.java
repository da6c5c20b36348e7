package culm.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bad input to {@code culm report}: one clear line that names file and value, exit code 3, and nothing printed as a result. */
class BadFilesTest {
    @TempDir
    Path folder;
    private String design;
    private String parts;

    @BeforeEach
    void copyTheStudio() throws IOException {
        Path studio = Tree.ROOT.resolve("examples/studio");
        design = Files.readString(studio.resolve("trial-12.reed"));
        parts = Files.readString(studio.resolve("harbour-row.parts"));
        Files.writeString(folder.resolve("harbour-row.parts"), parts);
    }

    private void refused(String text, String... words) throws Exception {
        Path file = folder.resolve("bad.reed");
        Files.writeString(file, text);
        refusedFile("bad.reed", words);
        assertEquals(text, Files.readString(file));
    }

    private void refusedFile(String file, String... words) throws Exception {
        CommandLine run = CommandLine.run(folder, "report", file);
        assertEquals(3, run.code(), run.err());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        for (String word : words) {
            assertTrue(run.err().contains(word), "\"" + word + "\" is not in: " + run.err());
        }
    }

    @Test
    void noFile() throws Exception {
        refusedFile("nowhere.reed", "nowhere.reed");
    }

    @Test
    void emptyFile() throws Exception {
        refused("", "bad.reed");
    }

    @Test
    void notXml() throws Exception {
        refused("forty-seven and a half", "bad.reed, line 1");
    }

    @Test
    void wrongRoot() throws Exception {
        refused(design.replace("<reed ", "<boat ").replace("</reed>", "</boat>"), "bad.reed, line 2", "boat");
    }

    @Test
    void newerFormat() throws Exception {
        refused(design.replace("format=\"1\"", "format=\"99\""), "bad.reed", "99");
    }

    @Test
    void missingLinkedFileAndPart() throws Exception {
        refused(design.replace("harbour-row.parts#staple-47", "drawer.parts#staple-47"), "bad.reed, line 6", "drawer.parts");
        refused(design.replace("harbour-row.parts#staple-47", "harbour-row.parts#staple-99"), "bad.reed, line 6", "staple-99");
    }

    @Test
    void linkOutOfTheStudio() throws Exception {
        refused(design.replace("harbour-row.parts#staple-47", "../../secret.parts#staple-47"), "bad.reed, line 6");
    }

    @Test
    void notANumber() throws Exception {
        refused(design.replace("value=\"72\"", "value=\"NaN\""), "bad.reed, line 11", "NaN");
        refused(design.replace("value=\"72\"", "value=\"72,5\""), "bad.reed, line 11", "72,5");
    }

    @Test
    void negativeLength() throws Exception {
        refused(design.replace("value=\"72\"", "value=\"-72\""), "bad.reed, line 11", "-72");
    }

    @Test
    void lengthOutOfItsRange() throws Exception {
        refused(design.replace("value=\"72\"", "value=\"7200\""), "bad.reed, line 11", "7200");
    }

    @Test
    void rowsOutOfOrder() throws Exception {
        Files.writeString(folder.resolve("harbour-row.parts"), parts.replace("fromFold=\"10\"", "fromFold=\"3\""));
        refused(design, "harbour-row.parts, line", "out of order");
    }

    /** Not a bad file: what can be told without the plug-in is told. */
    /** Where a plug-in is missing the design still opens: a finding names the type, and nothing is computed. */
    @Test
    void unknownProfileType() throws Exception {
        Files.writeString(folder.resolve("harbour-row.parts"), parts.replace("culm.staple.oval", "someone.else.staple"));
        Files.writeString(folder.resolve("bad.reed"), design);
        CommandLine run = CommandLine.run(folder, "report", "bad.reed", "--json");
        assertEquals(1, run.code(), run.err());
        assertTrue(run.out().contains("someone.else.staple"), run.out());
        assertTrue(run.out().contains("\"sidesCloseAt\": null"), run.out());
    }

    @Test
    void externalEntityIsNeverRead() throws Exception {
        Files.writeString(folder.resolve("secret.txt"), "a secret");
        refused(design.replace("<reed ", "<!DOCTYPE reed [<!ENTITY x SYSTEM \"secret.txt\">]>\n<reed ").replace("<name>", "<name>&x;"), "bad.reed");
    }

    @Test
    void entityBomb() throws Exception {
        StringBuilder bomb = new StringBuilder("<!DOCTYPE reed [<!ENTITY a \"ha\">");
        for (char c = 'b'; c <= 'z'; c++) {
            bomb.append("<!ENTITY ").append(c).append(" \"").append(("&" + (char) (c - 1) + ";").repeat(10)).append("\">");
        }
        refused(design.replace("<reed ", bomb + "]>\n<reed ").replace("<name>", "<name>&z;"), "bad.reed");
    }
}

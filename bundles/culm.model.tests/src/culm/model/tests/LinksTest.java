package culm.model.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import culm.model.Design;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.model.studio.ResolvedPart;
import culm.model.studio.Studio;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts linked from parts files; no link leads out of the studio, none is lost. */
class LinksTest {
    private final ModelFiles files = new ModelFiles();

    @TempDir
    private Path above;
    private Path root;

    @BeforeEach
    void aStudio() throws IOException {
        root = Files.createDirectories(above.resolve("studio"));
        Files.createDirectories(root.resolve("designs"));
        Files.writeString(root.resolve(Studio.LIMITS_FILE), "<limits format=\"1\"/>");
        Files.writeString(root.resolve("class.parts"), """
                <parts format="1">
                  <staple id="s47"><length value="47"/></staple>
                  <staple id="hop" link="class.parts#s47"/>
                  <gouge id="g60"/>
                </parts>""");
        Files.writeString(above.resolve("secret.parts"), "<parts format=\"1\"><staple id=\"s\"/></parts>");
    }

    @Test
    void aLinkedPartIsFound() throws Exception {
        ResolvedPart<?> part = resolve("../class.parts#s47");
        assertTrue(part.linked());
        assertEquals("class.parts", part.shown());
        assertEquals(root.resolve("class.parts"), part.file());
        assertEquals("s47", part.part().getId());
    }

    @Test
    void aPartInTheDesignIsItself() throws Exception {
        Path file = Files.writeString(file(), "<reed format=\"1\"><staple id=\"own\"/></reed>");
        Design design = files.load(file, Design.class).document();
        ResolvedPart<?> part = studio().resolve(file, "a.reed", design.getStaple());
        assertFalse(part.linked());
        assertSame(design.getStaple(), part.part());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "../other.parts#s47|LINK_FILE_MISSING|leads to the file other.parts, which is not there",
            "../class.parts#s48|LINK_PART_MISSING|leads to class.parts, which has no part \"s48\"",
            "../class.parts#g60|LINK_WRONG_KIND|leads to a part of another kind than is needed here",
            "../class.parts#hop|BAD_LINK|leads to a part that is itself only a link",
            "../../secret.parts#s|BAD_LINK|leads out of the studio, which is the folder with studio.limits, or without one the design's own folder",
            "../designs/../../secret.parts#s|BAD_LINK|leads out of the studio, which is the folder with studio.limits, or without one the design's own folder",
            "/etc/passwd#root|BAD_LINK|is not a relative address; links stay inside the studio",
            "C:/secret.parts#s|BAD_LINK|is not a relative address; links stay inside the studio",
            "file:///etc/passwd#s|BAD_LINK|is not a relative address; links stay inside the studio",
            "..\\secret.parts#s|BAD_LINK|has a backslash; folders are separated by /",
            "class.parts|BAD_LINK|is not the address of a part, such as class.parts#staple-47",
            "#s47|BAD_LINK|is not the address of a part, such as class.parts#staple-47",
            "../class.parts#|BAD_LINK|is not the address of a part, such as class.parts#staple-47"})
    void aLinkThatLeadsNowhereIsToldWithItsLine(String link, Kind kind, String secondHalf) throws Exception {
        FileProblem problem = assertThrows(FileProblemException.class, () -> resolve(link)).problem();
        assertEquals(kind, problem.kind());
        assertEquals("designs/a.reed, line 2: the link \"" + link + "\" " + secondHalf, problem.message());
        assertEquals(link, design(link).getStaple().getLink());
        assertTrue(files.text(design(link)).contains(link.replace("\"", "&quot;")), "the address stays");
    }

    @Test
    void aLinkOfTheFileSystemLeadsNotOutEither() throws IOException {
        Files.createSymbolicLink(root.resolve("sly.parts"), above.resolve("secret.parts"));
        assertEquals(Kind.BAD_LINK,
                assertThrows(FileProblemException.class, () -> resolve("../sly.parts#s")).problem().kind());
    }

    @Test
    void aBrokenPartsFileIsToldWithItsOwnLine() throws IOException {
        Files.writeString(root.resolve("class.parts"), "<parts format=\"1\">\n<staple id=\"s47\"><length value=\"x\"/></staple></parts>");
        assertEquals("class.parts, line 2: length value: \"x\" is not a number",
                assertThrows(FileProblemException.class, () -> resolve("../class.parts#s47")).problem().message());
    }

    @Test
    void aPartsFileThatChangedIsReadAgain() throws Exception {
        Studio studio = studio();
        Design design = design("../class.parts#s47");
        assertEquals(47, studio.resolve(file(), "a", design.getStaple()).part().getLength().getValue());
        Files.writeString(root.resolve("class.parts"),
                "<parts format=\"1\"><staple id=\"s47\"><length value=\"46.25\"/></staple></parts>");
        assertEquals(46.25, studio.resolve(file(), "a", design.getStaple()).part().getLength().getValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"designs/a.reed", "designs/term/a.reed", "a.reed"})
    void aLinkIsMadeRelative(String from) throws Exception {
        Link link = Link.between(root.resolve(from), root.resolve("parts/class.parts"), "s47");
        assertEquals(root.resolve("parts/class.parts"), link.from(root.resolve(from)));
        assertFalse(link.toString().contains(above.toString()));
        assertEquals(link, Link.parse(link.toString()));
    }

    @Test
    void withoutLimitsTheStudioIsTheFilesFolder() throws IOException {
        Files.delete(root.resolve(Studio.LIMITS_FILE));
        assertEquals(root.resolve("designs"), Studio.around(file(), files).root());
    }

    private Path file() {
        return root.resolve("designs/a.reed");
    }

    private Studio studio() {
        Studio studio = Studio.around(file(), files);
        assertEquals(root, studio.root());
        return studio;
    }

    private Design design(String link) throws Exception {
        Path file = Files.writeString(file(), "<reed format=\"1\">\n<staple link=\"" + link + "\"/></reed>");
        return files.load(file, Design.class).document();
    }

    private ResolvedPart<?> resolve(String link) throws Exception {
        Design design = design(link);
        return studio().resolve(file(), studio().shown(file()), design.getStaple());
    }
}

package culm.figures.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Gallery;
import culm.figures.Palette;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;

/** Every figure as SVG: well formed, nothing that is no number, a sane size, its size in mm. */
class SvgTest {
    private static Document parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void everyFigureIsWellFormed() throws Exception {
        for (Map.Entry<String, Drawing> figure : Gallery.all().entrySet()) {
            String svg = SvgWriter.write(figure.getValue(), Palette.LIGHT);
            Document document = parse(svg);
            assertEquals("svg", document.getDocumentElement().getTagName());
            assertFalse(svg.contains("NaN") || svg.contains("Infinity"), figure.getKey());
            assertTrue(svg.length() < 120_000, figure.getKey() + " is " + svg.length() + " long");
            assertFalse(svg.contains("href") || svg.contains("<script"), figure.getKey());
            assertEquals(svg, SvgWriter.write(figure.getValue(), Palette.LIGHT));
        }
    }

    @Test
    void theSameFigureIsDrawnAnewWithTheSameText() {
        assertEquals(SvgWriter.write(Gallery.all().get("reed-example"), Palette.PRINT), SvgWriter.write(Gallery.all().get("reed-example"), Palette.PRINT));
    }

    @Test
    void sizeIsInMillimetres() throws Exception {
        Drawing drawing = new Pen().text("a", 0, 0, Anchor.START, Size.BODY, Role.INK).drawing(210 * Drawing.UNITS_PER_MM, 297 * Drawing.UNITS_PER_MM, "t", "");
        Document document = parse(SvgWriter.write(drawing, Palette.PRINT));
        assertEquals("210mm", document.getDocumentElement().getAttribute("width"));
        assertEquals("297mm", document.getDocumentElement().getAttribute("height"));
        assertEquals("0 0 793.701 1122.52", document.getDocumentElement().getAttribute("viewBox"));
    }

    @Test
    void namesFromAnyoneAreOnlyText() throws Exception {
        String name = "</text><script>alert(1)</script> & \"quoted\" \u0000\u001b \ud83d\ude00";
        Drawing drawing = new Pen().text(name, 1, 1, Anchor.START, Size.BODY, Role.INK).drawing(10, 10, name, name);
        Document document = parse(SvgWriter.write(drawing, Palette.LIGHT));
        assertEquals(0, document.getElementsByTagName("script").getLength());
        NodeList texts = document.getElementsByTagName("text");
        assertEquals(name.replace('\u0000', '\uFFFD').replace('\u001b', '\uFFFD'), texts.item(0).getTextContent());
    }

    @Test
    void coloursComeFromThePalette() {
        Drawing drawing = Gallery.all().get("section-46.0");
        assertTrue(SvgWriter.write(drawing, Palette.DARK).contains(Palette.DARK.of(Role.THREAD).hex()));
        assertFalse(SvgWriter.write(drawing, Palette.DARK).contains(Palette.LIGHT.of(Role.THREAD).hex()));
    }
}

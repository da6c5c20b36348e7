package culm.extensions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Each point's schema is complete, and its example is one that the build compiles. */
class SchemaTest {
    @ParameterizedTest
    @ValueSource(strings = {"stapleTypes", "gougeTypes", "shapeTypes", "rules", "exporters"})
    void isComplete(String name) throws Exception {
        Point<?> point = Point.all().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
        Document schema = xml(Files.readString(Path.of("schema", name + ".exsd")));
        Map<String, String> sections = sections(schema);
        assertEquals(Set.of("since", "examples", "apiinfo", "implementation", "copyright"), sections.keySet());
        sections.forEach((section, text) -> assertTrue(text.strip().length() >= 5, section));
        assertTrue(sections.get("apiinfo").contains(point.kind().getName()), "the interface is named");
        NodeList attributes = schema.getElementsByTagName("attribute");
        for (int i = 0; i < attributes.getLength(); i++) {
            assertTrue(!((Element) attributes.item(i)).getElementsByTagName("documentation").item(0).getTextContent().isBlank());
        }
        String example = sections.get("examples");
        Element extension = xml(example.substring(example.indexOf("<extension"))).getDocumentElement();
        assertEquals(point.fullName(), extension.getAttribute("point"));
        Element one = (Element) extension.getElementsByTagName(point.element()).item(0);
        assertTrue(builtExample(point, one), () -> one.getAttribute("id") + " is not in the plug-in that the example names");
    }

    private static boolean builtExample(Point<?> point, Element example) throws Exception {
        String type = example.getAttribute("class");
        for (String folder : new String[] {"../culm.geometry", "../culm.blank", "../../examples/culm.example.plugin"}) {
            if (!Files.exists(Path.of(folder, "src", type.replace('.', '/') + ".java"))) {
                continue;
            }
            NodeList all = xml(Files.readString(Path.of(folder, "plugin.xml"))).getElementsByTagName(point.element());
            for (int i = 0; i < all.getLength(); i++) {
                Element one = (Element) all.item(i);
                if (one.getAttribute("id").equals(example.getAttribute("id")) && one.getAttribute("class").equals(type)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Map<String, String> sections(Document schema) {
        Map<String, String> found = new HashMap<>();
        NodeList all = schema.getElementsByTagName("meta.section");
        for (int i = 0; i < all.getLength(); i++) {
            Element section = (Element) all.item(i);
            Element annotation = (Element) section.getParentNode().getParentNode();
            found.put(section.getAttribute("type"), annotation.getElementsByTagName("documentation").item(0).getTextContent());
        }
        return found;
    }

    private static Document xml(String text) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(text.strip().getBytes(StandardCharsets.UTF_8)));
    }
}

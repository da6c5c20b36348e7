package culm.model.xml;

import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.namespace.QName;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads XML into a small tree. Document types and entities are refused, never resolved; depth and number of nodes are
 * limited, so that no file can make it slow or large.
 */
public final class XmlParser {
    /** Elements inside each other. */
    public static final int DEEPEST = 64;
    /** Elements, attributes, comments and pieces of text; 10,000 parts with all their values are about 750,000. */
    public static final int MOST_NODES = 900_000;

    private static final int LONGEST_DETAIL = 160;
    private static final Pattern ENTITY = Pattern.compile("&(?!amp;|lt;|gt;|quot;|apos;)([\\p{L}_][\\p{L}\\p{N}_.:-]*);?");

    private final String file;
    private final String all;
    private final XMLStreamReader reader;
    private final Deque<XmlNode> open = new ArrayDeque<>();
    private final List<XmlNode> before = new ArrayList<>();
    private final List<XmlNode> after = new ArrayList<>();
    private final Map<String, String> names = new HashMap<>();
    private XmlNode root;
    private int nodes;

    private XmlParser(String file, String all, XMLStreamReader reader) {
        this.file = file;
        this.all = all;
        this.reader = reader;
    }

    /**
     * Reads a file's text.
     *
     * @param file its name for messages
     * @param text the whole text
     * @return the tree
     * @throws FileProblemException when it is not XML or goes beyond the limits
     */
    public static XmlTree parse(String file, String text) throws FileProblemException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("entities are not resolved");
        });
        XMLStreamReader reader = null;
        try {
            reader = factory.createXMLStreamReader(new StringReader(text));
            XmlTree tree = new XmlParser(file, text, reader).read();
            reader.close();
            return tree;
        } catch (XMLStreamException e) {
            throw new FileProblemException(notXml(file, text, reader, e));
        } catch (RuntimeException e) {
            // The platform's parser throws all sorts on broken text.
            throw new FileProblemException(notXml(file, text, reader, e));
        }
    }

    private XmlTree read() throws XMLStreamException, FileProblemException {
        checkEncoding();
        StringBuilder text = new StringBuilder();
        int line = line();
        while (reader.hasNext()) {
            int event = reader.next();
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> {
                    flush(text, line);
                    start(open.isEmpty() ? rootLine() : line);
                }
                case XMLStreamConstants.END_ELEMENT -> end(text, line);
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE -> text
                        .append(reader.getText());
                case XMLStreamConstants.COMMENT -> {
                    flush(text, line);
                    add(XmlNode.comment(reader.getText(), line));
                }
                case XMLStreamConstants.PROCESSING_INSTRUCTION -> {
                    flush(text, line);
                    add(XmlNode.instruction(reader.getPITarget(), reader.getPIData(), line));
                }
                case XMLStreamConstants.DTD -> throw problem(Kind.ENTITIES, line, "<!DOCTYPE",
                        "it has a document type (DOCTYPE); Culm reads none and resolves no entities");
                case XMLStreamConstants.ENTITY_REFERENCE ->
                    throw new FileProblemException(entity(file, line, reader.getLocalName()));
                default -> {
                }
            }
            line = line();
        }
        return new XmlTree(before, root, after);
    }

    private void checkEncoding() throws FileProblemException {
        String declared = reader.getCharacterEncodingScheme();
        if (declared != null && !declared.equalsIgnoreCase("UTF-8")) {
            throw problem(Kind.ENCODING, 1, declared,
                    "it says that it is written in " + FileProblem.shorten(declared) + "; Culm reads UTF-8 only");
        }
    }

    private int line() {
        return Math.max(1, reader.getLocation().getLineNumber());
    }

    /** Outside the root the parser tells of no white space, so that the line has to be looked up. */
    private int rootLine() {
        int end = Math.min(all.length(), Math.max(0, reader.getLocation().getCharacterOffset()));
        int start = Math.max(0, all.lastIndexOf("<" + reader.getLocalName(), end));
        return 1 + (int) all.substring(0, start).chars().filter(c -> c == '\n').count();
    }

    private void start(int line) throws FileProblemException {
        if (open.size() >= DEEPEST) {
            throw problem(Kind.TOO_LARGE, line, reader.getLocalName(),
                    "elements stand more than " + DEEPEST + " deep inside each other");
        }
        XmlNode node = XmlNode.element(reader.getLocalName(), line);
        String[] attributes = new String[2 * reader.getAttributeCount()];
        for (int i = 0; i < attributes.length; i += 2) {
            count(line);
            attributes[i] = nameOf(reader.getAttributeName(i / 2));
            attributes[i + 1] = reader.getAttributeValue(i / 2);
        }
        node.attributes(attributes);
        if (open.isEmpty()) {
            count(line);
            root = node;
        } else {
            add(node);
        }
        open.push(node);
    }

    private String nameOf(QName name) {
        String prefix = name.getPrefix();
        String text = prefix == null || prefix.isEmpty() ? name.getLocalPart() : prefix + ":" + name.getLocalPart();
        return names.computeIfAbsent(text, key -> key);
    }

    private void add(XmlNode node) throws FileProblemException {
        count(node.line());
        if (!open.isEmpty()) {
            open.peek().add(node);
        } else if (root == null) {
            before.add(node);
        } else {
            after.add(node);
        }
    }

    private void count(int line) throws FileProblemException {
        if (++nodes > MOST_NODES) {
            throw problem(Kind.TOO_LARGE, line, "", "it has more than " + MOST_NODES + " elements and values");
        }
    }

    private void flush(StringBuilder text, int line) throws FileProblemException {
        if (!open.isEmpty() && text.length() > 0) {
            add(XmlNode.text(text.toString(), line));
        }
        text.setLength(0);
    }

    private void end(StringBuilder text, int line) throws FileProblemException {
        XmlNode node = open.peek();
        if (node.children().isEmpty()) {
            node.setText(text.toString());
            text.setLength(0);
        } else {
            flush(text, line);
            node.dropLayout();
        }
        node.endsAt(line());
        open.pop();
    }

    private FileProblemException problem(Kind kind, int line, String value, String sentence) {
        return new FileProblemException(new FileProblem(kind, file, line, value, sentence));
    }

    private static FileProblem notXml(String file, String text, XMLStreamReader reader, Exception e) {
        Location at = e instanceof XMLStreamException x ? x.getLocation() : reader == null ? null : reader.getLocation();
        int line = at == null ? 1 : Math.max(1, at.getLineNumber());
        if (at != null) {
            int end = Math.min(text.length(), Math.max(0, at.getCharacterOffset()) + 1);
            int start = text.lastIndexOf('&', end);
            Matcher entity = start < 0 ? null : ENTITY.matcher(text).region(start, text.length());
            if (entity != null && entity.lookingAt() && entity.end() >= end - 2) {
                return entity(file, line, entity.group(1));
            }
        }
        String detail = detail(e);
        return new FileProblem(Kind.NOT_XML, file, line, "",
                "it is not well-formed XML" + (detail.isEmpty() ? "" : " (" + detail + ")"));
    }

    private static FileProblem entity(String file, int line, String name) {
        return new FileProblem(Kind.ENTITIES, file, line, name,
                "it uses the entity " + FileProblem.shorten(name) + "; entities are never resolved");
    }

    /** The parser's own words, without its header line. */
    private static String detail(Exception e) {
        if (!(e instanceof XMLStreamException) || e.getMessage() == null || e.getCause() instanceof NoSuchElementException) {
            return "";
        }
        String message = e.getMessage();
        int at = message.indexOf("Message: ");
        String detail = message.substring(at < 0 ? 0 : at + "Message: ".length()).strip();
        detail = detail.startsWith("http") ? "" : FileProblem.shorten(detail, LONGEST_DETAIL);
        return detail.endsWith(".") ? detail.substring(0, detail.length() - 1) : detail;
    }
}

package culm.model.xml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A piece of an XML file as it was read: an element, a comment, or text between elements. Names are kept as they stand
 * in the file, prefix and all, so that what is not known can be written back unchanged. Migrations change nodes before
 * they become objects; after that nobody does.
 */
public final class XmlNode {
    /** What a node is. */
    public enum Kind {
        /** An element with a name, attributes and children. */
        ELEMENT,
        /** A comment; its text stands in {@link #text()}. */
        COMMENT,
        /** A processing instruction: its target is the name, its data the text. */
        INSTRUCTION,
        /** Text; only beside elements, never in an element of text alone. */
        TEXT
    }

    private static final String[] NOTHING = {};

    private final Kind kind;
    private final int line;
    private String name;
    private String text = "";
    /** Names and values in turn; a map for each element would take most of the memory of a large file. */
    private String[] attributes = NOTHING;
    private List<XmlNode> children = List.of();
    private int endLine;

    private XmlNode(Kind kind, String name, int line) {
        this.kind = kind;
        this.name = name;
        this.line = line;
        this.endLine = line;
    }

    /**
     * An element without content.
     *
     * @param name its name
     * @param line where it stands, from 1; 0 when it stands in no file
     * @return the element
     */
    public static XmlNode element(String name, int line) {
        return new XmlNode(Kind.ELEMENT, name, line);
    }

    /**
     * A comment.
     *
     * @param text what stands between the comment's marks
     * @param line where it starts
     * @return the comment
     */
    public static XmlNode comment(String text, int line) {
        var node = new XmlNode(Kind.COMMENT, "", line);
        node.text = text;
        return node;
    }

    /**
     * A processing instruction.
     *
     * @param target its target
     * @param data its data or null
     * @param line where it starts
     * @return the instruction
     */
    public static XmlNode instruction(String target, String data, int line) {
        var node = new XmlNode(Kind.INSTRUCTION, target, line);
        node.text = data == null ? "" : data;
        return node;
    }

    /**
     * Text beside elements.
     *
     * @param text the text
     * @param line where it starts
     * @return the text's node
     */
    public static XmlNode text(String text, int line) {
        var node = new XmlNode(Kind.TEXT, "", line);
        node.text = text;
        return node;
    }

    /** {@return what this is} */
    public Kind kind() {
        return kind;
    }

    /** {@return an element's name, otherwise empty} */
    public String name() {
        return name;
    }

    /** {@return the text of a comment, of text, or of an element without child elements} */
    public String text() {
        return text;
    }

    /** {@return an element's attributes by name, in order; a copy} */
    public Map<String, String> attributes() {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < attributes.length; i += 2) {
            map.put(attributes[i], attributes[i + 1]);
        }
        return map;
    }

    /**
     * One attribute.
     *
     * @param attribute its name
     * @return its value or null
     */
    public String attribute(String attribute) {
        int at = indexOf(attribute);
        return at < 0 ? null : attributes[at + 1];
    }

    private int indexOf(String attribute) {
        for (int i = 0; i < attributes.length; i += 2) {
            if (attributes[i].equals(attribute)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Gives an element all its attributes at once.
     *
     * @param namesAndValues names and values in turn, no name twice
     */
    void attributes(String[] namesAndValues) {
        attributes = namesAndValues;
    }

    /** {@return elements, comments and text inside; empty when there is text alone} */
    public List<XmlNode> children() {
        return children;
    }

    /** {@return the line it starts on, from 1; 0 when it stands in no file} */
    public int line() {
        return line;
    }

    /** {@return the line it ends on} */
    public int endLine() {
        return endLine;
    }

    /**
     * Gives an element another name.
     *
     * @param newName the name
     */
    public void rename(String newName) {
        name = newName;
    }

    /**
     * Sets what an element or comment says.
     *
     * @param newText the text
     */
    public void setText(String newText) {
        text = newText;
    }

    /**
     * Sets or, with null, removes an attribute.
     *
     * @param attribute its name
     * @param value its value or null
     */
    public void setAttribute(String attribute, String value) {
        Map<String, String> map = attributes();
        if (value == null) {
            map.remove(attribute);
        } else {
            map.put(attribute, value);
        }
        attributes = map.entrySet().stream().flatMap(each -> Stream.of(each.getKey(), each.getValue()))
                .toArray(String[]::new);
    }

    /**
     * Adds a child at the end.
     *
     * @param child the child
     */
    public void add(XmlNode child) {
        if (children.isEmpty()) {
            children = new ArrayList<>(2);
        }
        children.add(child);
    }

    /**
     * Takes a child out.
     *
     * @param child the child
     */
    public void remove(XmlNode child) {
        if (!children.isEmpty()) {
            children.remove(child);
        }
    }

    /** Drops white space between children that only lays them out, unless there is text as well. */
    public void dropLayout() {
        if (children.stream().allMatch(child -> child.kind != Kind.TEXT || child.text.isBlank())) {
            children.removeIf(child -> child.kind == Kind.TEXT);
        }
    }

    /** Lets go of all that is inside, once it has become an object. */
    public void release() {
        attributes = NOTHING;
        children = List.of();
    }

    /**
     * Says where the element ends.
     *
     * @param newEndLine the line
     */
    public void endsAt(int newEndLine) {
        endLine = newEndLine;
    }
}

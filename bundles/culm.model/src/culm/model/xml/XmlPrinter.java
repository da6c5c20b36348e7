package culm.model.xml;

/** Writes XML for people: two spaces an inner level, one element a line, {@code \n} as line end. */
public final class XmlPrinter {
    private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    private static final char REPLACEMENT = '\uFFFD';

    private final StringBuilder out = new StringBuilder(DECLARATION);
    private int line = 1;
    private int depth;

    /** {@return the line that is being written, from 1} */
    public int line() {
        return line;
    }

    /**
     * Begins an element on a new line; attributes may follow.
     *
     * @param name its name
     */
    public void begin(String name) {
        newLine();
        out.append('<').append(name);
    }

    /**
     * Writes an attribute of the element just begun.
     *
     * @param name its name
     * @param value its value
     */
    public void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"");
        escape(value, true);
        out.append('"');
    }

    /** Ends the element just begun; it has no content. */
    public void endEmpty() {
        out.append("/>");
    }

    /** Ends the start of the element just begun; children follow. */
    public void children() {
        out.append('>');
        depth++;
    }

    /**
     * Ends an element after its children.
     *
     * @param name its name
     */
    public void end(String name) {
        depth--;
        newLine();
        out.append("</").append(name).append('>');
    }

    /**
     * Gives the element just begun a text and ends it.
     *
     * @param name its name
     * @param text its text, kept exactly
     */
    public void endText(String name, String text) {
        out.append('>');
        escape(text, false);
        out.append("</").append(name).append('>');
    }

    /**
     * Writes a node on a new line, with all that is in it.
     *
     * @param node any node
     */
    public void node(XmlNode node) {
        newLine();
        inline(node, true);
    }

    /**
     * Writes a comment at the end of the current line.
     *
     * @param node a comment or an instruction
     */
    public void beside(XmlNode node) {
        out.append(' ');
        inline(node, false);
    }

    /** {@return all that was written, with a last line end} */
    public String finish() {
        return out.append('\n').toString();
    }

    private void inline(XmlNode node, boolean laidOut) {
        switch (node.kind()) {
            case COMMENT -> raw("<!--" + node.text() + "-->");
            case INSTRUCTION -> raw("<?" + node.name() + (node.text().isEmpty() ? "" : " " + node.text()) + "?>");
            case TEXT -> escape(node.text(), false);
            case ELEMENT -> element(node, laidOut);
        }
    }

    private void element(XmlNode node, boolean laidOut) {
        out.append('<').append(node.name());
        node.attributes().forEach(this::attribute);
        if (!node.children().isEmpty()) {
            boolean mixed = node.children().stream().anyMatch(child -> child.kind() == XmlNode.Kind.TEXT);
            out.append('>');
            depth++;
            for (XmlNode child : node.children()) {
                if (laidOut && !mixed) {
                    newLine();
                }
                inline(child, laidOut && !mixed);
            }
            depth--;
            if (laidOut && !mixed) {
                newLine();
            }
            out.append("</").append(node.name()).append('>');
        } else if (node.text().isEmpty()) {
            out.append("/>");
        } else {
            endText(node.name(), node.text());
        }
    }

    private void newLine() {
        out.append('\n');
        line++;
        for (int i = 0; i < depth; i++) {
            out.append("  ");
        }
    }

    private void raw(String text) {
        for (int i = 0; i < text.length(); i++) {
            append(text.charAt(i), text, i);
        }
    }

    private void escape(String text, boolean attribute) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '\r' -> out.append("&#13;");
                case '"' -> out.append(attribute ? "&quot;" : "\"");
                case '\n' -> {
                    if (attribute) {
                        out.append("&#10;");
                    } else {
                        append(c, text, i);
                    }
                }
                case '\t' -> out.append(attribute ? "&#9;" : "\t");
                default -> append(c, text, i);
            }
        }
    }

    /** What XML cannot hold at all becomes the replacement character, so that the file can always be read again. */
    private void append(char c, String text, int at) {
        if (c == '\n') {
            line++;
        }
        boolean possible = c >= ' ' && c < '\uFFFE' || c == '\n' || c == '\t' || c == '\r';
        if (Character.isHighSurrogate(c)) {
            possible = at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
        } else if (Character.isLowSurrogate(c)) {
            possible = at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
        }
        out.append(possible ? c : REPLACEMENT);
    }
}

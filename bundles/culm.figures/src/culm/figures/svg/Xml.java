package culm.figures.svg;

/** Text for XML: its five signs escaped, what XML 1.0 does not allow replaced. */
final class Xml {
    private Xml() {
    }

    static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(allowed(c) ? c : 0xFFFD);
            }
        });
        return safe.toString();
    }

    /** The production Char of XML 1.0. */
    private static boolean allowed(int c) {
        return c == 9 || c == 10 || c == 13 || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000 && c <= 0x10FFFF;
    }
}

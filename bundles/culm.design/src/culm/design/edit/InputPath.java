package culm.design.edit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The path of an input, taken apart.
 *
 * @param element first word: staple, gouge, gougeEnd, shape, inside, thread, tie, cane, fit; empty for the document itself
 * @param name    name of the number, or of the table
 * @param row     row of the table from 0; -1 when the path names no row
 * @param column  column of the table; empty when the path names none
 */
record InputPath(String element, String name, int row, String column) {
    private static final Pattern FORM = Pattern.compile("([A-Za-z]+)\\.([A-Za-z0-9]+)(?:\\[(\\d{1,5})\\]\\.([A-Za-z0-9]+))?");

    /** @throws IllegalArgumentException when the text is no path */
    static InputPath of(String path) {
        Matcher m = FORM.matcher(path);
        if (!m.matches()) {
            throw new IllegalArgumentException("This is not the path of an input: " + path + ".");
        }
        boolean cell = m.group(3) != null;
        return new InputPath(m.group(1), m.group(2), cell ? Integer.parseInt(m.group(3)) : -1, cell ? m.group(4) : "");
    }

    boolean isCell() {
        return row >= 0;
    }
}

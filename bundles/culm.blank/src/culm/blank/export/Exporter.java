package culm.blank.export;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.rules.Finding;

/**
 * Turns an assessed blank into the content of a file. A plain class without state, shared between threads; it never sees files or
 * the screen. The same input gives the same bytes, whatever the locale, the day or the machine.
 */
public interface Exporter {
    /** Stable id, with a prefix of its own, e.g. {@code culm.export.note}; never changes. */
    String id();

    /** What it writes, a few words in lower case, e.g. "note in Markdown". */
    String name();

    /** What the file's name ends in, lower case, without a dot, e.g. {@code md}. */
    String ending();

    /**
     * The whole content of the file.
     *
     * @param title      what the design is called
     * @param assessment every number of the blank; those that cannot be computed are empty
     * @param findings   what the rules found, the worst first
     * @return the bytes; text is UTF-8 unless the format says otherwise
     */
    byte[] bytes(String title, Assessment assessment, List<Finding> findings);
}

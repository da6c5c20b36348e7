package culm.model.files;

import culm.model.xml.XmlNode;

/** One step from a format version to the next; works on the file's tree before it becomes objects. */
public interface Migration {
    /** {@return the format version this step begins with; it ends with the next one} */
    int from();

    /**
     * Changes a file's tree. What the step does not know it leaves alone.
     *
     * @param root the root element; its name says what sort of file it is
     */
    void apply(XmlNode root);
}

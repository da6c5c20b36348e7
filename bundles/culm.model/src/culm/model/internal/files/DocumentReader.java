package culm.model.internal.files;

import culm.model.Document;
import culm.model.ModelFactory;
import culm.model.Stray;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.problem.FileProblemException;
import culm.model.xml.XmlNode;
import culm.model.xml.XmlTree;
import java.util.Map;
import org.eclipse.emf.ecore.EClass;

/** Makes a document of a whole file's tree: what sort, which format, what is in it. */
public final class DocumentReader {
    private static final Map<String, String> TRADE_NAMES = Map.of("reed", "a design (.reed)", "parts",
            "a parts file (.parts)", "batch", "a batch (.batch)", "log", "a reed log (.log)", "limits",
            "limits of a studio (studio.limits)");

    private final TextForm form;
    private final String file;
    private final int oldest;
    private final int current;

    /**
     * A reader for one file.
     *
     * @param form the text form
     * @param file the file's name for messages
     * @param oldest the oldest format version that can be read
     * @param current the format version of this program
     */
    public DocumentReader(TextForm form, String file, int oldest, int current) {
        this.form = form;
        this.file = file;
        this.oldest = oldest;
        this.current = current;
    }

    /**
     * What sort of document a root stands for.
     *
     * @param root the root element
     * @param wanted the sort that is needed
     * @return its class
     * @throws FileProblemException when it is none, or another
     */
    public EClass rootClass(XmlNode root, Class<?> wanted) throws FileProblemException {
        EClass found = form.roots().get(root.name());
        if (found != null && wanted.isAssignableFrom(found.getInstanceClass())) {
            return found;
        }
        String is = found == null ? "its root is " + FileProblem.shorten(root.name()) : "it is " + trade(root.name());
        String needed = form.roots().entrySet().stream()
                .filter(each -> each.getValue().getInstanceClass() == wanted).map(each -> trade(each.getKey()))
                .findFirst().orElse("a file of a studio");
        throw problem(Kind.WRONG_ROOT, root, root.name(), is + ", but " + needed + " is needed here");
    }

    private static String trade(String root) {
        return TRADE_NAMES.getOrDefault(root, root);
    }

    /**
     * The format version of a file.
     *
     * @param root the root element; its format attribute is taken out
     * @return the version, at least the oldest that can be read
     * @throws FileProblemException when there is none or it is too old
     */
    public int version(XmlNode root) throws FileProblemException {
        String text = root.attribute("format");
        if (text == null) {
            throw problem(Kind.BAD_FORMAT, root, "", "the root element has no format version; write format=\"" + current
                    + "\"");
        }
        if (!text.matches("\\d{1,6}")) {
            throw problem(Kind.BAD_FORMAT, root, text, "format \"" + FileProblem.shorten(text) + "\" is no version number");
        }
        int version = Integer.parseInt(text);
        if (version < oldest) {
            throw problem(Kind.BAD_FORMAT, root, text, "format " + version + " is older than any this program reads");
        }
        root.setAttribute("format", null);
        return version;
    }

    /**
     * Says that a file is of a newer format.
     *
     * @param version its version
     * @return the problem
     */
    public FileProblem newer(int version) {
        return new FileProblem(Kind.NEWER_FORMAT, file, 0, Integer.toString(version), "it was written in format "
                + version + ", newer than this program's " + current + "; it opens to look at, but is not saved");
    }

    /**
     * Makes the document.
     *
     * @param tree the file's tree, in the current format
     * @param type the class of the document
     * @return the document
     * @throws FileProblemException when something in it cannot be used; says all of it
     */
    public Document document(XmlTree tree, EClass type) throws FileProblemException {
        TreeReader reader = new TreeReader(form, file);
        Document document = (Document) reader.read(tree.root(), type, Double.NEGATIVE_INFINITY);
        if (!reader.problems().isEmpty()) {
            throw new FileProblemException(reader.problems());
        }
        tree.before().forEach(node -> outside(document, node, StrayWriter.BEFORE_ROOT));
        tree.after().forEach(node -> outside(document, node, StrayWriter.AFTER_ROOT));
        return document;
    }

    private static void outside(Document document, XmlNode node, String where) {
        Stray stray = ModelFactory.eINSTANCE.createStray();
        stray.setNode(node);
        stray.setAnchorName(where);
        document.getStrays().add(stray);
    }

    private FileProblemException problem(Kind kind, XmlNode node, String value, String sentence) {
        return new FileProblemException(new FileProblem(kind, file, node.line(), value, sentence));
    }
}

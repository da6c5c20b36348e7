package culm.model.internal.files;

import culm.model.Document;
import culm.model.Element;
import culm.model.StrayAttribute;
import culm.model.internal.files.FeatureForm.Kind;
import culm.model.text.Cells;
import culm.model.text.Located;
import culm.model.xml.XmlPrinter;
import java.util.List;

/** Writes objects as XML, in the order of the model's description. */
public final class TextWriter {
    private final TextForm form;
    private final XmlPrinter printer = new XmlPrinter();

    /**
     * A writer for one text.
     *
     * @param form the text form
     */
    public TextWriter(TextForm form) {
        this.form = form;
    }

    /**
     * Writes a document and notes in each object the line it stands on.
     *
     * @param root the document
     * @param format the format version to claim
     * @return the text
     */
    public String write(Document root, int format) {
        StrayWriter.outside(root, StrayWriter.BEFORE_ROOT, printer);
        element(form.nameOf(root.eClass()), root, Integer.toString(format));
        StrayWriter.outside(root, StrayWriter.AFTER_ROOT, printer);
        return printer.finish();
    }

    private void element(String name, Element object, String format) {
        ClassForm classForm = form.of(object.eClass());
        printer.begin(name);
        Located.place(object, printer.line());
        if (format != null) {
            printer.attribute("format", format);
        }
        attributes(classForm, object);
        StrayWriter strays = new StrayWriter(object, printer);
        if (strays.isEmpty() && classForm.elements().stream().noneMatch(each -> object.eIsSet(each.feature()))) {
            printer.endEmpty();
            return;
        }
        printer.children();
        for (FeatureForm each : classForm.elements()) {
            if (object.eIsSet(each.feature())) {
                feature(object, each, strays);
            }
        }
        strays.rest();
        printer.end(name);
    }

    private void attributes(ClassForm classForm, Element object) {
        for (FeatureForm attribute : classForm.attributes()) {
            if (object.eIsSet(attribute.feature())) {
                printer.attribute(attribute.name(), ValueText.format(object.eGet(attribute.feature())));
            }
        }
        if (classForm.cells() != null && object.eGet(classForm.cells().feature()) instanceof Cells cells) {
            cells.asMap().forEach((column, value) -> printer.attribute(column, ValueText.format(value)));
        }
        for (StrayAttribute stray : object.getStrayAttributes()) {
            printer.attribute(stray.getName(), stray.getValue());
        }
    }

    private void feature(Element object, FeatureForm each, StrayWriter strays) {
        Object value = object.eGet(each.feature());
        for (Object one : each.feature().isMany() ? (List<?>) value : List.of(value)) {
            if (each.kind() == Kind.TEXT) {
                strays.around(each.name(), () -> {
                    printer.begin(each.name());
                    printer.endText(each.name(), ValueText.format(one));
                });
            } else {
                Element part = (Element) one;
                String name = each.kind() == Kind.OBJECT ? each.name() : form.nameOf(part.eClass());
                strays.around(part, () -> element(name, part, null));
            }
        }
    }
}

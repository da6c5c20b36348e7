package culm.design.edit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import culm.blank.rules.Fix;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Table;
import culm.model.Column;
import culm.model.Design;
import culm.model.Document;
import culm.model.Edges;
import culm.model.Element;
import culm.model.FitData;
import culm.model.How;
import culm.model.ModelFactory;
import culm.model.Part;
import culm.model.PartsFile;
import culm.model.Quantity;
import culm.model.Row;
import culm.model.Setup;
import culm.model.ShapePart;
import culm.model.TableData;
import culm.model.Variant;
import culm.model.problem.FileProblemException;
import culm.model.studio.Link;
import culm.model.text.Cells;
import culm.model.text.Ids;

/**
 * Makes the commands that change a design, or one part in a parts file. Inputs are named by the paths of {@link culm.blank.Inputs};
 * those of a part alone begin with what it is ({@code staple.length}).
 * <p>A change inside a linked part never reaches the parts file: the design gets a copy of the part first, in the same command.
 */
public final class Edits {
    private final Elements elements;
    private final PartResolver resolver;
    private final RandomGenerator random;

    private Edits(Element root, PartResolver resolver, RandomGenerator random) {
        this.elements = new Elements(root);
        this.resolver = Objects.requireNonNull(resolver);
        this.random = Objects.requireNonNull(random);
    }

    /** Changes a design. @param resolver follows its links, @param random where the ids of new rows come from */
    public static Edits of(Design design, PartResolver resolver, RandomGenerator random) {
        return new Edits(design, resolver, random);
    }

    /** Changes one part in a parts file. @param random where the ids of new rows come from */
    public static Edits of(Part part, RandomGenerator random) {
        return new Edits(part, same -> same, random);
    }

    /**
     * Makes a document hold what another holds, as one command: versions put together, unsaved work that was found.
     *
     * @param document what is changed
     * @param other of the same kind; stays as it is
     * @param label what the change is, after the words "undo" and "redo"
     */
    public static Edit become(Document document, Document other, String label) {
        if (document.eClass() != other.eClass()) {
            throw new IllegalArgumentException("a " + document.eClass().getName() + " cannot become a " + other.eClass().getName());
        }
        return new Edit(document, label, () -> Becoming.become(document, other));
    }

    /** Adds a copy of a part at the end of a file of parts. */
    public static Edit addPart(PartsFile file, Part part) {
        Part copy = EcoreUtil.copy(part);
        return new Edit(file, "new " + Elements.nameOf(part), () -> file.getParts().add(copy));
    }

    /** Takes a part out of its file. */
    public static Edit removePart(PartsFile file, Part part) {
        return new Edit(file, "remove " + (part.getName() == null ? Elements.nameOf(part) : part.getName()), () -> file.getParts().remove(part));
    }

    /** The number at a path as it stands, not to be changed; empty when it is absent or in a linked part. */
    public Optional<Quantity> quantity(String path) {
        InputPath at = number(path);
        Element element = elements.find(at.element());
        return element == null ? Optional.empty() : Slots.quantity(element, at);
    }

    /** Whether a change at this path would first copy a linked part into the design. */
    public boolean copiesLinkedPart(String path) {
        return elements.find(word(path)) instanceof Part part && part.getLink() != null;
    }

    /**
     * Sets a value and leaves its tolerance and how it is known.
     *
     * @throws FileProblemException when the path leads into a linked part that cannot be found
     */
    public Edit setValue(String path, double value) throws FileProblemException {
        requireFinite(value);
        InputPath at = InputPath.of(path);
        String label = Words.of(path, value);
        if (at.isCell()) {
            return in(at.element(), label, element -> {
                Row row = Slots.row(Slots.table(element, at), at.row());
                row.setCells((row.getCells() == null ? Cells.NONE : row.getCells()).with(at.column(), value));
            });
        }
        return in(at.element(), label, element -> Slots.ownQuantity(element, at).setValue(value));
    }

    /**
     * Sets a value that was found by trying or solving: a part's number is then assumed, no longer measured. Heights of the tie are
     * decisions and keep how they are known.
     *
     * @throws FileProblemException when the path leads into a linked part that cannot be found
     */
    public Edit tryValue(String path, double value) throws FileProblemException {
        requireFinite(value);
        InputPath at = InputPath.of(path);
        if (at.isCell() || at.element().equals("tie")) {
            return setValue(path, value);
        }
        return in(at.element(), Words.of(path, value), element -> {
            Quantity quantity = Slots.ownQuantity(element, at);
            quantity.setValue(value);
            quantity.setHow(How.ASSUMED);
        });
    }

    /** Does what a finding proposes. @throws FileProblemException as {@link #tryValue} */
    public Edit apply(Fix fix) throws FileProblemException {
        Edit edit = tryValue(fix.path(), fix.value());
        edit.setLabel(fix.text());
        return edit;
    }

    /** Sets value, give or take and how it is known together; what is empty is taken away. @throws FileProblemException as {@link #setValue} */
    public Edit setQuantity(String path, OptionalDouble value, OptionalDouble tolerance, How how) throws FileProblemException {
        value.ifPresent(Edits::requireFinite);
        tolerance.ifPresent(Edits::requireNotNegative);
        InputPath at = number(path);
        return in(at.element(), Words.of(path), element -> {
            Quantity quantity = Slots.ownQuantity(element, at);
            value.ifPresentOrElse(quantity::setValue, quantity::unsetValue);
            tolerance.ifPresentOrElse(quantity::setTolerance, quantity::unsetTolerance);
            setHow(quantity, how);
        });
    }

    /** Sets or, when empty, takes away the give or take of a number. @throws FileProblemException as {@link #setValue} */
    public Edit setTolerance(String path, OptionalDouble tolerance) throws FileProblemException {
        tolerance.ifPresent(Edits::requireNotNegative);
        InputPath at = number(path);
        return in(at.element(), Words.of(path) + ", give or take", element -> {
            Quantity quantity = Slots.ownQuantity(element, at);
            tolerance.ifPresentOrElse(quantity::setTolerance, quantity::unsetTolerance);
        });
    }

    /** Says whether a number was measured. @param how null: not said. @throws FileProblemException as {@link #setValue} */
    public Edit setHow(String path, How how) throws FileProblemException {
        InputPath at = number(path);
        return in(at.element(), Words.of(path) + (how == null ? "" : " " + how.getLiteral()), element -> setHow(Slots.ownQuantity(element, at), how));
    }

    /** Takes a number away; it is then absent, not zero. @throws FileProblemException as {@link #setValue} */
    public Edit clear(String path) throws FileProblemException {
        InputPath at = number(path);
        return in(at.element(), "without " + Words.of(path), element -> Slots.remove(element, at));
    }

    /**
     * Makes a table hold just these rows, in this order. Rows with the id of one that is there keep it.
     *
     * @param table such as {@code shape.places} or {@code inside.places}
     * @throws FileProblemException as {@link #setValue}
     */
    public Edit setRows(String table, List<RowEntry> rows) throws FileProblemException {
        rows.forEach(row -> row.cells().asMap().values().forEach(Edits::requireFinite));
        InputPath at = number(table);
        List<RowEntry> wanted = List.copyOf(rows);
        return in(at.element(), Words.of(table), element -> TableEdits.replace(Slots.ownTable(element, at), wanted, random));
    }

    /** Says of all rows of a column how well it is known. @param how null: not said. @throws FileProblemException as {@link #setValue} */
    public Edit setColumn(String table, String column, OptionalDouble tolerance, How how) throws FileProblemException {
        tolerance.ifPresent(Edits::requireNotNegative);
        InputPath at = number(table);
        return in(at.element(), Words.of(table) + " " + Words.apart(column) + ", give or take", element -> {
            Column said = TableEdits.column(Slots.ownTable(element, at), column);
            tolerance.ifPresentOrElse(said::setTolerance, said::unsetTolerance);
            if (how == null) {
                said.unsetHow();
            } else {
                said.setHow(how);
            }
        });
    }

    /**
     * Replaces a profile by one of another type. Numbers and tables of the same name are kept, the rest is the type's usual, assumed.
     *
     * @param part staple, gouge, gougeEnd (added when there is none) or shape
     * @throws FileProblemException as {@link #setValue}
     */
    public Edit setProfile(String part, ProfileType type) throws FileProblemException {
        return setProfile(part, type, Optional.empty());
    }

    /**
     * The same for a type with a table of places that is to begin with rows of its own, assumed, and not with the usual ones.
     *
     * @param start these rows, in the order of the table's columns; empty for the usual ones
     * @throws FileProblemException as {@link #setValue}
     */
    public Edit setProfile(String part, ProfileType type, Optional<Table> start) throws FileProblemException {
        return in(part, Words.apart(part) + " as " + type.name(), element -> {
            EStructuralFeature feature = Slots.profileFeature(element, part);
            element.eSet(feature, new ProfileMaker(random).make(type, (culm.model.ProfileData) element.eGet(feature), start));
        });
    }

    /** Lets the gouge change along the cane: at the end of it a second one, which begins as the first. @throws FileProblemException as {@link #setValue} */
    public Edit gougeTwice() throws FileProblemException {
        return in("gouge", "another gouge at the end", element -> element.eSet(Slots.profileFeature(element, "gougeEnd"), EcoreUtil.copy(Slots.profile(element, "gouge"))));
    }

    /** Takes the second gouge, at the end of the cane, away. @throws FileProblemException as {@link #setValue} */
    public Edit removeGougeEnd() throws FileProblemException {
        return in("gouge", "one gouge all along", element -> element.eUnset(Slots.profileFeature(element, "gougeEnd")));
    }

    /**
     * Has the edges of a shape told by two widths.
     *
     * @param start the inside widths to begin with, assumed; only where there are none yet
     * @throws FileProblemException as {@link #setValue}
     */
    public Edit edgesByTwoWidths(List<RowEntry> start) throws FileProblemException {
        List<RowEntry> rows = List.copyOf(start);
        return in("shape", "shape edges", element -> {
            ShapePart shape = (ShapePart) element;
            shape.setEdges(Edges.TWO_WIDTHS);
            TableData inside = Slots.ownTable(shape, InputPath.of("inside.places"));
            if (inside.getRows().isEmpty()) {
                TableEdits.replace(inside, rows, random);
                TableEdits.column(inside, "width").setHow(How.ASSUMED);
            }
        });
    }

    /** Uses a part of a parts file. @param part staple, gouge, shape or thread */
    public Edit link(String part, Link link) {
        EStructuralFeature feature = elements.feature(part);
        return edit(part + " " + link.id(), () -> {
            Part linked = (Part) ModelFactory.eINSTANCE.create((org.eclipse.emf.ecore.EClass) feature.getEType());
            linked.setLink(link.toString());
            elements.root().eSet(feature, linked);
        });
    }

    /** Copies a linked part into the design. @param part staple, gouge, shape or thread. @throws FileProblemException when it cannot be found */
    public Edit unlink(String part) throws FileProblemException {
        return in(part, part + " copied into the design", element -> {
        });
    }

    /** Puts a copy of a part into the design. */
    public Edit setPart(Part part) {
        String name = Elements.nameOf(part);
        Part copy = EcoreUtil.copy(part);
        return edit(name, () -> elements.root().eSet(elements.feature(name), copy));
    }

    /**
     * Sets a text, a date or a choice: {@code set("", "name", "Trial 4")}, {@code set("shape", "edges", Edges.RADIAL)}.
     *
     * @param element the path's first word; empty for the document or part itself
     * @param feature the feature's name
     * @param value   null takes it away
     * @throws FileProblemException as {@link #setValue}
     */
    public Edit set(String element, String feature, Object value) throws FileProblemException {
        return in(element, element.isEmpty() ? Words.apart(feature) : Words.apart(element) + " " + Words.apart(feature), target -> {
            EStructuralFeature found = target.eClass().getEStructuralFeature(feature);
            if (found == null || found.isMany()) {
                throw new IllegalArgumentException("There is no " + feature + " here.");
            }
            if (value == null) {
                target.eUnset(found);
            } else {
                target.eSet(found, value);
            }
        });
    }

    /** Uses a fit to a blank that worked. @param fit null drops it */
    public Edit setFit(FitData fit) {
        Design design = design();
        FitData copy = fit == null ? null : EcoreUtil.copy(fit);
        return edit(fit == null ? "without the fit" : "fit to a blank that worked", () -> design.setFit(copy));
    }

    /** Uses the parts and lengths of another setup; what is the same in both stays as it stands. @param label what the change is called */
    public Edit use(Setup wanted, String label) {
        Setup copy = EcoreUtil.copy(wanted);
        Design design = design();
        return edit(label, () -> SetupEdits.put(copy, design));
    }

    /** Keeps parts and lengths as a variant of this design. @param name what it is called */
    public Edit keep(Setup setup, String name) {
        Design design = design();
        Variant variant = ModelFactory.eINSTANCE.createVariant();
        SetupEdits.put(EcoreUtil.copy(setup), variant);
        variant.setName(name);
        variant.setId(Ids.of(name, "variant", design.getVariants().stream().map(Variant::getId).toList()));
        return edit("keep \"" + name + "\"", () -> design.getVariants().add(variant));
    }

    /** Gives a kept variant up. @param id its id */
    public Edit dropVariant(String id) {
        Design design = design();
        String name = design.getVariants().stream().filter(v -> id.equals(v.getId())).findFirst().map(Variant::getName).orElse(id);
        return edit("give up \"" + name + "\"", () -> design.getVariants().removeIf(v -> id.equals(v.getId())));
    }

    /** Sets or, when empty, gives back to the studio one of <i>my limits</i>. @param id id of the limit */
    public Edit setLimit(String id, OptionalDouble value) {
        value.ifPresent(Edits::requireFinite);
        Design design = design();
        return edit("my limits", () -> LimitEdits.set(design, id, value));
    }

    private Design design() {
        if (elements.root() instanceof Design design) {
            return design;
        }
        throw new IllegalStateException("only a design has this");
    }

    private Edit in(String word, String label, Consumer<Element> change) throws FileProblemException {
        Part resolved = null;
        if (elements.find(word) instanceof Part part && part.getLink() != null) {
            resolved = resolver.resolve(part);
        }
        Part source = resolved;
        return edit(label, () -> change.accept(elements.own(word, source)));
    }

    private Edit edit(String label, Runnable change) {
        EObject root = EcoreUtil.getRootContainer(elements.root());
        return new Edit(root, label, change);
    }

    private static void setHow(Quantity quantity, How how) {
        if (how == null) {
            quantity.unsetHow();
        } else {
            quantity.setHow(how);
        }
    }

    private static InputPath number(String path) {
        InputPath at = InputPath.of(path);
        if (at.isCell()) {
            throw new IllegalArgumentException("A cell has a value only; what is known of it is said of its column: " + path + ".");
        }
        return at;
    }

    private static String word(String path) {
        return InputPath.of(path).element();
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a number: " + value);
        }
    }

    private static void requireNotNegative(double value) {
        requireFinite(value);
        if (value < 0) {
            throw new IllegalArgumentException("a give or take is not negative: " + value);
        }
    }
}

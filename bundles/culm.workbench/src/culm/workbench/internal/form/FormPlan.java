package culm.workbench.internal.form;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;
import culm.geometry.profile.Rows;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.MeasuredShape;
import culm.workbench.internal.numbers.LengthUnit;

/**
 * What stands in the form of a blank, in the order of the bench; made from the described parameters alone.
 *
 * @param sections the sections
 */
public record FormPlan(List<Section> sections) {
    /** Where the sides close on a usual oboe staple: the width that matters most, mm from the fold. */
    private static final double WIDTH_PLACE = 26;

    /** Words before those of the second gouge. */
    public static final String AT_THE_END = "at the end, ";

    /** Of a design that cannot be told, only which parts it uses; so another one can be chosen. */
    public static final FormPlan PARTS = new FormPlan(List.of(new Section("Staple", List.of("staple"), List.of(), List.of()),
            new Section("Cane", List.of("gouge", "shape"), List.of(), List.of()), new Section("Tie", List.of("thread"), List.of(), List.of())));

    /** Something in a section. */
    public sealed interface Item permits Number, Measured {
    }

    /**
     * A number.
     *
     * @param path its path
     * @param label its words
     * @param parameter its description
     * @param place where it is measured, mm; empty where its words say that
     */
    public record Number(String path, String label, Parameter parameter, OptionalDouble place) implements Item {
        /** A number whose words say where it is measured. */
        public Number(String path, String label, Parameter parameter) {
            this(path, label, parameter, OptionalDouble.empty());
        }

        /** Its words with its place in a unit. */
        String words(LengthUnit unit) {
            return place.isEmpty() ? label : label + " at " + unit.drawn().brief(place.getAsDouble()) + " " + unit.sign();
        }
    }

    /**
     * A table of measured places.
     *
     * @param path such as {@code shape.places}
     * @param label its words
     * @param table its description
     */
    public record Measured(String path, String label, TableParameter table) implements Item {
        /** Of a profile. @param where words before its own; may be empty */
        public static Measured of(String part, String where, TableParameter table) {
            return new Measured(part + "." + table.id(), where + table.label(), table);
        }

        /** What is measured on the inside of a shape. */
        public static Measured inside() {
            return new Measured("inside.places", "inside widths", MeasuredShape.TABLE);
        }
    }

    /**
     * One section.
     *
     * @param title its title
     * @param parts the parts whose kind and source are chosen under more
     * @param first what a maker can measure first
     * @param more the rest
     */
    public record Section(String title, List<String> parts, List<Item> first, List<Item> more) {
    }

    /**
     * The plan for a blank.
     *
     * @param blank the blank
     * @return its form
     */
    public static FormPlan of(Blank blank) {
        var staple = new Maker("Staple", "staple");
        staple.typed(Inputs.STAPLE_LENGTH);
        staple.profile("staple", blank.staple().type());
        staple.rest("staple.");
        var cane = new Maker("Cane", "gouge", "shape");
        cane.profile("gouge", blank.gouge().type());
        blank.gougeEnd().ifPresent(end -> cane.profile("gougeEnd", end.type()));
        widthPlace(blank, cane);
        cane.profile("shape", blank.shape().type());
        cane.typed(Inputs.FOLDED_LENGTH);
        if (blank.cut().edges() == EdgeKind.TWO_WIDTHS) {
            cane.first.add(Measured.inside());
        }
        cane.typed(Inputs.TUBE);
        cane.rest("gouge.");
        cane.rest("shape.");
        cane.rest("cane.");
        var tie = new Maker("Tie", "thread");
        tie.typed(Inputs.TIE_LENGTH);
        tie.typed(Inputs.WRAP_TOP);
        tie.typed(Inputs.THREAD_DIAMETER);
        var finish = new Maker("Finish");
        finish.typed(Inputs.FINISHED);
        tie.rest("thread.");
        Inputs.all().keySet().stream().filter(p -> p.startsWith("tie.") && !p.equals(Inputs.FINISHED)).forEach(tie::typed);
        return new FormPlan(List.of(staple.section(), cane.section(), tie.section(), finish.section()));
    }

    private static void widthPlace(Blank blank, Maker cane) {
        for (TableParameter table : blank.shape().type().tables()) {
            Table rows = blank.shape().values().tables().get(table.id());
            for (int row = 0; rows != null && row < rows.rows(); row++) {
                if (rows.cell(row, 0) == WIDTH_PLACE) {
                    Parameter width = table.columns().get(1);
                    String path = "shape." + Rows.path(table.id(), row, width.id());
                    cane.first.add(new Number(path, width.label(), width, OptionalDouble.of(WIDTH_PLACE)));
                }
            }
        }
    }

    private static final class Maker {
        private final String title;
        private final List<String> parts;
        private final List<Item> first = new ArrayList<>();
        private final List<Item> more = new ArrayList<>();
        private final List<String> done = new ArrayList<>();

        Maker(String title, String... parts) {
            this.title = title;
            this.parts = List.of(parts);
        }

        void typed(String path) {
            Parameter described = Inputs.all().get(path);
            add(path, described.label(), described);
        }

        private void add(String path, String label, Parameter described) {
            if (!done.contains(path)) {
                done.add(path);
                (described.measureFirst() ? first : more).add(new Number(path, label, described));
            }
        }

        void profile(String part, ProfileType type) {
            String where = part.equals("gougeEnd") ? AT_THE_END : "";
            type.parameters().forEach(p -> add(part + "." + p.id(), where + p.label(), p));
            type.tables().forEach(t -> first.add(Measured.of(part, where, t)));
        }

        void rest(String prefix) {
            Inputs.all().keySet().stream().filter(p -> p.startsWith(prefix)).forEach(this::typed);
        }

        Section section() {
            return new Section(title, parts, List.copyOf(first), List.copyOf(more));
        }
    }
}

package culm.blank;

import java.util.List;

import culm.geometry.profile.Table;
import culm.geometry.shape.ShapeType;
import culm.geometry.shape.WiderShape;

/** One length added to every width of a blank: cane shaped wider than the template, a template that is worn, a caliper that reads wide. */
public final class Widened {
    /** The path under which the added length is varied, mm. */
    public static final String PATH = "shape.width";

    private Widened() {
    }

    /** What is added to the widths of a blank, mm. */
    public static double by(Blank blank) {
        return blank.shape().type() instanceof WiderShape wider ? wider.added() : 0;
    }

    /** The blank with so much added to every width, inside widths too, instead of what was added before. @param added mm; negative takes away */
    public static Blank of(Blank blank, double added) {
        ShapeType type = inner(blank.shape().type());
        BlankBuilder edit = blank.edit().shape(new Profile<>(added == 0 ? type : new WiderShape(type, added), blank.shape().values()));
        blank.insideWidths().ifPresent(rows -> edit.insideWidths(rows(rows, added - by(blank))));
        return edit.build();
    }

    /** The same blank with what is added in the widths themselves, where its shape has such numbers: as a fit or a give or take sees it once it is shaped so. */
    public static Blank asCut(Blank blank) {
        double added = by(blank);
        Blank cut = of(blank, 0);
        List<String> widths = added == 0 ? List.of() : WidthInputs.of(cut);
        for (String path : widths) {
            cut = cut.with(path, cut.value(path).orElseThrow() + added);
        }
        return widths.isEmpty() ? blank : cut;
    }

    /** The shape without what was added. */
    public static ShapeType inner(ShapeType type) {
        return type instanceof WiderShape wider ? wider.inner() : type;
    }

    private static Table rows(Table rows, double added) {
        Table wider = rows;
        for (int i = 0; i < rows.rows(); i++) {
            wider = wider.with(i, 1, rows.cell(i, 1) + added);
        }
        return wider;
    }
}

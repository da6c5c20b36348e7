package culm.bench.batch;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.geometry.GeometryException;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.geometry.staple.StapleType;

/**
 * Puts a measured staple into a design: its length, its top, and the top of the wrap measured down from its own top.
 * <ul>
 * <li>a type with parameters {@code topWide} and {@code topNarrow} takes them as they are;</li>
 * <li>measured places keep the form of the design's staple: the axes at height z are multiplied by 1 + (k - 1) z / length, so that the
 * top becomes what was measured and the bottom stays;</li>
 * <li>any other type is scaled so that the mean of both axes agrees, as far as the type knows how to.</li>
 * </ul>
 */
public final class StapleOnBlank {
    private static final String WIDE = "topWide";
    private static final String NARROW = "topNarrow";

    private StapleOnBlank() {
    }

    /**
     * The design with this staple.
     * @throws GeometryException when a reading is missing or the type cannot take it
     */
    public static Blank put(Blank design, StapleReadings staple, Caliper caliper, double wrapBelowTop) {
        for (Dimension dimension : Dimension.values()) {
            if (staple.middle(dimension).isEmpty()) {
                throw new GeometryException("", "There is no reading of " + dimension.label() + ".");
            }
        }
        double length = staple.length().getAsDouble();
        double wide = staple.topWide().getAsDouble();
        double narrow = staple.topNarrow().getAsDouble();
        BlankBuilder b = design.edit().set(Inputs.STAPLE_LENGTH, length).set(Inputs.WRAP_TOP, length - wrapBelowTop)
                .clear(Inputs.CHECK_TURNS).clear(Inputs.CHECK_THREAD).clear(Inputs.CHECK_LENGTH)
                .tolerance(Inputs.STAPLE_LENGTH, caliper.largestError(), true);
        Profile<StapleType> profile = design.staple();
        if (has(profile.type(), WIDE) && has(profile.type(), NARROW)) {
            b.staple(profile.with(profile.values().with(WIDE, wide).with(NARROW, narrow)));
            b.tolerance("staple." + WIDE, caliper.largestError(), true).tolerance("staple." + NARROW, caliper.largestError(), true);
        } else if (rowsOfAxes(profile.type())) {
            b.staple(profile.with(reshaped(profile, wide, narrow)));
        } else {
            double now = design.with(Inputs.STAPLE_LENGTH, length).parts().staple().outside(length).perimeter();
            double wanted = new culm.geometry.section.Ellipse(wide / 2, narrow / 2).perimeter();
            b.staple(profile.with(profile.type().topScaled(profile.values(), wanted / now)));
        }
        return b.build();
    }

    private static boolean has(StapleType type, String id) {
        return type.parameters().stream().map(Parameter::id).anyMatch(id::equals);
    }

    /** One table of height and both axes, as measured places are. */
    private static boolean rowsOfAxes(StapleType type) {
        return type.tables().size() == 1 && type.tables().get(0).columns().stream().map(Parameter::id).toList().equals(java.util.List.of("height", "wide", "narrow"));
    }

    private static Values reshaped(Profile<StapleType> profile, double wide, double narrow) {
        TableParameter described = profile.type().tables().get(0);
        Table rows = profile.values().table(described.id());
        int last = rows.rows() - 1;
        double top = rows.cell(last, 0);
        for (int row = 0; row <= last; row++) {
            double share = rows.cell(row, 0) / top;
            rows = rows.with(row, 1, rows.cell(row, 1) * (1 + (wide / profile.values().table(described.id()).cell(last, 1) - 1) * share))
                    .with(row, 2, rows.cell(row, 2) * (1 + (narrow / profile.values().table(described.id()).cell(last, 2) - 1) * share));
        }
        return profile.values().with(described.id(), rows);
    }
}

package culm.geometry.staple;

import java.util.Arrays;
import java.util.List;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Pchip;
import culm.geometry.profile.MeasuredPlaces;
import culm.geometry.profile.Parameter;
import culm.geometry.profile.Table;
import culm.geometry.profile.TableParameter;
import culm.geometry.profile.Values;
import culm.geometry.section.Ellipse;
import culm.geometry.section.Section;
import culm.geometry.words.Told;

/**
 * A staple measured at several heights: rows (z, wide axis, narrow axis), monotone cubic between them, elliptical sections.
 * The first row is at the bottom, the last at the top. On a staple of another length the rows keep their distance from the top;
 * only the first one stays at the bottom.
 */
public final class MeasuredStaple extends MeasuredPlaces implements StapleType {
    private static final TableParameter TABLE = places(List.of(
            Parameter.length("height", "height", 0, 100, 0, 0.1, true, "From the bottom of the staple."),
            Parameter.length("wide", "wide", 0.5, 20, 4, 0.05, true, "Outside across the wide axis."),
            Parameter.length("narrow", "narrow", 0.2, 20, 3, 0.05, true, "Outside across the narrow axis.")),
            Table.of(new double[] {0, 5.40, 5.40}, new double[] {47, 3.38, 2.09}),
            "Outside axes at several heights, the first at the bottom, the last at the top.");

    /** Made by the registry. */
    public MeasuredStaple() {
        super("culm.staple.measured", "The outside measured across both axes at two or more heights.", TABLE);
    }

    @Override
    public List<GeometryException> check(Values values) {
        return firstAtZero(values, "at the bottom, height 0");
    }

    @Override
    public StapleOutside outside(Values values, double length) {
        Table rows = values.table(PLACES);
        double[] z = rows.column(0);
        double shift = length - z[z.length - 1];
        for (int i = 1; i < z.length; i++) {
            z[i] += shift;
        }
        z[z.length - 1] = length;
        if (z[1] <= 0) {
            throw new GeometryException(PLACES, "On a staple of " + Told.given(length) + " " + Told.UNIT + " the second measured place would lie below the bottom.");
        }
        return new Outside(length, new Pchip(z, rows.column(1)), new Pchip(z, rows.column(2)));
    }

    @Override
    public Values topScaled(Values values, double k) {
        Table rows = values.table(PLACES);
        int last = rows.rows() - 1;
        return values.with(PLACES, rows.with(last, 1, k * rows.cell(last, 1)).with(last, 2, k * rows.cell(last, 2)));
    }

    private record Outside(double length, Pchip wide, Pchip narrow) implements StapleOutside {
        @Override
        public Section section(double z) {
            return new Ellipse(wide.value(z) / 2, narrow.value(z) / 2);
        }

        @Override
        public double[] breaks() {
            double[] z = wide.places();
            return Arrays.copyOfRange(z, 1, z.length - 1);
        }
    }
}

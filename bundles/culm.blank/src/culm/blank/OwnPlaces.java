package culm.blank;

import java.util.Optional;
import java.util.stream.DoubleStream;

import culm.geometry.GeometryException;
import culm.geometry.gouge.GougeSection;
import culm.geometry.profile.Table;
import culm.geometry.section.Section;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.StapleOutside;

/** What a blank's staple, gouge or shape is at some places as it stands now: to begin with, where it is to be measured at places from now on. */
public final class OwnPlaces {
    private static final int PLACES = 8;
    private static final double HUNDREDTHS = 100;

    private OwnPlaces() {
    }

    /**
     * The rows of {@link culm.geometry.staple.MeasuredStaple}, {@link culm.geometry.gouge.MeasuredGouge} or {@link culm.geometry.shape.MeasuredShape} that say the
     * same, mm, to hundredths as a caliper reads them.
     *
     * @param part staple, gouge or shape
     * @return empty for another part, and when the blank cannot be computed
     */
    public static Optional<Table> of(Blank blank, String part) {
        try {
            return switch (part) {
                case "staple" -> Optional.of(staple(blank.parts().staple().shape()));
                case "shape" -> Optional.of(shape(blank.shape().type().width(blank.shape().values(), blank.number(Inputs.FOLDED_LENGTH)), blank.number(Inputs.FOLDED_LENGTH)));
                case "gouge" -> Optional.of(gouge(blank.gouge().type().section(blank.gouge().values(), blank.number(Inputs.TUBE) / 2), blank.number(Inputs.TUBE) / 2, blank.parts().width()));
                default -> Optional.empty();
            };
        } catch (GeometryException cannotBeComputed) {
            return Optional.empty();
        }
    }

    private static Table staple(StapleOutside outside) {
        return Table.of(between(0, outside.length(), outside.breaks()).mapToObj(z -> {
            Section section = outside.section(z);
            return new double[] {rounded(z), rounded(2 * section.halfWide()), rounded(2 * section.halfNarrow())};
        }).toArray(double[][]::new));
    }

    /** As far along the bark as the blade is wide where it is widest. */
    private static Table gouge(GougeSection gouge, double tubeRadius, ShapeWidth width) {
        double widest = between(width.from(), width.to(), width.breaks()).map(width::at).max().orElseThrow();
        double to = tubeRadius * Math.asin(Math.min(1, widest / 2 / tubeRadius));
        double[] changes = DoubleStream.of(gouge.breaks()).map(phi -> phi * tubeRadius).toArray();
        return Table.of(between(0, to, changes).mapToObj(x -> new double[] {rounded(x), rounded(gouge.thickness(x / tubeRadius))}).toArray(double[][]::new));
    }

    private static Table shape(ShapeWidth width, double foldedLength) {
        return Table.of(between(width.from(), Math.min(width.to(), foldedLength), width.breaks()).mapToObj(s -> new double[] {rounded(s), rounded(width.at(s))}).toArray(double[][]::new));
    }

    /** Both ends and, between them, the places where something changes, or evenly spaced ones where there are none. */
    static DoubleStream between(double from, double to, double[] changes) {
        double[] rows = DoubleStream.of(changes).filter(s -> s > from && s < to).toArray();
        DoubleStream inner = rows.length > 0 ? DoubleStream.of(rows) : DoubleStream.iterate(1, i -> i + 1).limit(PLACES - 2).map(i -> from + (to - from) * i / (PLACES - 1));
        return DoubleStream.concat(DoubleStream.concat(DoubleStream.of(from), inner), DoubleStream.of(to));
    }

    static double rounded(double mm) {
        return Math.rint(mm * HUNDREDTHS) / HUNDREDTHS;
    }
}

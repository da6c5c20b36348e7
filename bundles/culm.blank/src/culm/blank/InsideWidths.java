package culm.blank;

import java.util.List;
import java.util.stream.DoubleStream;

import culm.geometry.GeometryException;
import culm.geometry.shape.ShapeWidth;

/** What a blank's inside widths are as its edges stand now: to begin with, where they are to be measured. */
public final class InsideWidths {
    private InsideWidths() {
    }

    /**
     * At the places of the shape's rows, or evenly where it has none, from the fold to the end of the cane: 2 (R - t(phi_in)) sin phi_in, as in geometry.
     *
     * @param blank edges square or along the radius
     * @return pairs of distance from the fold and inside width, mm, to hundredths; none when the blank cannot be computed
     */
    public static List<double[]> of(Blank blank) {
        try {
            Seam seam = new Seam(blank);
            return places(seam.parts()).mapToObj(s -> new double[] {OwnPlaces.rounded(s), OwnPlaces.rounded(at(seam, s))}).toList();
        } catch (GeometryException cannotBeComputed) {
            return List.of();
        }
    }

    private static double at(Seam seam, double s) {
        double phi = seam.edge(s).inner();
        return 2 * (seam.parts().gouge().tubeRadius() - seam.parts().gouge().at(s).thickness(phi)) * Math.sin(phi);
    }

    private static DoubleStream places(Parts parts) {
        ShapeWidth width = parts.width();
        return OwnPlaces.between(width.from(), Math.min(width.to(), parts.foldedLength()), width.breaks());
    }
}

package culm.figures.reed;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Inputs;
import culm.blank.Mark;
import culm.geometry.GeometryException;
import culm.geometry.section.Point;
import culm.geometry.section.Section;

/**
 * Outlines of a section at one height in mm, x across the blades, y through the opening; empty lists where there is nothing.
 *
 * @param bore    inside of the staple
 * @param staple  outside of the staple
 * @param cork    outside of the cork
 * @param upper   one blade
 * @param lower   the other blade
 * @param bark    bark side of the one blade, as a line
 * @param barkLow bark side of the other
 * @param thread  outsides of the layers of thread, the outermost first
 * @param under   what the thread lies on
 * @param sketch  true above the staple, outside the model
 */
record SectionShapes(List<double[]> bore, List<double[]> staple, List<double[]> cork, List<double[]> upper, List<double[]> lower,
        List<double[]> bark, List<double[]> barkLow, List<List<double[]>> thread, List<double[]> under, boolean sketch) {
    private static final int POINTS = 120;

    /** @throws GeometryException where the cane cannot be told */
    static SectionShapes at(Reed reed, double z) {
        boolean onStaple = z <= reed.stapleTop();
        List<double[]> staple = onStaple ? outline(reed.outside(z)) : List.of();
        List<double[]> bore = onStaple ? bore(reed, z) : List.of();
        List<double[]> upper = List.of();
        List<double[]> lower = List.of();
        List<double[]> bark = List.of();
        List<double[]> barkLow = List.of();
        if (onStaple && reed.caneOnStaple(z) && reed.covered(z)) {
            Laid laid = reed.laid(z);
            double crooked = reed.number(Inputs.CROOKED) / 2;
            double slipped = reed.number(Inputs.SLIPPED) / 2;
            upper = laid.blade(reed.edge(z), crooked + slipped, crooked - slipped);
            lower = Lane.mirrored(laid.blade(reed.edge(z), crooked - slipped, crooked + slipped));
            bark = laid.bark(reed.edge(z), crooked + slipped, crooked - slipped);
            barkLow = Lane.mirrored(laid.bark(reed.edge(z), crooked - slipped, crooked + slipped));
        } else if (!onStaple && z <= reed.fold() && reed.covered(z)) {
            upper = reed.sketch(z).blade();
            lower = Lane.mirrored(upper);
            bark = upper.subList(upper.size() / 2, upper.size());
            barkLow = Lane.mirrored(bark);
        }
        List<double[]> cork = List.of();
        if (reed.mark(Mark.CORK_TOP).isPresent() && z <= reed.mark(Mark.CORK_TOP).getAsDouble()) {
            double r = Math.max(reed.outside(0).halfWide(), reed.outside(reed.mark(Mark.CORK_TOP).getAsDouble()).halfWide()) + WideSide.CORK;
            cork = outline(new culm.geometry.section.Ellipse(r, r));
        }
        return wrapped(reed, z, new SectionShapes(bore, staple, cork, upper, lower, bark, barkLow, List.of(), List.of(), !onStaple));
    }

    private static SectionShapes wrapped(Reed reed, double z, SectionShapes bare) {
        boolean wrap = z > reed.wrapBottom() && z <= reed.wrapTop() && bare.cork().isEmpty();
        List<double[]> all = bare.everything();
        if (!wrap || all.isEmpty()) {
            return bare;
        }
        Hull hull = new Hull(all);
        List<List<double[]>> layers = new ArrayList<>();
        if (z > reed.wrapStart()) {
            layers.add(hull.outward(2 * reed.thread()));
        }
        layers.add(hull.outward(reed.thread()));
        return new SectionShapes(bare.bore, bare.staple, bare.cork, bare.upper, bare.lower, bare.bark, bare.barkLow, layers, hull.outward(0), bare.sketch);
    }

    /** Every point of every outline. */
    List<double[]> everything() {
        List<double[]> all = new ArrayList<>(staple);
        all.addAll(cork);
        all.addAll(upper);
        all.addAll(lower);
        thread.forEach(all::addAll);
        return all;
    }

    private static List<double[]> bore(Reed reed, double z) {
        try {
            return outline(reed.bore(z));
        } catch (GeometryException e) {
            return List.of(); // the wall does not fit; the findings say so
        }
    }

    private static List<double[]> outline(Section section) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            Point p = section.boundary(2 * Math.PI * i / POINTS);
            points.add(new double[] {p.x(), p.y()});
        }
        return points;
    }
}

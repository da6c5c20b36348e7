package culm.blank;

import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

import culm.geometry.GeometryException;
import culm.geometry.gouge.Gouge;
import culm.geometry.gouge.GougeSection;
import culm.geometry.shape.Edge;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.words.Told;

/**
 * Both sides of a blank at one height: the half-width needed to go around, M(z), the half-width the cane has there, m(L - z), and how
 * far the sides are open, G(z) = 2 (M - m); negative when pinched. z from the bottom of the staple, mm, on [0, staple length].
 */
public final class Seam {
    private static final double ROUNDING = 1e-9;
    private final Blank blank;
    private final Parts parts;
    private final Cut cut;
    private final double tieLength;
    private final double delta;
    private final double shapeGrowth;
    private final double gougeWidthGrowth;
    private final double thicknessGrowth;

    /** @throws GeometryException when the parts cannot be built */
    public Seam(Blank blank) {
        this.blank = blank;
        parts = blank.parts();
        cut = blank.cut();
        tieLength = blank.number(Inputs.TIE_LENGTH);
        delta = blank.number(Inputs.DELTA);
        double wider = 1 + blank.number(Inputs.SWELL_WIDTH);
        shapeGrowth = cut.shapeDry() ? wider : 1;
        gougeWidthGrowth = cut.gougeDry() ? wider : 1;
        thicknessGrowth = (cut.gougeDry() ? 1 + blank.number(Inputs.SWELL_THICKNESS) : 1) * (1 - blank.number(Inputs.COMPRESSION));
    }

    /** Half-width needed on the mid-surface at height z, M(z) = mu(pi/2), mm. */
    public double needed(double z) {
        return needed(z, tieLength - z);
    }

    /** As {@link #needed(double)}, to about 1e-6 mm where that takes less time: for how it differs between two blanks. */
    double aboutNeeded(double z) {
        return needed(z, tieLength - z, CaneBend::about);
    }

    private double needed(double z, double s) {
        return needed(z, s, CaneBend::seam);
    }

    private double needed(double z, double s, ToDoubleFunction<CaneBend> how) {
        double found;
        try {
            Gouge cane = parts.gouge();
            GougeSection gouge = cane.at(s);
            double phi = how.applyAsDouble(new CaneBend(parts.staple().outside(z), gouge, cane.tubeRadius(), gougeWidthGrowth, thicknessGrowth));
            found = gougeWidthGrowth * cane.midSurface(gouge, phi);
        } catch (GeometryException e) {
            throw e;
        } catch (RuntimeException e) {
            throw Blame.of(blank, parts, z, s, e);
        }
        if (!Double.isFinite(found)) {
            throw Blame.of(blank, parts, z, s, null);
        }
        return found;
    }

    /**
     * Half-width the cane has on the mid-surface at height z, m(L - z), with swelling and the fitted length, mm.
     * @throws GeometryException when the cane is wider than the tube allows there, or has no thickness left at its edge
     * @throws IllegalArgumentException where the widths do not reach
     */
    public double given(double z) {
        return givenAt(tieLength - z);
    }

    private double givenAt(double s) {
        double found;
        try {
            GougeSection gouge = parts.gouge().at(s);
            double phi = edge(s, gouge).meeting();
            requireThickness(gouge, phi, s);
            found = shapeGrowth * parts.gouge().midSurface(gouge, phi) + delta;
        } catch (GeometryException e) {
            throw e;
        } catch (RuntimeException e) {
            if (e instanceof IllegalArgumentException && !covers(s)) {
                throw e;
            }
            throw Blame.of(blank, parts, tieLength - s, s, e);
        }
        if (!Double.isFinite(found)) {
            throw Blame.of(blank, parts, tieLength - s, s, null);
        }
        return found;
    }

    /** Whether the widths reach to the distance s from the fold. */
    public boolean covers(double s) {
        return s >= parts.width().from() && s <= parts.width().to() && parts.inside().filter(w -> s < w.from() || s > w.to()).isEmpty();
    }

    /** How far the sides are open at height z, at each seam of a straight blank, mm; negative when pinched. */
    public double open(double z) {
        return 2 * (needed(z) - given(z));
    }

    /**
     * How far the sides would be open at height z, were this blank tied at other lengths; as {@link #open(double)}. What the tie does not change is
     * computed once. The function throws {@link IllegalArgumentException} where the widths do not reach.
     * @throws GeometryException when the half-width needed cannot be told
     */
    public DoubleUnaryOperator openByTie(double z) {
        if (blank.gougeEnd().isPresent()) {
            return tie -> 2 * (needed(z, tie - z) - givenAt(tie - z));
        }
        double everywhere = needed(z);
        return tie -> 2 * (everywhere - givenAt(tie - z));
    }

    /** The edge of the blade at the distance s from the fold, as measured. */
    public Edge edge(double s) {
        return edge(s, parts.gouge().at(s));
    }

    /** Outer perimeter of the cane at height z, 8 M - P, mm; below the end of the cane that of the staple. */
    public double outerPerimeter(double z) {
        double staple = parts.staple().outside(z).perimeter();
        return z < tieLength - parts.foldedLength() ? staple : 8 * needed(z) - staple;
    }

    /** Tie length, mm. */
    public double tieLength() {
        return tieLength;
    }

    /** The parts it was made from. */
    public Parts parts() {
        return parts;
    }

    /** Growth of the cane's width from as cut to as tied. */
    public double shapeGrowth() {
        return shapeGrowth;
    }

    /** Growth of the tube's width from as gouged to as tied. */
    public double gougeWidthGrowth() {
        return gougeWidthGrowth;
    }

    /** Growth of thickness from as measured to as tied: swelling and what the thread takes. */
    public double thicknessGrowth() {
        return thicknessGrowth;
    }

    private Edge edge(double s, GougeSection gouge) {
        double radius = parts.gouge().tubeRadius();
        try {
            double outer = Edge.barkAngle(at(parts.width(), s), cut.measure(), radius);
            if (cut.edges() == EdgeKind.RADIAL) {
                return new Edge(outer, outer);
            }
            if (cut.edges() == EdgeKind.SQUARE) {
                return Edge.square(outer, gouge, radius);
            }
            ShapeWidth inside = parts.inside().orElseThrow();
            return Edge.twoWidths(outer, at(inside, s), gouge, radius);
        } catch (GeometryException e) {
            throw new GeometryException("shape", e.told() + " (" + Told.length(s, 1) + " from the fold)");
        }
    }

    /** The width at s, which may miss the last row by rounding. */
    private static double at(ShapeWidth width, double s) {
        return width.at(s < width.from() && s > width.from() - ROUNDING ? width.from() : s > width.to() && s < width.to() + ROUNDING ? width.to() : s);
    }

    private static void requireThickness(GougeSection gouge, double phi, double s) {
        double least = gouge.smallest(phi);
        if (!(least > 0)) {
            throw new GeometryException("gouge", "The gouge leaves no cane inside the blade: " + Told.length(least, 2) + " of thickness, " + Told.length(s, 1) + " from the fold.");
        }
    }
}

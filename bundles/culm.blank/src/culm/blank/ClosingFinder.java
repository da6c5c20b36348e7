package culm.blank;

import java.util.stream.DoubleStream;

import culm.geometry.GeometryException;
import culm.geometry.guard.Failure;
import culm.geometry.numeric.Chebyshev;
import culm.geometry.shape.Edge;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.words.Told;

/**
 * Finds where the sides close: asks whether staple and cane overlap and the data reaches, then follows the seam along the overlap ({@link SeamCourse}).
 * This is the reference path; every faster one is held against it.
 */
public final class ClosingFinder {
    private static final int KINK_STEPS = 48;

    private ClosingFinder() {
    }

    /** The closing of a straight blank. Never throws for a blank that cannot be computed: the reason is in the result. */
    public static Closing find(Blank blank) {
        return find(blank, 0);
    }

    /** The closing at a seam that is opened by {@code extra} mm (crooked; negative closes it). */
    public static Closing find(Blank blank, double extra) {
        return sides(blank, extra)[0];
    }

    /** The closings of both seams of a blank whose blades are displaced by {@code crooked} mm: the one that this opens, then the one that it closes. */
    static Closing[] sides(Blank blank, double crooked) {
        try {
            SeamCourse course = course(new Seam(blank));
            Closing opened = course.closing(crooked);
            return new Closing[] {opened, crooked == 0 ? opened : course.closing(-crooked)};
        } catch (GeometryException e) {
            return refused(e.path(), e.told());
        } catch (RuntimeException e) {
            return refused("", "The sides cannot be computed: " + Failure.words(e) + ".");
        }
    }

    private static Closing[] refused(String path, String why) {
        Closing refused = Closing.refused(path, why);
        return new Closing[] {refused, refused};
    }

    /**
     * How far the sides are open along the whole overlap.
     * @throws GeometryException when staple and cane do not overlap, the data does not reach, or the seam cannot be computed somewhere
     */
    public static SeamCourse course(Seam seam) {
        double top = seam.parts().staple().length();
        double tie = seam.tieLength();
        double end = tie - seam.parts().foldedLength();
        if (!(end >= 0)) {
            throw new GeometryException(Inputs.TIE_LENGTH, "The end of the cane would lie " + Told.length(-end, 1) + " below the bottom of the staple.");
        }
        if (!(end < top)) {
            throw new GeometryException(Inputs.TIE_LENGTH, "The cane ends at " + Told.length(end, 1) + ", above the staple's top at " + Told.length(top, 1) + ": they do not overlap.");
        }
        if (!(top < tie)) {
            throw new GeometryException(Inputs.TIE_LENGTH, "The fold at " + Told.length(tie, 1) + " is not above the staple's top at " + Told.length(top, 1) + ".");
        }
        ShapeWidth width = seam.parts().width();
        if (width.from() > tie - top || width.to() < tie - end) {
            throw new GeometryException("shape", "The widths reach " + reach(width.from(), width.to()) + " from the fold; needed are " + Told.number(tie - top, 1) + " to " + Told.length(tie - end, 1) + ".");
        }
        if (seam.parts().inside().filter(w -> w.from() > tie - top || w.to() < tie - end).isPresent()) {
            throw new GeometryException("inside", "The inside widths do not reach " + reach(tie - top, tie - end) + " from the fold.");
        }
        return SeamCourse.of(seam::open, end, top, marks(seam, end, top));
    }

    /** Heights of the rows of staple and shape, and where the other corner of the edge begins to meet first. */
    private static double[] marks(Seam seam, double end, double top) {
        DoubleStream rows = DoubleStream.concat(DoubleStream.of(seam.parts().staple().shape().breaks()),
                DoubleStream.of(seam.parts().width().breaks()).map(s -> seam.tieLength() - s));
        if (seam.parts().inside().isEmpty()) {
            return rows.toArray();
        }
        DoubleStream inner = DoubleStream.of(seam.parts().inside().get().breaks()).map(s -> seam.tieLength() - s);
        Chebyshev ahead = Chebyshev.of(z -> {
            Edge edge = seam.edge(seam.tieLength() - z);
            return edge.inner() - edge.outer();
        }, end, top, KINK_STEPS);
        return DoubleStream.concat(DoubleStream.concat(rows, inner), ahead.roots().stream().mapToDouble(Double::doubleValue)).toArray();
    }

    private static String reach(double from, double to) {
        return "from " + Told.number(from, 1) + " to " + Told.length(to, 1);
    }
}

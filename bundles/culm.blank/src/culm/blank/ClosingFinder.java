package culm.blank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Roots;

/**
 * Finds where the sides close: samples the overlap at every row and at most {@value #STEP} mm apart, looks for a turn between samples that
 * could touch zero, and brackets each change of sign; roots to {@value Roots#TOLERANCE} mm. This is the reference path: slow and sure.
 */
public final class ClosingFinder {
    /** Largest distance of two samples, mm. */
    public static final double STEP = 0.25;

    private ClosingFinder() {
    }

    /** The closing of a straight blank. Never throws for a blank that cannot be computed: the reason is in the result. */
    public static Closing find(Blank blank) {
        return find(blank, 0);
    }

    /** The closing at a seam that is opened by {@code extra} mm (crooked; negative closes it). */
    public static Closing find(Blank blank, double extra) {
        Seam seam;
        try {
            seam = new Seam(blank);
        } catch (GeometryException e) {
            return Closing.refused(e.path(), e.getMessage());
        }
        double top = seam.parts().staple().length();
        double tie = seam.tieLength();
        double end = tie - seam.parts().foldedLength();
        if (!(end >= 0)) {
            return Closing.refused(Inputs.TIE_LENGTH, say("The end of the cane would lie %.1f mm below the bottom of the staple.", -end));
        }
        if (!(end < top)) {
            return Closing.refused(Inputs.TIE_LENGTH, say("The cane ends at %.1f mm, above the staple's top at %.1f mm: they do not overlap.", end, top));
        }
        if (!(top < tie)) {
            return Closing.refused(Inputs.TIE_LENGTH, say("The fold at %.1f mm is not above the staple's top at %.1f mm.", tie, top));
        }
        if (seam.parts().width().from() > tie - top || seam.parts().width().to() < tie - end) {
            return Closing.refused("shape", say("The widths reach from %.1f to %.1f mm from the fold; needed are %.1f to %.1f mm.",
                    seam.parts().width().from(), seam.parts().width().to(), tie - top, tie - end));
        }
        if (seam.parts().inside().filter(w -> w.from() > tie - top || w.to() < tie - end).isPresent()) {
            return Closing.refused("inside", say("The inside widths do not reach from %.1f to %.1f mm from the fold.", tie - top, tie - end));
        }
        try {
            return scan(z -> seam.open(z) + extra, heights(seam, end, top));
        } catch (GeometryException e) {
            return Closing.refused(e.path(), e.getMessage());
        }
    }

    private static double[] heights(Seam seam, double end, double top) {
        NavigableSet<Double> all = new TreeSet<>(List.of(end, top));
        for (double z : seam.parts().staple().shape().breaks()) {
            all.add(z);
        }
        for (double s : seam.parts().width().breaks()) {
            all.add(seam.tieLength() - s);
        }
        seam.parts().inside().ifPresent(w -> {
            for (double s : w.breaks()) {
                all.add(seam.tieLength() - s);
            }
        });
        List<Double> marks = new ArrayList<>(all.subSet(end, true, top, true));
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i + 1 < marks.size(); i++) {
            double from = marks.get(i);
            double gap = marks.get(i + 1) - from;
            int steps = (int) Math.ceil(gap / STEP);
            for (int k = 0; k < steps; k++) {
                heights.add(from + gap * k / steps);
            }
        }
        heights.add(top);
        return heights.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Closing scan(DoubleUnaryOperator open, double[] z) {
        List<SeamPoint> course = new ArrayList<>();
        for (double height : z) {
            course.add(new SeamPoint(height, open.applyAsDouble(height)));
        }
        course = withTurns(open, course);
        List<Stretch> closed = new ArrayList<>();
        double since = Double.NaN;
        for (int i = 0; i < course.size(); i++) {
            SeamPoint here = course.get(i);
            boolean shut = here.open() <= 0;
            if (i == 0) {
                since = shut ? here.z() : Double.NaN;
            } else if (shut != course.get(i - 1).open() <= 0) {
                double root = Roots.between(open, course.get(i - 1).z(), here.z());
                if (shut) {
                    since = root;
                } else {
                    closed.add(new Stretch(since, root));
                    since = Double.NaN;
                }
            }
        }
        OptionalDouble at = Double.isNaN(since) ? OptionalDouble.empty() : OptionalDouble.of(since);
        at.ifPresent(from -> closed.add(new Stretch(from, z[z.length - 1])));
        return new Closing(at, Collections.unmodifiableList(closed), Collections.unmodifiableList(course), java.util.Optional.empty(), "");
    }

    /** Adds the turning point between two samples where the course may cross zero twice unseen. */
    private static List<SeamPoint> withTurns(DoubleUnaryOperator open, List<SeamPoint> course) {
        List<SeamPoint> all = new ArrayList<>(course);
        for (int i = 1; i + 1 < course.size(); i++) {
            double before = course.get(i - 1).open();
            double here = course.get(i).open();
            double after = course.get(i + 1).open();
            boolean sameSide = before <= 0 == here <= 0 && here <= 0 == after <= 0;
            boolean peak = here <= 0 && here >= before && here >= after;
            boolean dip = here > 0 && here <= before && here <= after;
            if (sameSide && (peak || dip)) {
                UnivariatePointValuePair turn = new BrentOptimizer(1e-9, 1e-12).optimize(MaxEval.unlimited(),
                        peak ? GoalType.MAXIMIZE : GoalType.MINIMIZE, new UnivariateObjectiveFunction(open::applyAsDouble),
                        new SearchInterval(course.get(i - 1).z(), course.get(i + 1).z(), course.get(i).z()));
                if (turn.getValue() <= 0 != here <= 0) {
                    all.add(new SeamPoint(turn.getPoint(), turn.getValue()));
                }
            }
        }
        all.sort(java.util.Comparator.comparingDouble(SeamPoint::z));
        return all;
    }

    private static String say(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }
}

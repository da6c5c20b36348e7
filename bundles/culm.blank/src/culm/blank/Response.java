package culm.blank;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.stream.IntStream;

import culm.geometry.GeometryException;
import culm.geometry.numeric.Chebyshev;

/**
 * How the seam near the staple's top answers the inputs, within their give or take: at {@value #NODES} distances v below the top, G is the blank's own plus a
 * quadratic in each input that is met at the middle and at {@value #STEP} of its give or take to either side. What two inputs do together beyond
 * what each does alone is left out. An input is not moved out of the range of its description. Seen on seeded designs: within 2 % of the band.
 */
final class Response {
    static final int NODES = 8;
    /** Where a quadratic is met best on the whole range: the zeros of Chebyshev's polynomial of degree three. */
    private static final double STEP = 0.8660254037844386;
    private static final double SMALL = 0.02;
    private static final double NOTHING = 1e-9;
    /** Of the barycentric formula in the extrema of a Chebyshev polynomial. */
    private static final double[] WEIGHTS = IntStream.range(0, NODES).mapToDouble(j -> (j % 2 == 0 ? 1 : -1) * (j == 0 || j == NODES - 1 ? 0.5 : 1)).toArray();
    /** Inputs that the seam does not feel. */
    static final Set<String> WITHOUT_EFFECT = Set.of(Inputs.CORK_TOP, Inputs.WALL, Inputs.EARS_WIDTH, Inputs.EARS_LENGTH, Inputs.WRAP_TOP,
            Inputs.WRAP_BOTTOM, Inputs.FINISHED, Inputs.SLIPPED, Inputs.CROOKED, Inputs.THREAD_DIAMETER, Inputs.THREAD_PITCH, Inputs.START_TURNS);

    private final Blank blank;
    private final double top;
    private final double from;
    private final double to;
    private final double[] depth = new double[NODES];
    private final double[] base = new double[NODES];
    private final double[] needed = new double[NODES];
    private final double[] about = new double[NODES];
    private final double[] given = new double[NODES];
    private final List<Answer> answers;

    /** What one input does: at each node G rises by slope times its move, and bend times the square; it moves from lowest to highest. */
    private record Answer(Input input, double[] slope, double[] bend, double lowest, double highest) {
    }

    /**
     * @param from smallest distance below the top, mm, not negative; @param to largest one, on the overlap
     * @param besides where a part of the inputs is tried at the same time
     * @throws GeometryException when the blank itself cannot be computed there
     */
    Response(Blank blank, double from, double to, Optional<Executor> besides) {
        this.blank = blank;
        this.top = blank.number(Inputs.STAPLE_LENGTH);
        this.from = from;
        this.to = to;
        Seam seam = new Seam(blank);
        for (int j = 0; j < NODES; j++) {
            depth[j] = Chebyshev.node(from, to, NODES - 1 - j, NODES - 1);
            needed[j] = seam.needed(top - depth[j]);
            about[j] = seam.aboutNeeded(top - depth[j]);
            given[j] = seam.given(top - depth[j]);
            base[j] = 2 * (needed[j] - given[j]);
        }
        List<Input> moving = blank.inputs().stream().filter(i -> i.tolerance().plusMinus() > 0 && !WITHOUT_EFFECT.contains(i.path())).toList();
        Answer[] all = new Answer[moving.size()];
        Together.each(all.length, i -> all[i] = answer(moving.get(i)), besides);
        answers = Arrays.stream(all).filter(Objects::nonNull).toList();
    }

    /** Null where the input cannot be moved. */
    private Answer answer(Input input) {
        double h = STEP * input.tolerance().plusMinus();
        double most = input.parameter().max() - input.value();
        double least = input.parameter().min() - input.value();
        double above = Math.min(h, most);
        double below = Math.max(-h, least);
        double[] up = moved(input, above);
        double[] down = moved(input, below);
        if (up == null && down == null) {
            above *= SMALL;
            below *= SMALL;
            up = moved(input, above);
            down = moved(input, below);
        }
        if (up == null && down == null) {
            return null;
        }
        double[] slope = new double[NODES];
        double[] bend = new double[NODES];
        for (int j = 0; j < NODES; j++) {
            double rise = up == null ? Double.NaN : (up[j] - base[j]) / above;
            double fall = down == null ? Double.NaN : (down[j] - base[j]) / below;
            boolean both = up != null && down != null;
            bend[j] = both ? (rise - fall) / (above - below) : 0;
            slope[j] = both ? rise - bend[j] * above : up == null ? fall : rise;
        }
        return new Answer(input, slope, bend, least, most);
    }

    /** G at the nodes with one input moved; null where that is refused. What the input cannot change is not computed again. */
    private double[] moved(Input input, double by) {
        if (Math.abs(by) < NOTHING) {
            return null;
        }
        Touched touched = Touched.by(blank, input.path());
        try {
            Blank other = blank.with(input.path(), input.value() + by);
            Seam seam = new Seam(other);
            double otherTop = other.number(Inputs.STAPLE_LENGTH);
            double[] open = new double[NODES];
            for (int j = 0; j < NODES; j++) {
                double z = otherTop - depth[j];
                double more = touched.needed() ? seam.aboutNeeded(z) - about[j] : 0;
                open[j] = 2 * (needed[j] + more - (touched.given() ? seam.given(z) : given[j]));
            }
            return open;
        } catch (IllegalArgumentException refusedOrOutsideTheRows) {
            return null;
        }
    }

    /** Whether it is the one between these distances below the top, mm. */
    boolean spans(double nearest, double farthest) {
        return from == nearest && to == farthest;
    }

    /** The inputs that count, with their give or take. */
    List<Input> inputs() {
        return answers.stream().map(Answer::input).toList();
    }

    /** Distance of node j below the staple's top, mm, ascending. */
    double depth(int j) {
        return depth[j];
    }

    /**
     * G at the nodes, for many moves at once.
     * @param x how far what has a name is moved, [name][move]; @param places where in it each of {@link #inputs()} stands; @param open receives G, [node][move]
     */
    void open(double[][] x, int[] places, double[][] open) {
        int moves = open[0].length;
        double[] by = new double[moves];
        for (int j = 0; j < NODES; j++) {
            Arrays.fill(open[j], base[j]);
        }
        for (int i = 0; i < places.length; i++) {
            Answer answer = answers.get(i);
            double[] moved = x[places[i]];
            for (int m = 0; m < moves; m++) {
                by[m] = Math.min(answer.highest, Math.max(answer.lowest, moved[m]));
            }
            for (int j = 0; j < NODES; j++) {
                add(answer.slope[j], answer.bend[j], by, open[j]);
            }
        }
    }

    private static void add(double slope, double bend, double[] by, double[] open) {
        for (int m = 0; m < by.length; m++) {
            open[m] += (slope + bend * by[m]) * by[m];
        }
    }

    /** G between the nodes, by barycentric interpolation in the extrema of a Chebyshev polynomial. @param at distance below the top, within the nodes */
    double through(double[] open, double at) {
        double above = 0;
        double below = 0;
        for (int j = 0; j < NODES; j++) {
            double distance = at - depth[j];
            if (distance == 0) {
                return open[j];
            }
            double weight = WEIGHTS[j] / distance;
            above += weight * open[j];
            below += weight;
        }
        return above / below;
    }
}

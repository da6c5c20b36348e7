package culm.blank.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * The allowed stretches of one number between two ends: it is tried in steps and at some places named beforehand, and each change between allowed and not is
 * narrowed down to {@value #ACCURACY}. A stretch shorter than a step in which no place was named is not seen.
 */
final class Stretches {
    static final double ACCURACY = 1e-6;
    private final DoubleFunction<Optional<Bound>> against;

    Stretches(DoubleFunction<Optional<Bound>> against) {
        this.against = against;
    }

    /** @param places tried as well, where they lie between the ends; @param low what ends the range below; @param high what ends it above */
    List<Allowed> between(double from, double to, double step, double[] places, Bound low, Bound high) {
        int steps = (int) Math.ceil((to - from) / step);
        double[] tried = DoubleStream.concat(DoubleStream.of(places).filter(p -> p > from && p < to),
                DoubleStream.iterate(0, i -> i <= steps, i -> i + 1).map(i -> i == steps ? to : from + i * step)).sorted().distinct().toArray();
        List<Allowed> found = new ArrayList<>();
        Bound below = low;
        double since = Double.NaN;
        double before = Double.NaN;
        Optional<Bound> stood = Optional.of(low);
        for (double here : tried) {
            Optional<Bound> stands = against.apply(here);
            if (stands.isEmpty() && Double.isNaN(since)) {
                Edge edge = Double.isNaN(before) ? new Edge(here, low) : edge(before, here, stood.orElseThrow());
                since = edge.at();
                below = edge.bound();
            } else if (stands.isPresent() && !Double.isNaN(since)) {
                Edge edge = edge(here, before, stands.get());
                found.add(new Allowed(since, edge.at(), below, edge.bound()));
                since = Double.NaN;
            }
            before = here;
            stood = stands;
        }
        if (!Double.isNaN(since)) {
            found.add(new Allowed(since, to, below, high));
        }
        return found;
    }

    private record Edge(double at, Bound bound) {
    }

    /** The allowed end next to what is not; bad is not allowed, good is. */
    private Edge edge(double bad, double good, Bound first) {
        double out = bad;
        double in = good;
        Bound bound = first;
        while (Math.abs(in - out) > ACCURACY) {
            double mid = 0.5 * (in + out);
            Optional<Bound> stands = against.apply(mid);
            if (stands.isPresent()) {
                out = mid;
                bound = stands.get();
            } else {
                in = mid;
            }
        }
        return new Edge(in, bound);
    }
}

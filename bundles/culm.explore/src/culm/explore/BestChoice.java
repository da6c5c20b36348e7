package culm.explore;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.Well19937a;

import culm.blank.Blank;
import culm.blank.Limits;
import culm.explore.internal.run.Block;
import culm.explore.internal.run.Paired;

/**
 * Searches the free inputs for the blank that passes all rules most often under its give or take. All candidates see the same draws, so that differences
 * between them are not chance. Few combinations are all tried; many are searched by CMA-ES (Hipparchus; N. Hansen, The CMA Evolution Strategy: A
 * Tutorial, arXiv:1604.00772) on positions from 0 to 1, then step by step around the best. The gain is told from fresh draws: those of
 * a {@link ToleranceRun} with the same seed, so that both tell the same share of the same blank; the search draws with the next seed.
 */
public final class BestChoice {
    private static final int EVERY = 3000;
    private static final int EVALUATIONS = 1500;
    private static final int DRAWS = 4096;
    private static final long FRESH = 100_000;
    private static final double PULL = 1e-3;
    private static final double MOST_OFF = 100;
    private static final int POLISH = 200;
    private final Study study;
    private final List<Free> free;
    private final long seed;
    private final int threads;
    private final Watcher<Void> watcher;
    private final Map<List<Double>, Double> seen = new HashMap<>();
    private double[] best;
    private double bestWorth = Double.NEGATIVE_INFINITY;

    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private BestChoice(Study study, List<Free> free, long seed, int threads, Watcher<Void> watcher) {
        this.study = study;
        this.free = free;
        this.seed = seed;
        this.threads = threads;
        this.watcher = watcher;
    }

    /**
     * Searches.
     * @throws IllegalArgumentException when nothing is free, or a free input does not go with the base
     */
    public static Chosen search(Study study, List<Free> free, long seed, int threads, Watcher<Void> watcher) {
        if (free.isEmpty()) {
            throw new IllegalArgumentException("Nothing is free to choose.");
        }
        return new BestChoice(study, List.copyOf(free), seed, threads, watcher).run();
    }

    private Chosen run() {
        double combinations = free.stream().mapToDouble(f -> f.any() ? Double.POSITIVE_INFINITY : f.axis().size()).reduce(1, (a, b) -> a * b);
        boolean every = combinations <= EVERY;
        boolean partial = false;
        try {
            if (every) {
                tryAll(new double[free.size()], 0, (long) combinations);
            } else {
                evolve();
                polish();
            }
        } catch (Stopped stopped) {
            partial = true;
        }
        if (best == null) {
            best = positions();
        }
        return told(every && !partial, partial);
    }

    private Chosen told(boolean every, boolean partial) {
        double[] values = values(best);
        Blank blank = Free.into(study.base(), free, values);
        Study chosen = asked(values);
        long[] counts = Paired.compare(study, chosen, FRESH, seed);
        double[] gain = Paired.interval(counts);
        ToleranceResult base = ToleranceRun.run(study, FRESH, seed, threads, Watcher.none());
        ToleranceResult now = ToleranceRun.run(chosen, FRESH, seed, threads, Watcher.none());
        List<String> texts = java.util.stream.IntStream.range(0, values.length).mapToObj(i -> free.get(i).text(values[i])).toList();
        return new Chosen(Arrays.stream(values).boxed().toList(), texts, blank, base, now, now.passed().value() - base.passed().value(), gain[0], gain[1], every,
                seen.size(), partial);
    }

    private void tryAll(double[] position, int axis, long all) {
        if (axis == free.size()) {
            worth(position, all);
            return;
        }
        int size = free.get(axis).axis().size();
        for (int i = 0; i < size; i++) {
            position[axis] = (i + 0.5) / size;
            tryAll(position, axis + 1, all);
        }
    }

    private void evolve() {
        int n = free.size();
        int population = 4 + (int) Math.floor(3 * Math.log(n)) + 4;
        CMAESOptimizer optimizer = new CMAESOptimizer(10_000, 0, true, 0, 1, new Well19937a(seed + 1), false, new SimpleValueChecker(1e-9, 1e-9));
        double[] sigma = new double[n];
        Arrays.fill(sigma, 0.25);
        double[] one = new double[n];
        Arrays.fill(one, 1);
        worth(positions(), EVALUATIONS);
        try {
            optimizer.optimize(new MaxEval(EVALUATIONS), new ObjectiveFunction(p -> worth(p, EVALUATIONS)), GoalType.MAXIMIZE, new InitialGuess(best.clone()),
                    new SimpleBounds(new double[n], one), new CMAESOptimizer.Sigma(sigma), new CMAESOptimizer.PopulationSize(population));
        } catch (MathIllegalStateException spent) {
            // as many evaluations as were granted: the best one seen is kept
        }
    }

    /** One step up or down on each axis, as long as that helps. */
    private void polish() {
        boolean better = true;
        for (int round = 0; better && round < POLISH; round++) {
            double before = bestWorth;
            double[] around = best.clone();
            for (int i = 0; i < around.length; i++) {
                double step = free.get(i).any() ? 0.01 : 1.0 / free.get(i).axis().size();
                for (int side = -1; side <= 1; side += 2) {
                    double[] moved = around.clone();
                    moved[i] = Math.max(0, Math.min(1, moved[i] + side * step));
                    worth(moved, EVALUATIONS);
                }
            }
            better = bestWorth > before;
        }
    }

    /** Where the base lies, as near as may be. */
    private double[] positions() {
        return free.stream().mapToDouble(f -> {
            if (!(f.axis() instanceof Axis.Numbers numbers)) {
                return 0.5 / f.axis().size();
            }
            double value = Varied.value(study.base(), numbers.id());
            if (f.any()) {
                return numbers.most() == numbers.least() ? 0 : Math.max(0, Math.min(1, (value - numbers.least()) / (numbers.most() - numbers.least())));
            }
            int nearest = 0;
            for (int i = 1; i < numbers.size(); i++) {
                nearest = Math.abs(numbers.values()[i] - value) < Math.abs(numbers.values()[nearest] - value) ? i : nearest;
            }
            return (nearest + 0.5) / numbers.size();
        }).toArray();
    }

    private Study asked(double[] values) {
        List<String> parts = free.stream().filter(f -> f.axis() instanceof Axis.Parts).map(f -> f.axis().id()).toList();
        return study.about(Free.into(study.base(), free, values), parts);
    }

    private double[] values(double[] position) {
        double[] values = new double[position.length];
        Arrays.setAll(values, i -> free.get(i).value(position[i]));
        return values;
    }

    /** Share that passes; a small pull towards the turns wanted tells candidates apart where the share does not. */
    private double worth(double[] position, long all) {
        if (watcher.cancelled()) {
            throw new Stopped();
        }
        double[] values = values(position);
        Double known = seen.get(Arrays.stream(values).boxed().toList());
        if (known != null) {
            return known;
        }
        double[] glance = new Block(asked(values), seed + 1).glance(DRAWS);
        double off = Math.abs(glance[2] - study.limits().get(Limits.TURNS_WANTED));
        double worth = glance[0] - PULL * (Double.isNaN(off) ? MOST_OFF : Math.min(MOST_OFF, off + 10 * glance[1]));
        seen.put(Arrays.stream(values).boxed().toList(), worth);
        if (worth > bestWorth) {
            bestWorth = worth;
            best = position.clone();
        }
        Supplier<Void> nothing = () -> null;
        watcher.progress(seen.size(), all, nothing);
        return worth;
    }
}

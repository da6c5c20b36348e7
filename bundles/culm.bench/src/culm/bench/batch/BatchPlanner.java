package culm.bench.batch;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

import culm.blank.Assessor;
import culm.blank.Band;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.geometry.GeometryException;
import culm.geometry.words.Told;

/**
 * Splits a batch into the fewest settings that serve all staples which any setting can serve, and gives each setting the tie length that
 * brings its staples nearest to the turns wanted.
 */
public final class BatchPlanner {
    /** Tie lengths are multiples of this where nothing else is said, mm. */
    public static final double USUAL_STEP = 0.1;
    /** The smallest step, mm. */
    public static final double LEAST_STEP = 0.01;
    /** The largest step, mm. */
    public static final double MOST_STEP = 5;
    /** The largest margin, turns; the smallest and usual one is 0. */
    public static final double MOST_MARGIN = 10;
    /** What a step is, for people. */
    public static final String STEP_HELP = "tie lengths are multiples of this";
    /** What a margin is, for people. */
    public static final String MARGIN_HELP = "how far to stay away from the fewest and the most turns of my limits";
    private final Limits limits;
    private final double step;
    private final double margin;

    /**
     * @param step   tie lengths are set to multiples of this, mm; {@link #LEAST_STEP} to {@link #MOST_STEP}
     * @param margin turns to stay away from the limits on either side, 0 to {@link #MOST_MARGIN}
     */
    public BatchPlanner(Limits limits, double step, double margin) {
        this.limits = limits;
        this.step = step;
        this.margin = margin;
    }

    private record Tried(StapleReadings staple, Blank blank, StapleTies ties) {
    }

    /** @param design everything but the staples */
    public BatchPlan plan(Blank design, StapleBatch batch) {
        double longest = batch.staples().stream().mapToDouble(s -> s.length().orElse(0)).max().orElse(0);
        TieFinder finder = new TieFinder(design, limits, step, margin, longest);
        List<Tried> tried = batch.staples().parallelStream().map(s -> tryOut(finder, batch, s)).toList();
        List<SetAside> aside = new ArrayList<>();
        List<Tried> fit = new ArrayList<>();
        for (Tried t : tried) {
            if (allowed(finder, t).isEmpty()) {
                aside.add(new SetAside(t.staple, t.ties.reason()));
            } else {
                fit.add(t);
            }
        }
        List<BitSet> allowed = fit.stream().map(t -> allowed(finder, t)).toList();
        Splitter.Split split = Splitter.fewest(allowed);
        double[][] turns = fit.stream().map(t -> turns(finder, t)).toArray(double[][]::new);
        int[] serves = new Centring(allowed, turns, limits.get(Limits.TURNS_WANTED)).improve(split.settings());
        return new BatchPlan(batch, settings(finder, batch, fit, serves), split.fewest(), aside, Doubts.in(batch));
    }

    private static Tried tryOut(TieFinder finder, StapleBatch batch, StapleReadings staple) {
        if (!staple.setAside().isBlank()) {
            return new Tried(staple, null, new StapleTies(List.of(), t -> Double.NaN, Told.plain(staple.setAside())));
        }
        try {
            Blank blank = StapleOnBlank.put(finder.design(), staple, batch.caliper(), batch.wrapBelowTop());
            return new Tried(staple, blank, finder.find(blank));
        } catch (GeometryException e) {
            return new Tried(staple, null, new StapleTies(List.of(), t -> Double.NaN, e.told()));
        }
    }

    private static BitSet allowed(TieFinder finder, Tried t) {
        BitSet set = new BitSet();
        IntStream.rangeClosed(finder.first(), finder.last()).filter(k -> t.ties.allows(finder.tie(k))).forEach(k -> set.set(k - finder.first()));
        return set;
    }

    private static double[] turns(TieFinder finder, Tried t) {
        return IntStream.rangeClosed(finder.first(), finder.last())
                .mapToDouble(k -> t.ties.allows(finder.tie(k)) ? t.ties.turnsLeft().applyAsDouble(finder.tie(k)) : Double.NaN).toArray();
    }

    private List<Setting> settings(TieFinder finder, StapleBatch batch, List<Tried> fit, int[] serves) {
        Map<Integer, List<Integer>> by = new TreeMap<>();
        for (int i = 0; i < fit.size(); i++) {
            by.computeIfAbsent(serves[i], k -> new ArrayList<>()).add(i);
        }
        List<Setting> settings = new ArrayList<>();
        by.forEach((k, staples) -> {
            double tie = finder.tie(finder.first() + k);
            List<Served> served = staples.stream().map(fit::get).map(t -> new Served(t.staple, t.ties, tie, t.blank.number(Inputs.WRAP_TOP),
                    t.ties.turnsLeft().applyAsDouble(tie))).toList();
            settings.add(new Setting(tie, served, giveOrTake(staples.stream().map(fit::get).toList(), tie)));
        });
        return settings;
    }

    /** Of the staple in the middle by turns; the others differ little. */
    private static double giveOrTake(List<Tried> staples, double tie) {
        List<Tried> ordered = staples.stream().sorted(Comparator.comparingDouble(t -> t.ties.turnsLeft().applyAsDouble(tie))).toList();
        Optional<Band> band = Assessor.assess(ordered.get(ordered.size() / 2).blank.with(Inputs.TIE_LENGTH, tie)).turnsBand();
        return band.map(Band::half).orElse(Double.NaN);
    }
}

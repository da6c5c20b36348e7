package culm.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import culm.blank.rules.Rule;
import culm.explore.internal.run.Block;
import culm.explore.internal.run.Tally;
import culm.explore.internal.run.Workers;

/**
 * Draws many blanks, closes and judges every one, and counts (JCGM 101:2008, propagation of distributions). The result depends on study, seed and number of
 * blanks alone, not on the number of threads.
 */
public final class ToleranceRun {
    /** Blanks that a thread takes at a time. */
    private static final long PIECE = 4096;

    private ToleranceRun() {
    }

    /**
     * Runs, and returns when all is done or the watcher has cancelled.
     * @param blanks  how many, positive
     * @param threads how many threads, positive
     * @throws IllegalArgumentException when the study cannot be run
     */
    public static ToleranceResult run(Study study, long blanks, long seed, int threads, Watcher<ToleranceResult> watcher) {
        if (blanks <= 0 || threads <= 0) {
            throw new IllegalArgumentException("A run needs at least one blank and one thread.");
        }
        List<Block> workers = new ArrayList<>();
        for (int i = 0; i < threads; i++) {
            workers.add(new Block(study, seed));
        }
        List<Workers.Work> works = new ArrayList<>();
        for (Block block : workers) {
            works.add(piece -> block.count(piece * PIECE, Math.min(blanks, (piece + 1) * PIECE)));
        }
        long pieces = (blanks + PIECE - 1) / PIECE;
        Workers.run(works, pieces, watcher::cancelled, () -> {
            ToleranceResult[] made = new ToleranceResult[1];
            watcher.progress(done(workers), blanks, () -> made[0] == null ? made[0] = result(study, workers, blanks, seed) : made[0]);
        });
        return result(study, workers, blanks, seed);
    }

    private static long done(List<Block> workers) {
        return workers.stream().mapToLong(Block::counted).sum();
    }

    private static ToleranceResult result(Study study, List<Block> workers, long wanted, long seed) {
        Block first = workers.get(0);
        Tally all = first.tally();
        long reference = 0;
        for (Block block : workers) {
            reference += block.addTo(all);
        }
        List<Rule> rules = first.rules();
        List<RuleShare> shares = new ArrayList<>();
        for (int r = 0; r < rules.size(); r++) {
            Share passed = new Share(all.blanks - all.failed[r], all.blanks);
            int row = r;
            shares.add(new RuleShare(rules.get(r).id(), rules.get(r).name(), passed, causes(study, first, all, i -> all.failures[row][i])));
        }
        List<Cause> any = causes(study, first, all, i -> all.failures[rules.size()][i]);
        Distribution turns = new Distribution(Tally.TURNS_FROM, Tally.TURNS_CELL, all.turns, all.never, all.turnsMean(), all.turnsDeviation());
        Distribution closes = new Distribution(Tally.HEIGHT_FROM, Tally.HEIGHT_CELL, all.heights, all.never, all.heightMean(), all.heightDeviation());
        return new ToleranceResult(wanted, all.blanks, seed, new Share(all.passedAll, all.blanks), List.copyOf(shares), any, turns, closes, all.never,
                all.refused, reference, first.judge.oneByOne().stream().map(Rule::id).toList());
    }

    private static List<Cause> causes(Study study, Block block, Tally all, IntFunction<long[]> failures) {
        return IntStream.range(0, all.thirds.length).mapToObj(i -> {
            long[] fails = failures.apply(i);
            long[] of = all.thirds[i];
            String path = block.draws.moving().get(i).path();
            return new Cause(path, Varied.label(study.base(), path), new Share(fails[0], of[0]), new Share(fails[1], of[1]), new Share(fails[2], of[2]));
        }).filter(c -> c.low().hits() + c.middle().hits() + c.high().hits() > 0).sorted(Comparator.comparingDouble(Cause::weight).reversed()).toList();
    }
}

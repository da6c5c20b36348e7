package culm.explore.internal.run;

import java.util.List;

import culm.blank.Inputs;
import culm.blank.rules.Rule;
import culm.explore.Study;
import culm.explore.internal.fast.BlockCloser;
import culm.explore.internal.fast.Closers;
import culm.explore.internal.fast.Columns;

/** One thread's tools: columns, draws, closer, judge, tally. */
public final class Block {
    public final Columns columns;
    public final BlockCloser closer;
    public final Judge judge;
    public final Draws draws;
    private final double[] wrapTop;
    private final double[] pitch;
    private Tally tally;
    private volatile long counted;

    public Block(Study study, long seed) {
        columns = new Columns(study.base(), Draws.ranges(study.base(), study.varied()));
        closer = Closers.of(columns);
        judge = new Judge(study.rules(), study.limits(), columns, closer);
        draws = new Draws(study.varied(), columns, seed);
        wrapTop = columns.of(Inputs.WRAP_TOP);
        pitch = columns.of(Inputs.THREAD_PITCH);
    }

    /** An empty tally for this study. */
    public Tally tally() {
        return new Tally(judge.rules().size(), draws.moving().size());
    }

    /** The rules that are counted. */
    public List<Rule> rules() {
        return judge.rules();
    }

    /** Draws, closes, judges and counts the blanks from one number up to another. */
    public synchronized void count(long from, long to) {
        tally = tally == null ? tally() : tally;
        for (long first = from; first < to; first += Columns.SIZE) {
            int n = (int) Math.min(Columns.SIZE, to - first);
            draws.fill(first, n);
            closer.close(n);
            judge.judge(n);
            tally.count(draws, closer.closesAt(), closer.states(), wrapTop, pitch, judge.failed(), n);
        }
        counted = tally.blanks;
    }

    /** Draws, closes and judges without counting. @return a bit for each rule that a lane fails, valid until the next call */
    int[] judged(long first, int n) {
        draws.fill(first, n);
        closer.close(n);
        judge.judge(n);
        return judge.failed();
    }

    /** What a search asks of a candidate: the first draws, without keeping anything. @return share that passes, share without a closing, mean of turns left */
    public double[] glance(int blanks) {
        int passed = 0;
        int closed = 0;
        double turns = 0;
        for (int first = 0; first < blanks; first += Columns.SIZE) {
            int n = Math.min(Columns.SIZE, blanks - first);
            int[] failed = judged(first, n);
            for (int l = 0; l < n; l++) {
                double left = (wrapTop[l] - closer.closesAt()[l]) / pitch[l];
                passed += failed[l] == 0 ? 1 : 0;
                closed += left == left ? 1 : 0;
                turns += left == left ? left : 0;
            }
        }
        return new double[] {(double) passed / blanks, 1 - (double) closed / blanks, closed == 0 ? Double.NaN : turns / closed};
    }

    /** How many blanks were counted. */
    public long counted() {
        return counted;
    }

    /** Adds what was counted so far to another tally, between two calls of {@link #count}. @return blanks closed by the reference path */
    public synchronized long addTo(Tally all) {
        if (tally != null) {
            all.add(tally);
        }
        return closer.referred();
    }
}

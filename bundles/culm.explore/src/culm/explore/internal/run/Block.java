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
    private final Tally tally;
    private volatile long counted;

    public Block(Study study, long seed) {
        columns = new Columns(study.base(), Draws.ranges(study.base(), study.varied()));
        closer = Closers.of(columns);
        judge = new Judge(study.rules(), study.limits(), columns, closer);
        draws = new Draws(study.varied(), columns, seed);
        wrapTop = columns.of(Inputs.WRAP_TOP);
        pitch = columns.of(Inputs.THREAD_PITCH);
        tally = tally();
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
        for (long first = from; first < to; first += Columns.SIZE) {
            int n = (int) Math.min(Columns.SIZE, to - first);
            draws.fill(first, n);
            closer.close(n);
            judge.judge(n);
            tally.count(draws, closer.closesAt(), closer.states(), wrapTop, pitch, judge.failed(), n);
        }
        counted = tally.blanks;
    }

    /** How many blanks were counted. */
    public long counted() {
        return counted;
    }

    /** Adds what was counted so far to another tally, between two calls of {@link #count}. @return blanks closed by the reference path */
    public synchronized long addTo(Tally all) {
        all.add(tally);
        return closer.referred();
    }
}

package culm.explore.internal.fast;

import culm.blank.Blank;
import culm.blank.Closing;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;

/** The reference path, lane by lane: any kind of part, slow and sure. */
public final class ReferenceCloser implements BlockCloser {
    private final Columns columns;
    private final double[] closesAt = new double[Columns.SIZE];
    private final double[] openAtTop = new double[Columns.SIZE];
    private final byte[] states = new byte[Columns.SIZE];
    private long referred;

    public ReferenceCloser(Columns columns) {
        this.columns = columns;
    }

    @Override
    public void close(int n) {
        for (int l = 0; l < n; l++) {
            close(l, closesAt, openAtTop, states);
        }
    }

    /** Closes one lane into the columns given. */
    void close(int lane, double[] at, double[] open, byte[] state) {
        referred++;
        Blank blank = columns.blank(lane);
        Closing closing = ClosingFinder.find(blank, Math.abs(blank.number(Inputs.CROOKED)));
        at[lane] = closing.at().orElse(Double.NaN);
        open[lane] = closing.openAtTop().orElse(Double.NaN);
        state[lane] = state(closing);
    }

    static byte state(Closing closing) {
        if (closing.problem().isPresent()) {
            return State.REFUSED;
        }
        if (closing.at().isEmpty()) {
            return closing.closed().isEmpty() ? State.NEVER : State.ONLY_BELOW;
        }
        if (closing.closedEverywhere()) {
            return State.EVERYWHERE;
        }
        return closing.closed().size() > 1 ? State.AGAIN : State.CLOSES;
    }

    @Override
    public double[] closesAt() {
        return closesAt;
    }

    @Override
    public double[] openAtTop() {
        return openAtTop;
    }

    @Override
    public byte[] states() {
        return states;
    }

    @Override
    public long referred() {
        return referred;
    }
}

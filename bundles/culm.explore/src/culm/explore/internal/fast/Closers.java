package culm.explore.internal.fast;

/** The closer for a blank's parts. */
public final class Closers {
    private Closers() {
    }

    /** A supplier of closers for one base; each thread takes its own. */
    public static BlockCloser of(Columns columns) {
        return Kinds.known(columns.base()) ? new LanesCloser(columns, Plan.of(columns)) : new ReferenceCloser(columns);
    }
}

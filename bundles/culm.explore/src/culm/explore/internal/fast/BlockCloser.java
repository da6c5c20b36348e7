package culm.explore.internal.fast;

/** Closes blocks of blanks whose numbers stand in {@link Columns}. Not shared between threads. */
public interface BlockCloser {
    /** Closes the first n lanes. */
    void close(int n);

    /** Where the sides close, mm; NaN where they never do or nothing can be computed. */
    double[] closesAt();

    /** How far the sides are open at the staple's top, mm; negative when pinched; NaN where refused. */
    double[] openAtTop();

    /** One of {@link State}. */
    byte[] states();

    /** How many lanes so far were closed by the reference path. */
    long referred();
}

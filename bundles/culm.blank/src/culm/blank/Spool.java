package culm.blank;

/**
 * What is left on a spool.
 *
 * @param length thread on the spool, mm, not negative
 * @param extra  thread that a blank takes beside the turns, for knots and tails, mm, not negative
 */
public record Spool(double length, double extra) {
    /** @throws IllegalArgumentException when a length is negative or not a number */
    public Spool {
        if (!(length >= 0 && extra >= 0 && Double.isFinite(length) && Double.isFinite(extra))) {
            throw new IllegalArgumentException("a spool with " + length + " mm, " + extra + " mm for each blank beside the turns, is not possible");
        }
    }

    /** Thread that one blank takes, mm. */
    public double perBlank(ThreadPath thread) {
        return thread.length() + extra;
    }

    /** How many blanks it is enough for. */
    public int blanks(ThreadPath thread) {
        return (int) Math.min(Integer.MAX_VALUE, Math.floor(length / perBlank(thread)));
    }

    /** What is left after so many blanks, mm; negative when it is not enough. */
    public double left(ThreadPath thread, int blanks) {
        return length - blanks * perBlank(thread);
    }
}

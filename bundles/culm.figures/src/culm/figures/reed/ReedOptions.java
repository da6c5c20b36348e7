package culm.figures.reed;

import culm.figures.Lengths;

/**
 * How the reed view is laid out.
 *
 * @param across      enlargement across the axis; 1 is true to scale, anything else is said in the drawing
 * @param leastRows   room is kept for so many rows of labels, so that a moved mark does not move the page
 * @param graphHeight height of the graph, drawing units
 * @param handles     whether the ruler has handles
 * @param laneMost    largest height of the wide side and of the cut, drawing units; what is higher when zoomed shows its upper part
 * @param unit        in what lengths are written
 */
public record ReedOptions(double across, int leastRows, double graphHeight, boolean handles, double laneMost, Lengths unit) {
    /** For the window. */
    public static final ReedOptions WINDOW = new ReedOptions(1, 4, 150, true, 260, Lengths.MM);
    /** For paper. */
    public static final ReedOptions PAPER = new ReedOptions(1, 1, 150, false, 1000, Lengths.MM);

    /** @throws IllegalArgumentException when something is not positive */
    public ReedOptions {
        if (!(across > 0 && graphHeight > 0 && laneMost > 0 && leastRows >= 0)) {
            throw new IllegalArgumentException("no room for a reed: " + across + ", " + leastRows + ", " + graphHeight);
        }
    }

    /** The same with lengths in another unit. */
    public ReedOptions in(Lengths other) {
        return new ReedOptions(across, leastRows, graphHeight, handles, laneMost, other);
    }
}

package culm.figures.chart;

/**
 * What an axis measures.
 *
 * @param words  the trade's words
 * @param unit   its unit, empty for counts
 * @param counts whether only whole numbers mean something on it
 */
public record AxisLabel(String words, String unit, boolean counts) {
    /** An axis on which every number means something. */
    public AxisLabel(String words, String unit) {
        this(words, unit, false);
    }

    /** An axis of things one by one, such as numbers of blanks. */
    public static AxisLabel counting(String words) {
        return new AxisLabel(words, "", true);
    }

    /** As written at the axis. */
    public String text() {
        return unit.isEmpty() ? words : words + ", " + unit;
    }
}

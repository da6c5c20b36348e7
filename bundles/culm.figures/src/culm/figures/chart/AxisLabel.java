package culm.figures.chart;

/** What an axis measures. @param words the trade's words; @param unit its unit, empty for counts */
public record AxisLabel(String words, String unit) {
    /** As written at the axis. */
    public String text() {
        return unit.isEmpty() ? words : words + ", " + unit;
    }
}

package culm.geometry.shape;

/** What of the bark side was measured as the cane's width. */
public enum WidthMeasure {
    /** Straight across, as a caliper measures. */
    CHORD,
    /** Along the bark, as on flattened cane. */
    ARC
}

package culm.figures;

/** What a group of items shows, for back ends that name or pick parts. */
public enum Part {
    PAGE, CAPTION, STAPLE, CORK, CANE, THREAD, BORE, SEAM, MARKS, RULER, HANDLES, GRAPH, AXIS, SERIES, LEGEND, DIMENSIONS, POINTER, PRINT_CHECK;

    /** Name in machine-readable output, lower case. */
    public String id() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}

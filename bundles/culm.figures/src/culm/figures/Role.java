package culm.figures;

/** What a colour means; a {@link Palette} says what it looks like. Materials keep their hue in every palette. */
public enum Role {
    /** The ground everything lies on, also what is hollow. */
    PAPER,
    /** A field or a quiet area on the paper. */
    PANEL,
    /** Main text and lines. */
    INK,
    /** Captions, ticks, leader lines. */
    QUIET,
    /** Thin separating lines. */
    RULE,
    /** Grid lines. */
    GRID,
    BRASS,
    BRASS_EDGE,
    CANE,
    CANE_EDGE,
    /** The outer skin of the cane. */
    BARK,
    /** Thread; readable as text. */
    THREAD,
    THREAD_EDGE,
    CORK,
    CORK_EDGE,
    /** Within the limits; readable as text, never the only sign. */
    FITS,
    /** Outside the limits; readable as text, never the only sign. */
    DOES_NOT,
    /** The strips around the parts of the window: behind tabs and buttons. */
    STRIP
}

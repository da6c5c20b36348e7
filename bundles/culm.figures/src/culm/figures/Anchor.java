package culm.figures;

/** Which point of a text its x means. */
public enum Anchor {
    START, MIDDLE, END
}

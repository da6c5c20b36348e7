package culm.figures;

/** A painted path. */
public record Shape(Path path, Style style) implements Item {
}

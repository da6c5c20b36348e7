package culm.figures;

/** One thing in a drawing. */
public sealed interface Item permits Shape, Text, Handle, Group {
}

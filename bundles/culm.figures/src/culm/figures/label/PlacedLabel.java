package culm.figures.label;

/**
 * A label in its place: its leader comes down at the mark's x to its row, the text stands beside it there.
 *
 * @param label the label
 * @param text  what is written, in full or brief
 * @param left  true when the text ends at the leader, false when it begins there
 * @param row   row from 0, downwards
 * @param from  left end of the text, drawing units
 * @param to    right end of the text
 */
public record PlacedLabel(Label label, String text, boolean left, int row, double from, double to) {
}

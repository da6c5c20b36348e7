package culm.workbench.internal.bench.grid;

/**
 * A column of a grid.
 *
 * @param id short name, for tests and undo
 * @param head the words above it
 * @param unit in what its numbers count, below the words; empty for none
 * @param help what stands in it, one sentence
 * @param width points
 * @param number whether it holds numbers, which stand at the right
 * @param editable whether it can be typed into
 */
public record GridColumn(String id, String head, String unit, String help, int width, boolean number, boolean editable) {
}

package culm.explore;

import java.util.List;

/**
 * Some rows of variants, as columns; not to be changed.
 *
 * @param first     number of the first row
 * @param rows      how many
 * @param values    [axis][row]: the number, or the index of the part; the base's own where a plan leaves it
 * @param closesAt  where the sides close, mm; NaN where they never do or it cannot be computed
 * @param turnsLeft turns left; NaN likewise
 * @param openAtTop how far the sides are open at the staple's top, mm, negative when pinched; NaN where it cannot be computed
 * @param failed    a bit for each rule that fails
 */
public record VariantBlock(long first, int rows, double[][] values, double[] closesAt, double[] turnsLeft, double[] openAtTop, int[] failed) {
    /** The rules that one row fails. @param ids ids of the rules, in the order of their bits */
    public List<String> failed(int row, List<String> ids) {
        return java.util.stream.IntStream.range(0, ids.size()).filter(i -> (failed[row] & 1 << i) != 0).mapToObj(ids::get).toList();
    }
}

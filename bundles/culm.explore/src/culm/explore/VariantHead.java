package culm.explore;

import java.util.List;

/**
 * What the columns of variants are.
 *
 * @param axes  what differs
 * @param rules ids of the rules, in the order of the bits of {@link VariantBlock#failed()}
 * @param names their names
 * @param rows  how many rows there will be
 */
public record VariantHead(List<Axis> axes, List<String> rules, List<String> names, long rows) {
}

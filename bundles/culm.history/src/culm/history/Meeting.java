package culm.history;

import java.util.List;
import java.util.Optional;

import culm.design.compare.Difference;
import culm.design.compare.ThreeWay;

/**
 * A file that both you and the others changed since the last common version.
 *
 * @param file       relative to the studio, with {@code /}
 * @param comparison value by value; empty when the file can only be taken whole: it is no file of a studio, cannot be read, or one side removed it
 * @param yours      whether you have the file
 * @param theirs     whether the others have it
 */
public record Meeting(String file, Optional<ThreeWay> comparison, boolean yours, boolean theirs) {
    /** What has to be chosen; a file taken whole is one choice, with an empty path. */
    public List<Difference> conflicts() {
        return comparison.map(ThreeWay::conflicts).orElseGet(() -> List.of(new Difference("", file, "", yours ? "your file" : "removed", theirs ? "their file" : "removed",
                culm.design.compare.Side.CONFLICT)));
    }
}

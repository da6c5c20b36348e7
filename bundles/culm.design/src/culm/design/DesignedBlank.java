package culm.design;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;

/**
 * A design as it can be computed.
 *
 * @param name    the design's name, or its file's
 * @param blank   the blank it describes
 * @param limits  my limits: the studio's, with those of the design on top
 * @param places  where each input stands
 * @param remarks what was read but has no meaning here, such as a number that the profile's type does not know
 */
public record DesignedBlank(String name, Blank blank, Limits limits, Places places, List<Finding> remarks) {
    /** Every number of it. */
    public Assessment assess() {
        return Assessor.assess(blank);
    }

    /** What the rules say of an assessment, the worst first, and the remarks. */
    public List<Finding> judge(Assessment assessment, Rules rules) {
        List<Finding> all = new java.util.ArrayList<>(rules.judge(assessment, limits));
        all.addAll(remarks);
        all.sort(java.util.Comparator.comparing(Finding::severity));
        return List.copyOf(all);
    }
}

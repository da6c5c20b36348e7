package culm.explore;

import java.util.List;

/**
 * How many blanks pass one rule, and what the others have in common.
 *
 * @param id     the rule's id
 * @param name   its name
 * @param passed blanks that pass
 * @param causes the inputs that tell failures from the rest, the strongest first; empty when nothing failed
 */
public record RuleShare(String id, String name, Share passed, List<Cause> causes) {
}

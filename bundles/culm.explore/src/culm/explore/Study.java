package culm.explore;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import culm.blank.Blank;
import culm.blank.Limits;
import culm.blank.rules.Rules;

/**
 * What is asked: a blank, what varies around it, and what it is judged by.
 *
 * @param base   the blank
 * @param varied what varies; a path at most once
 * @param limits my limits
 * @param rules  the rules
 */
public record Study(Blank base, List<Varied> varied, Limits limits, Rules rules) {
    /** @throws IllegalArgumentException when a path is unknown or stands twice */
    public Study {
        varied = List.copyOf(varied);
        Set<String> seen = new HashSet<>();
        for (Varied v : varied) {
            List<String> all = new ArrayList<>(v.also());
            all.add(v.path());
            for (String path : all) {
                Varied.value(base, path);
                if (!seen.add(path)) {
                    throw new IllegalArgumentException(path + " varies twice.");
                }
            }
        }
    }

    /** The same question about another blank. */
    public Study about(Blank blank) {
        return new Study(blank, varied, limits, rules);
    }
}

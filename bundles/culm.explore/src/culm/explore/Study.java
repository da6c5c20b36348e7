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

    /**
     * The same question about a blank with other parts: they vary as is usual for them.
     * @param parts the parts that are other ones, such as {@code staple}
     */
    public Study about(Blank blank, List<String> parts) {
        List<Varied> all = new ArrayList<>(varied);
        for (String part : parts) {
            boolean varies = all.removeIf(v -> v.path().startsWith(part + "."));
            if (varies) {
                Usual.of(blank).stream().filter(v -> v.path().startsWith(part + ".")).forEach(all::add);
            }
        }
        return new Study(blank, all, limits, rules);
    }

    /** The same question about another blank. */
    public Study about(Blank blank) {
        return new Study(blank, varied, limits, rules);
    }
}

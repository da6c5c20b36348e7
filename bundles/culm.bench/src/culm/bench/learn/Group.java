package culm.bench.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.bench.log.Tied;

/**
 * Whose blanks teach together.
 *
 * @param maker       who tied them
 * @param shape       of one shape
 * @param stapleBatch on staples of one batch
 */
public record Group(String maker, String shape, String stapleBatch) {
    /** The group of a blank. */
    public static Group of(Tied tied) {
        return new Group(tied.by(), tied.from().shape(), tied.from().stapleBatch());
    }

    /** Blanks by group, in the order in which the groups first appear; within a group by date, then in the order of the log. */
    public static Map<Group, List<Tied>> split(List<Tied> log) {
        Map<Group, List<Tied>> groups = new LinkedHashMap<>();
        log.forEach(t -> groups.computeIfAbsent(of(t), g -> new ArrayList<>()).add(t));
        groups.values().forEach(g -> g.sort(java.util.Comparator.comparing((Tied t) -> t.on().orElse(java.time.LocalDate.MIN))));
        return groups;
    }

    /** As it is said. */
    public String text() {
        return word(maker, "maker not noted") + ", " + word(shape, "shape not noted") + ", " + word(stapleBatch, "staple batch not noted");
    }

    private static String word(String text, String otherwise) {
        return text.isEmpty() ? otherwise : text;
    }
}

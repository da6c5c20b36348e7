package culm.blank.chance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.blank.Blank;
import culm.blank.Inputs;

/** The lengths along a blank that are sums and differences of what is measured, each as a {@link Stack} with the give or take of its parts. */
public final class Stacks {
    private Stacks() {
    }

    /** All that exist, by the bench's word for them, from the bottom up; those with a mark that the blank has not are left out. */
    public static Map<String, Stack> of(Blank blank) {
        Map<String, Stack> all = new LinkedHashMap<>();
        put(all, blank, "end of the cane", List.of(Inputs.TIE_LENGTH), List.of(Inputs.FOLDED_LENGTH));
        put(all, blank, "end of the cane above the cork", List.of(Inputs.TIE_LENGTH), List.of(Inputs.FOLDED_LENGTH, Inputs.CORK_TOP));
        put(all, blank, "cane on the staple", List.of(Inputs.FOLDED_LENGTH, Inputs.STAPLE_LENGTH), List.of(Inputs.TIE_LENGTH));
        put(all, blank, "bare staple above the wrap", List.of(Inputs.STAPLE_LENGTH), List.of(Inputs.WRAP_TOP));
        put(all, blank, "cane above the staple", List.of(Inputs.TIE_LENGTH), List.of(Inputs.STAPLE_LENGTH));
        put(all, blank, "reed above the staple", List.of(Inputs.FINISHED), List.of(Inputs.STAPLE_LENGTH));
        put(all, blank, "cut off at the fold", List.of(Inputs.TIE_LENGTH), List.of(Inputs.FINISHED));
        return all;
    }

    private static void put(Map<String, Stack> all, Blank blank, String name, List<String> added, List<String> taken) {
        List<Stack.Term> terms = new ArrayList<>();
        added.forEach(path -> terms.add(term(blank, path, 1)));
        taken.forEach(path -> terms.add(term(blank, path, -1)));
        if (terms.stream().allMatch(t -> Double.isFinite(t.length().mean()))) {
            all.put(name, new Stack(terms));
        }
    }

    private static Stack.Term term(Blank blank, String path, int sign) {
        return Stack.Term.of(Inputs.all().get(path).label(), sign, blank.number(path), blank.tolerance(path).plusMinus());
    }
}

package culm.bench.wrong;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import culm.bench.log.Tied;
import culm.figures.Numbers;
import culm.geometry.words.Told;

/** The answer in sentences, their lengths as {@link Told} keeps them. */
final class Sentences {
    private static final int NAMED = 3;

    private Sentences() {
    }

    static List<String> of(Explanation e, Tied tied) {
        List<String> all = new ArrayList<>();
        e.crooked().ifPresent(c -> {
            all.add("The sides differ: " + Numbers.fixed(tied.seen().left().orElseThrow(), 1) + " turns left on the left, " + Numbers.fixed(tied.seen().right().orElseThrow(), 1)
                    + " on the right. That points to crooked cane, by about " + Told.length(Math.abs(c.off()), 2) + ", not to the tie length.");
            all.add(c.toldCheck());
        });
        String seen = Numbers.fixed(e.seen().orElseThrow(), 1);
        switch (e.verdict()) {
            case AS_PLANNED -> all.add("As planned: " + seen + " turns seen" + e.planned().stream().mapToObj(p -> ", " + Numbers.fixed(p, 1) + " planned").findFirst().orElse("")
                    + "; turns can be read to " + Numbers.fixed(e.reading(), 1) + ".");
            case CANNOT_TELL -> all.add("No single input, however far off, explains " + seen + " turns left; look whether the right design, staple and shape are noted.");
            default -> {
                if (!e.known().isEmpty()) {
                    all.add((e.verdict() == Verdict.EXPLAINED ? "The lengths measured on it explain most of it: " : "Lengths that differ from the plan: ") + known(e) + ".");
                }
                if (!e.causes().isEmpty()) {
                    rest(e, seen, all);
                }
            }
        }
        return List.copyOf(all);
    }

    private static String known(Explanation e) {
        return e.known().stream().map(Known::told).collect(Collectors.joining("; "));
    }

    private static void rest(Explanation e, String seen, List<String> all) {
        String expected = e.expected().isPresent() ? Numbers.fixed(e.expected().getAsDouble(), 1) + " expected with the lengths as measured" : "none expected: the model leaves the sides open";
        all.add(seen + " turns seen, " + expected + ".");
        Cause first = e.causes().get(0);
        if (e.verdict() == Verdict.SOMETHING_ELSE) {
            all.add("Least far off: " + first.told() + ".");
        } else {
            all.add("What is left is within the give or take of all inputs together. If one alone: " + first.told() + ".");
        }
        if (e.equal() > 1) {
            List<Cause> alike = e.causes().subList(1, Math.min(e.equal(), NAMED + 1));
            all.add("About equally well: " + alike.stream().map(Cause::told).collect(Collectors.joining("; ")) + (e.equal() > NAMED + 1 ? "; and " + (e.equal() - NAMED - 1) + " more" : "")
                    + ". One blank cannot tell them apart.");
        }
        all.add("Next: " + first.toldCheck());
    }
}

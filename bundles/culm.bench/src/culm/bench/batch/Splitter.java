package culm.bench.batch;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * The fewest settings such that every staple allows one of them ("stabbing" sets of settings, given as numbers of steps).
 * <p>Where every staple allows one unbroken stretch, the greedy choice by the stretches' ends is optimal. Otherwise branches on the staple
 * with the fewest settings and bounds by staples that have none in common; that finds the optimum too, but may stop after
 * {@value #PATIENCE} branches, which {@link Split#fewest()} then says.
 */
public final class Splitter {
    private static final int PATIENCE = 2_000_000;

    /**
     * Settings found.
     *
     * @param settings ascending
     * @param fewest   true when fewer are impossible; false only when the search was stopped
     */
    public record Split(List<Integer> settings, boolean fewest) {
    }

    private List<Integer> best;
    private int branches;

    private Splitter(List<Integer> best) {
        this.best = best;
    }

    /** @param allowed for each staple the settings it allows, at least one each; there may be no staples */
    public static Split fewest(List<BitSet> allowed) {
        List<BitSet> hard = hardest(allowed);
        if (hard.stream().allMatch(Splitter::unbroken)) {
            return new Split(byEnds(hard), true);
        }
        Splitter search = new Splitter(greedy(hard));
        search.branch(new ArrayList<>(), hard);
        return new Split(search.best.stream().sorted().toList(), search.branches < PATIENCE);
    }

    /** A staple that allows all that another allows is served with it. */
    private static List<BitSet> hardest(List<BitSet> allowed) {
        List<BitSet> ordered = allowed.stream().distinct().sorted(Comparator.comparingInt(BitSet::cardinality)).toList();
        List<BitSet> hard = new ArrayList<>();
        for (BitSet staple : ordered) {
            if (staple.isEmpty()) {
                throw new IllegalArgumentException("A staple without any setting cannot be served.");
            }
            if (hard.stream().noneMatch(h -> within(h, staple))) {
                hard.add(staple);
            }
        }
        return hard;
    }

    private static boolean within(BitSet small, BitSet large) {
        BitSet rest = (BitSet) small.clone();
        rest.andNot(large);
        return rest.isEmpty();
    }

    private static boolean unbroken(BitSet staple) {
        return staple.length() - staple.nextSetBit(0) == staple.cardinality();
    }

    private static List<Integer> byEnds(List<BitSet> staples) {
        List<Integer> settings = new ArrayList<>();
        int last = -1;
        for (BitSet staple : staples.stream().sorted(Comparator.comparingInt(BitSet::length)).toList()) {
            if (last < 0 || !staple.get(last)) {
                last = staple.length() - 1;
                settings.add(last);
            }
        }
        return settings;
    }

    private static List<Integer> greedy(List<BitSet> staples) {
        List<BitSet> open = staples;
        List<Integer> settings = new ArrayList<>();
        while (!open.isEmpty()) {
            TreeSet<Integer> all = new TreeSet<>();
            open.forEach(s -> s.stream().forEach(all::add));
            List<BitSet> now = open;
            int take = all.stream().max(Comparator.comparingLong(p -> now.stream().filter(s -> s.get(p)).count())).orElseThrow();
            settings.add(take);
            open = open.stream().filter(s -> !s.get(take)).toList();
        }
        return settings;
    }

    private void branch(List<Integer> taken, List<BitSet> open) {
        if (open.isEmpty()) {
            if (taken.size() < best.size()) {
                best = new ArrayList<>(taken);
            }
            return;
        }
        if (++branches >= PATIENCE || taken.size() + apart(open) >= best.size()) {
            return;
        }
        BitSet first = open.stream().min(Comparator.comparingInt(BitSet::cardinality)).orElseThrow();
        List<Integer> choices = first.stream().boxed()
                .sorted(Comparator.comparingLong((Integer p) -> open.stream().filter(s -> s.get(p)).count()).reversed()).toList();
        for (int setting : choices) {
            taken.add(setting);
            branch(taken, open.stream().filter(s -> !s.get(setting)).toList());
            taken.remove(taken.size() - 1);
        }
    }

    /** A number of staples of which no two have a setting in common: at least as many settings are needed. */
    private static int apart(List<BitSet> open) {
        BitSet used = new BitSet();
        int count = 0;
        for (BitSet staple : open.stream().sorted(Comparator.comparingInt(BitSet::cardinality)).toList()) {
            if (!staple.intersects(used)) {
                used.or(staple);
                count++;
            }
        }
        return count;
    }
}

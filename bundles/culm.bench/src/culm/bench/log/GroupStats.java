package culm.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;

import culm.explore.Share;

/**
 * What became of the blanks of one group. Shares count only blanks for which the matter was noted.
 *
 * @param group     name of the group; empty for blanks where it was not noted
 * @param blanks    how many
 * @param leaks     leaked, folded or cut, a slight leak included
 * @param keepers   kept
 * @param oneSided  one side closed at least a turn before the other
 * @param meanTurns mean of the turns left
 * @param spread    their standard deviation; empty for fewer than two
 */
public record GroupStats(String group, int blanks, Share leaks, Share keepers, Share oneSided, OptionalDouble meanTurns, OptionalDouble spread) {

    /** One line a group, in the order of the alphabet; what was not noted comes last. */
    public static List<GroupStats> by(GroupBy by, List<Tied> log) {
        Map<String, List<Tied>> groups = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        log.forEach(t -> groups.computeIfAbsent(by.of(t), k -> new ArrayList<>()).add(t));
        Map<String, List<Tied>> ordered = new LinkedHashMap<>(groups);
        List<Tied> unknown = ordered.remove("");
        List<GroupStats> all = new ArrayList<>();
        ordered.forEach((name, blanks) -> all.add(of(name, blanks)));
        if (unknown != null) {
            all.add(of("", unknown));
        }
        return all;
    }

    /** The figures of some blanks. */
    public static GroupStats of(String name, List<Tied> blanks) {
        double[] turns = blanks.stream().map(t -> t.seen().turns()).flatMapToDouble(OptionalDouble::stream).toArray();
        OptionalDouble mean = DoubleStream.of(turns).average();
        OptionalDouble spread = turns.length < 2 ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(DoubleStream.of(turns).map(t -> (t - mean.getAsDouble()) * (t - mean.getAsDouble())).sum() / (turns.length - 1)));
        return new GroupStats(name, blanks.size(), share(blanks, t -> t.leaked().isPresent(), t -> t.leaked().get()),
                share(blanks, t -> t.seen().keeper().isPresent(), t -> t.seen().keeper().get()), share(blanks, t -> t.seen().sides() == 2, Tied::oneSided), mean, spread);
    }

    private static Share share(List<Tied> blanks, Predicate<Tied> noted, Predicate<Tied> hit) {
        List<Tied> counted = blanks.stream().filter(noted).toList();
        return new Share((int) counted.stream().filter(hit).count(), counted.size());
    }
}

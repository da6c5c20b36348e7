package culm.bench.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import culm.bench.log.GroupBy;
import culm.bench.log.PlannedSeen;
import culm.bench.log.Tied;
import culm.blank.Blank;
import culm.blank.Inputs;

/** Learns from a log, group by group. */
public final class Learner {
    /** Fewest blanks of a group, or since a change, from which anything is said. */
    public static final int FEWEST = 5;
    private static final double SURE = 0.99;
    private final Function<Tied, Optional<Blank>> designs;

    /** @param designs the blank as planned that a log's entry was tied from, its own staple included; empty when it is not known */
    public Learner(Function<Tied, Optional<Blank>> designs) {
        this.designs = designs;
    }

    /** What every group of a log teaches. */
    public List<Learned> learn(List<Tied> log) {
        List<Learned> all = new ArrayList<>();
        for (Map.Entry<Group, List<Tied>> group : Group.split(log).entrySet()) {
            List<Lesson> lessons = group.getValue().stream().map(t -> designs.apply(t).map(d -> Lesson.of(t, d))).flatMap(Optional::stream)
                    .map(Lesson.Taught::lesson).flatMap(Optional::stream).toList();
            all.add(learn(group.getKey(), lessons));
        }
        return all;
    }

    /** What some blanks teach. @param lessons in the order in which they were tied */
    public static Learned learn(Group group, List<Lesson> lessons) {
        double[] deltas = lessons.stream().mapToDouble(Lesson::delta).toArray();
        Optional<Change> change = Change.at(deltas, batches(lessons)).or(() -> Change.in(deltas));
        Optional<Drift> drift = Drift.in(deltas);
        if (change.isPresent() && drift.isPresent() && straighter(lessons, change.get())) {
            change = Optional.empty();
        }
        List<Lesson> used = change.isPresent() ? lessons.subList(change.get().at(), lessons.size()) : lessons;
        String noticed = change.map(c -> words(c, lessons)).orElse("");
        if (used.size() < FEWEST) {
            return Learned.refused(group, lessons.size(), used.size() + (used.size() == 1 ? " blank" : " blanks") + (change.isPresent() ? " since the change" : "")
                    + "; at least " + FEWEST + " are needed before anything is learned.", noticed);
        }
        Sample sample = new Sample(used.stream().mapToDouble(Lesson::delta).toArray());
        double reading = Math.sqrt(used.stream().mapToDouble(l -> l.reading() * l.reading()).average().orElseThrow());
        double perTurn = used.stream().mapToDouble(Lesson::perTurn).average().orElseThrow();
        double delta = sample.mean();
        double next = sample.student(0.95) * Math.max(sample.spread(), reading) * Math.sqrt(1 + 1.0 / sample.count()) / perTurn;
        double without = off(used, l -> 0);
        double with = off(used, l -> (delta * sample.count() - l.delta()) / (sample.count() - 1));
        boolean worthIt = Math.abs(delta) > sample.half(SURE, reading) && with < without;
        return new Learned(group, List.copyOf(used), lessons.size(), "", delta, sample.half(0.95, reading), sample.spread(), perTurn, next, without, with, worthIt, noticed,
                change.isPresent() ? Optional.empty() : drift);
    }

    /** Where another cane batch begins. */
    private static List<Integer> batches(List<Lesson> lessons) {
        List<Integer> places = new ArrayList<>();
        for (int i = 1; i < lessons.size(); i++) {
            if (!GroupBy.CANE.of(lessons.get(i).tied()).equals(GroupBy.CANE.of(lessons.get(i - 1).tied()))) {
                places.add(i);
            }
        }
        return places;
    }

    /** Root mean square of predicted minus seen, turns. */
    private static double off(List<Lesson> lessons, java.util.function.ToDoubleFunction<Lesson> delta) {
        double square = 0;
        for (Lesson lesson : lessons) {
            double d = delta.applyAsDouble(lesson);
            OptionalDouble predicted = PlannedSeen.turns(lesson.blank().with(Inputs.DELTA, d));
            double off = predicted.isPresent() ? predicted.getAsDouble() - lesson.tied().seen().turns().orElseThrow() : (d - lesson.delta()) / lesson.perTurn();
            square += off * off / lessons.size();
        }
        return Math.sqrt(square);
    }

    /** Whether a straight line fits better than a step. */
    private static boolean straighter(List<Lesson> lessons, Change change) {
        double[] y = lessons.stream().mapToDouble(Lesson::delta).toArray();
        var line = new org.hipparchus.stat.regression.SimpleRegression();
        for (int i = 0; i < y.length; i++) {
            line.addData(i, y[i]);
        }
        double before = new Sample(java.util.Arrays.copyOf(y, change.at())).mean();
        double after = before + change.by();
        double step = 0;
        for (int i = 0; i < y.length; i++) {
            double off = y[i] - (i < change.at() ? before : after);
            step += off * off;
        }
        return line.getSumSquaredErrors() < step;
    }

    /** What changed in the log at that place, as far as it was noted. */
    private static String words(Change change, List<Lesson> lessons) {
        Tied before = lessons.get(change.at() - 1).tied();
        Tied after = lessons.get(change.at()).tied();
        StringBuilder text = new StringBuilder(String.format(java.util.Locale.ROOT, "From no. %s on the blanks close with %.1f turns %s left than before.", after.number(),
                Math.abs(change.by() / lessons.get(change.at()).perTurn()), change.by() > 0 ? "more" : "fewer"));
        boolean noted = false;
        for (GroupBy by : new GroupBy[] {GroupBy.CANE, GroupBy.DESIGN, GroupBy.ENDS}) {
            if (!by.of(before).equals(by.of(after)) && !by.of(after).isEmpty()) {
                text.append(" The ").append(by.words()).append(" changed there").append(by.of(before).isEmpty() ? "" : " from " + by.of(before)).append(" to ").append(by.of(after)).append('.');
                noted = true;
            }
        }
        return noted ? text.toString() : text + " Nothing noted in the log changed there: look at the cane, the thread, the knife, the soaking.";
    }
}

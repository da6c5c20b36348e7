package culm.bench.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import culm.geometry.words.Told;
import culm.model.problem.FileProblem;
import culm.model.problem.FileProblem.Kind;
import culm.model.text.Numbers;

/** What is wrong or doubtful in the blanks of a log, each told with its line: lengths that cannot be or are hardly meant, and numbers that stand twice. */
final class LogChecks {
    private final String file;
    private final List<FileProblem> problems = new ArrayList<>();

    /** @param file its name for messages */
    LogChecks(String file) {
        this.file = file;
    }

    List<FileProblem> problems() {
        return problems;
    }

    /** The blanks whose lengths can be; the others are told and left out. */
    List<Tied> possible(List<Tied> log) {
        return log.stream().filter(this::possible).toList();
    }

    private boolean possible(Tied tied) {
        int before = problems.size();
        for (LogMeasure measure : LogMeasure.values()) {
            OptionalDouble value = measure.value(tied);
            refusal(measure, value).ifPresent(why -> tell(Kind.OUT_OF_RANGE, tied, value.getAsDouble(), why + "; the blank was left out"));
        }
        return problems.size() == before;
    }

    /** Why a measured length cannot be, without a point at the end; empty when it can or was not measured. */
    static Optional<String> refusal(LogMeasure measure, OptionalDouble value) {
        return value.isEmpty() ? Optional.empty() : measure.described().refuse(value.getAsDouble()).map(why -> "the " + why.replaceAll("\\.$", ""));
    }

    /** Tells lengths that are hardly meant, beside those of the others. */
    void doubt(List<Tied> log) {
        for (LogMeasure measure : LogMeasure.values()) {
            Usual usual = new Usual(measure, log);
            for (Tied tied : log) {
                OptionalDouble value = measure.value(tied);
                if (value.isPresent()) {
                    measure.doubt(value.getAsDouble(), usual.beside(value.getAsDouble())).map(Told::mm)
                            .ifPresent(why -> tell(Kind.BAD_VALUE, tied, value.getAsDouble(), "of blank " + tied.number() + ": " + why));
                }
            }
        }
    }

    /** Tells numbers that stand twice; both blanks are kept. */
    void twice(List<Tied> log) {
        Map<String, Tied> first = new HashMap<>();
        for (Tied tied : log) {
            Tied before = tied.number().isEmpty() ? null : first.putIfAbsent(tied.number(), tied);
            if (before != null) {
                problems.add(new FileProblem(Kind.BAD_VALUE, file, tied.line(), tied.number(), sentence(tied.number(), before.line()) + "; both are counted"));
            }
        }
    }

    /** That a number stands twice, without what was done about it. @param line where it stands first */
    static String sentence(String number, int line) {
        return "the number \"" + number + "\" is that of the blank in line " + line + " as well";
    }

    private void tell(Kind kind, Tied tied, double value, String sentence) {
        problems.add(new FileProblem(kind, file, tied.line(), Numbers.format(value), sentence));
    }
}

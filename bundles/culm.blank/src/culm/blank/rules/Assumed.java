package culm.blank.rules;

import java.util.Comparator;
import java.util.List;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.Sensitivity;

/** Inputs that move the closing and were assumed, not measured; the one that counts most is named first. */
public final class Assumed implements Rule {
    private static final double SHARE_THAT_COUNTS = 0.02;
    private static final int NAMED = 3;

    @Override
    public String id() {
        return "assumed";
    }

    @Override
    public String name() {
        return "what counts was measured";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        if (a.fitted()) {
            return List.of();
        }
        double all = a.sensitivities().stream().mapToDouble(s -> s.contribution() * s.contribution()).sum();
        List<Sensitivity> assumed = a.sensitivities().stream().filter(s -> !s.input().tolerance().measured())
                .filter(s -> s.contribution() * s.contribution() > SHARE_THAT_COUNTS * all)
                .sorted(Comparator.comparingDouble(Sensitivity::contribution).reversed()).toList();
        if (assumed.isEmpty()) {
            return List.of();
        }
        List<String> names = assumed.stream().map(s -> s.input().parameter().label()).distinct().toList();
        String more = names.size() > NAMED ? "; and " + (names.size() - NAMED) + " more" : "";
        Sensitivity first = assumed.get(0);
        return List.of(Finding.of(id(), Severity.ADVICE, "Assumed, not measured: " + String.join("; ", names.subList(0, Math.min(NAMED, names.size()))) + more + ".")
                .at(first.input().path()).measuredLength(first.contribution())
                .because("The " + first.input().parameter().label() + " alone gives or takes " + Say.along(1.96 * first.contribution()) + " of the closing.")
                .remedy("Measure it, or fit the model to a blank of yours that worked."));
    }
}

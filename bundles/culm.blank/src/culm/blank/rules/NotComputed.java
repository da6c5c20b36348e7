package culm.blank.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.blank.Assessment;
import culm.blank.Limits;

/** What cannot be computed is said, never left blank in silence. */
public final class NotComputed implements Rule {
    @Override
    public String id() {
        return "notComputed";
    }

    @Override
    public String name() {
        return "everything could be computed";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        Map<String, Finding> bySentence = new LinkedHashMap<>();
        a.troubles().forEach(t -> bySentence.putIfAbsent(t.sentence(), Finding.of(id(), severity(t.result()), t.told()).at(t.path())
                .because("Without it there is no " + t.result() + ".")));
        return List.copyOf(bySentence.values());
    }

    private static Severity severity(String result) {
        return result.equals("sidesCloseAt") ? Severity.ERROR : Severity.WARNING;
    }
}

package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.List;

import culm.blank.rules.Finding;
import culm.blank.rules.Say;

/** What is said below a finding when someone asks why. */
final class FindingWords {
    private FindingWords() {
    }

    static String more(Finding finding) {
        List<String> lines = new ArrayList<>();
        if (finding.value().isPresent() && finding.limit().isPresent()) {
            lines.add("Now " + Say.plain(finding.value().getAsDouble()) + ", limit " + Say.plain(finding.limit().getAsDouble()) + ".");
        }
        if (!finding.why().isBlank()) {
            lines.add(finding.why());
        }
        if (!finding.remedy().isBlank()) {
            lines.add("What to do: " + finding.remedy());
        }
        return String.join("\n", lines);
    }
}

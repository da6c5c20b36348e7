package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.List;

import culm.blank.rules.Finding;
import culm.blank.rules.Say;
import culm.workbench.internal.numbers.LengthUnit;

/** What is said below a finding when someone asks why. */
final class FindingWords {
    private FindingWords() {
    }

    static String more(Finding finding, LengthUnit unit) {
        List<String> lines = new ArrayList<>();
        if (finding.value().isPresent() && finding.limit().isPresent()) {
            lines.add("Now " + number(finding, finding.value().getAsDouble(), unit) + ", held against " + number(finding, finding.limit().getAsDouble(), unit) + ".");
        }
        if (!finding.why().isBlank()) {
            lines.add(finding.why());
        }
        if (!finding.remedy().isBlank()) {
            lines.add("What to do: " + finding.remedy());
        }
        return String.join("\n", lines);
    }

    private static String number(Finding finding, double value, LengthUnit unit) {
        if (!finding.lengths()) {
            return Say.plain(value);
        }
        String text = unit.drawn().fixed(value, 2);
        return (text.indexOf('.') < 0 ? text : text.replaceFirst("\\.?0+$", "")) + " " + unit.sign();
    }
}

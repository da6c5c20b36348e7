package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.List;

import culm.blank.rules.Finding;
import culm.blank.rules.Say;
import culm.workbench.internal.numbers.LengthUnit;

/** What is said below a finding when someone asks why. */
final class FindingWords {
    private static final double LEAST_IN_TENTHS = 0.5;

    private FindingWords() {
    }

    static String more(Finding finding, LengthUnit unit) {
        List<String> lines = new ArrayList<>();
        if (finding.value().isPresent() && finding.limit().isPresent()) {
            double value = finding.value().getAsDouble();
            String now = finding.lengths() || Math.abs(value) < LEAST_IN_TENTHS ? number(finding, value, unit) : Say.tenth(value);
            lines.add("Now " + now + ", held against " + number(finding, finding.limit().getAsDouble(), unit) + ".");
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

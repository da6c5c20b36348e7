package culm.workbench.internal.bench.page;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Size;
import culm.figures.TextMeasure;

/** Breaks a text into lines. */
final class Wrapped {
    private Wrapped() {
    }

    static List<String> lines(String text, TextMeasure measure, Size size, boolean bold, double room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        // A number and its unit stay together.
        for (String word : text.split(" (?!(?<=[0-9] )(mm\\b|thou\\b|%|turns?\\b))")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && measure.width(longer, size, bold) > room) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}

package culm.figures;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines at its spaces. */
public final class Lines {
    private Lines() {
    }

    /** Lines not wider than {@code width} drawing units; a single word that is wider stays whole. */
    public static List<String> of(String text, TextMeasure measure, Size size, boolean bold, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && measure.width(longer, size, bold) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    /** Distance of two baselines. */
    public static double height(TextMeasure measure, Size size) {
        return Math.ceil((measure.ascent(size) + measure.descent(size)) * 1.08);
    }
}

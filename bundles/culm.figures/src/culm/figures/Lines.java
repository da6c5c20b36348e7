package culm.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks text into lines at its spaces, but not between a number and its unit. */
public final class Lines {
    /** What stands behind a number and is not parted from it. */
    private static final String UNIT = "(?:(?:mm|thou|in|turns?)\\b|%)";
    private static final Pattern BREAKS = Pattern.compile("\\s+(?!" + UNIT + ")|(?<!\\d)\\s+");

    private Lines() {
    }

    /** Lines not wider than {@code width} drawing units; a single word that is wider stays whole. */
    public static List<String> of(String text, TextMeasure measure, Size size, boolean bold, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : BREAKS.split(text.strip())) {
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
        return Math.ceil((measure.line(size)) * 1.08);
    }
}

package culm.figures.chart;

import culm.figures.Size;
import culm.figures.TextMeasure;

/** Names that have to fit. */
final class Names {
    private Names() {
    }

    /** The name, cut at its end when it takes more than the room. */
    static String cut(String name, double room, TextMeasure measure) {
        String text = name;
        while (text.length() > 1 && measure.width(text, Size.BODY, false) > room + 0.5) {
            text = text.substring(0, text.length() - 2).stripTrailing() + "\u2026";
        }
        return text;
    }
}

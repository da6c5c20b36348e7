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

    /** The name, cut in its middle when it takes more than the room: where names differ only at their ends, both are needed. */
    static String cutWithin(String name, double room, TextMeasure measure) {
        String text = name;
        for (int kept = name.length() - 1; kept > 1 && measure.width(text, Size.BODY, false) > room + 0.5; kept--) {
            text = name.substring(0, (kept + 1) / 2).stripTrailing() + "\u2026" + name.substring(name.length() - kept / 2).stripLeading();
        }
        return text;
    }
}

package culm.workbench.internal.widgets;

import culm.figures.Size;
import culm.figures.TextMeasure;

/** Cuts a line of text to a width. */
public final class Clip {
    private Clip() {
    }

    /**
     * A text that fits.
     *
     * @param text the text
     * @param measure measures it
     * @param size its size
     * @param room the width there is
     * @return the text, or its beginning and an ellipsis
     */
    public static String to(String text, TextMeasure measure, Size size, double room) {
        if (measure.width(text, size, false) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && measure.width(text.substring(0, end) + "…", size, false) > room) {
            end--;
        }
        return text.substring(0, end).stripTrailing() + "…";
    }
}

package culm.figures;

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
     * @param room the width there is, drawing units
     * @return the text, or its beginning and an ellipsis
     */
    public static String to(String text, TextMeasure measure, Size size, double room) {
        return to(text, measure, size, false, room);
    }

    /**
     * A text that fits.
     *
     * @param text the text
     * @param measure measures it
     * @param size its size
     * @param bold whether it is bold, and so wider
     * @param room the width there is, drawing units
     * @return the text, or its beginning and an ellipsis
     */
    public static String to(String text, TextMeasure measure, Size size, boolean bold, double room) {
        if (measure.width(text, size, bold) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && measure.width(text.substring(0, end) + "…", size, bold) > room) {
            end--;
        }
        return text.substring(0, end).stripTrailing() + "…";
    }

    /**
     * A text that fits, left out in the middle: names that begin alike are told apart by their ends.
     *
     * @param text the text
     * @param measure measures it
     * @param size its size
     * @param room the width there is, drawing units
     * @return the text, or its beginning, an ellipsis and its end
     */
    public static String middle(String text, TextMeasure measure, Size size, double room) {
        if (measure.width(text, size, false) <= room) {
            return text;
        }
        for (int kept = text.length() - 1; kept > 2; kept--) {
            int head = kept / 3;
            String cut = text.substring(0, head).stripTrailing() + "…" + text.substring(text.length() - kept + head).stripLeading();
            if (measure.width(cut, size, false) <= room) {
                return cut;
            }
        }
        return to(text, measure, size, room);
    }
}

package culm.workbench.internal.editor;

import culm.figures.Size;
import culm.figures.TextMeasure;

/** Cuts a line of text to a width. */
final class Clip {
	private Clip() {
	}

	static String to(String text, TextMeasure measure, Size size, double room) {
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

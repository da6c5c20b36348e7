package culm.workbench.internal.paint;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Display;

import culm.figures.Size;
import culm.figures.TextMeasure;

/**
 * Room that text takes on this screen, where the system rounds each letter to whole pixels. It is measured word by word, and what was measured is
 * kept: sentences change by a number at each step of a drag, their other words do not. Only the display's thread can measure what was not measured before;
 * on another one that is refused.
 */
public final class SwtMeasure implements TextMeasure {
    private static final int KEPT = 4000;

    private record Key(String text, Size size, boolean bold) {
    }

    /** Of these no letter stands nearer to its neighbour than to any other: their widths add up. */
    private static final String OF_NUMBERS = "0123456789.,:;\u00b1+-\u2212()%/\u2009";
    private final Display display;
    private final SwtFonts fonts;
    private final GC gc;
    private final Map<Key, Double> widths = Collections.synchronizedMap(new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Double> eldest) {
            return size() > KEPT;
        }
    });
    private final Map<Size, double[]> heights = new ConcurrentHashMap<>();

    /**
     * Measures for a display.
     *
     * @param display the display
     * @param fonts its fonts
     */
    public SwtMeasure(Display display, SwtFonts fonts) {
        this.display = display;
        this.fonts = fonts;
        this.gc = new GC(display);
        display.disposeExec(gc::dispose);
    }

    @Override
    public double width(String text, Size size, boolean bold) {
        double width = 0;
        int from = 0;
        for (int space = text.indexOf(' '); space >= 0; space = text.indexOf(' ', from)) {
            width += kept(text.substring(from, space), size, bold) + kept(" ", size, bold);
            from = space + 1;
        }
        return width + kept(text.substring(from), size, bold);
    }

    private double kept(String word, Size size, boolean bold) {
        if (word.length() > 1 && word.chars().allMatch(c -> OF_NUMBERS.indexOf(c) >= 0)) {
            return word.chars().mapToDouble(c -> one(Character.toString(c), size, bold)).sum();
        }
        return word.isEmpty() ? 0 : one(word, size, bold);
    }

    private double one(String word, Size size, boolean bold) {
        Key key = new Key(word, size, bold);
        Double known = widths.get(key);
        if (known == null) {
            known = measured(key);
            widths.put(key, known);
        }
        return known;
    }

    private double measured(Key key) {
        requireDisplay();
        gc.setFont(fonts.get(key.size(), key.bold() ? SWT.BOLD : SWT.NORMAL));
        return gc.stringExtent(key.text()).x;
    }

    @Override
    public double ascent(Size size) {
        return height(size)[0];
    }

    @Override
    public double descent(Size size) {
        return height(size)[1];
    }

    private double[] height(Size size) {
        return heights.computeIfAbsent(size, s -> {
            requireDisplay();
            gc.setFont(fonts.get(s, SWT.NORMAL));
            FontMetrics metrics = gc.getFontMetrics();
            return new double[] { metrics.getAscent() + metrics.getLeading(), metrics.getDescent() };
        });
    }

    private void requireDisplay() {
        if (Display.findDisplay(Thread.currentThread()) != display) {
            throw new IllegalStateException("not measured yet");
        }
    }
}

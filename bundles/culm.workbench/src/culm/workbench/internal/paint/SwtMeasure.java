package culm.workbench.internal.paint;

import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Display;

import culm.figures.Size;
import culm.figures.TextMeasure;

/**
 * Room that text takes on this screen, where the system rounds each letter to whole pixels. What was measured is kept.
 * Used on the display's thread only.
 */
public final class SwtMeasure implements TextMeasure {
    private static final int KEPT = 4000;

    private record Key(String text, Size size, boolean bold) {
    }

    private final SwtFonts fonts;
    private final GC gc;
    private final Map<Key, Double> widths = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Double> eldest) {
            return size() > KEPT;
        }
    };
    private final Map<Size, double[]> heights = new java.util.EnumMap<>(Size.class);

    /**
     * Measures for a display.
     *
     * @param display the display
     * @param fonts its fonts
     */
    public SwtMeasure(Display display, SwtFonts fonts) {
        this.fonts = fonts;
        this.gc = new GC(display);
        display.disposeExec(gc::dispose);
    }

    @Override
    public double width(String text, Size size, boolean bold) {
        return widths.computeIfAbsent(new Key(text, size, bold), this::measured);
    }

    private double measured(Key key) {
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
            gc.setFont(fonts.get(s, SWT.NORMAL));
            FontMetrics metrics = gc.getFontMetrics();
            return new double[] { metrics.getAscent() + metrics.getLeading(), metrics.getDescent() };
        });
    }
}

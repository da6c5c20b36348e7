package culm.workbench.internal.paint;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.TextLayout;

import culm.figures.Size;

/**
 * Texts as the toolkit has laid them out: that takes five times as long as to paint them, and from one step of a drag to the next most of them stay.
 * Each thread keeps its own, since the system's library does not let two threads work on one.
 */
public final class KeptTexts {
    private static final int MOST = 300;

    private record Key(String text, Size size, boolean bold) {
    }

    /** Those of one thread, the ones that were painted last. */
    private static final class Kept extends LinkedHashMap<Key, TextLayout> {
        private static final long serialVersionUID = 1L;

        Kept() {
            super(MOST, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, TextLayout> eldest) {
            boolean full = size() > MOST;
            if (full) {
                eldest.getValue().dispose();
            }
            return full;
        }
    }

    private final Device device;
    private final SwtFonts fonts;
    private final Queue<Kept> all = new ConcurrentLinkedQueue<>();
    private final ThreadLocal<Kept> here = ThreadLocal.withInitial(() -> {
        Kept kept = new Kept();
        all.add(kept);
        return kept;
    });

    KeptTexts(Device device, SwtFonts fonts) {
        this.device = device;
        this.fonts = fonts;
    }

    /**
     * Paints a text of one line in the foreground of a GC.
     *
     * @param gc where
     * @param text the text
     * @param size its size
     * @param bold whether it is bold
     * @param x where its left end goes
     * @param y where its upper end goes
     */
    public void draw(GC gc, String text, Size size, boolean bold, int x, int y) {
        here.get().computeIfAbsent(new Key(text, size, bold), this::laidOut).draw(gc, x, y);
    }

    private TextLayout laidOut(Key key) {
        TextLayout layout = new TextLayout(device);
        layout.setFont(fonts.get(key.size(), key.bold() ? SWT.BOLD : SWT.NORMAL));
        layout.setText(key.text());
        return layout;
    }

    /** Gives all of them back, when no thread paints any more. */
    void dispose() {
        all.forEach(kept -> kept.values().forEach(TextLayout::dispose));
        all.clear();
    }
}

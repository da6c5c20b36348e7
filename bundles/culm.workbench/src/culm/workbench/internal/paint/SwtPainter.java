package culm.workbench.internal.paint;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Rectangle;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Group;
import culm.figures.Handle;
import culm.figures.Item;
import culm.figures.Palette;
import culm.figures.Shape;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.Text;

/** Paints a drawing with SWT: the same items, in the same order, as every other back end. One drawing unit is one SWT point. */
public final class SwtPainter {
    private static final double THIN = 1.6;
    private final Palette palette;
    private final SwtFonts fonts;
    private final ToIntFunction<Text> widths;
    private final boolean screen;
    private final Map<Size, Integer> ascents = new EnumMap<>(Size.class);
    private GC gc;

    /**
     * Paints in given colours and fonts.
     *
     * @param palette the colours
     * @param fonts the fonts
     */
    public SwtPainter(Palette palette, SwtFonts fonts) {
        this.palette = palette;
        this.fonts = fonts;
        this.widths = text -> gc.stringExtent(text.text()).x;
        this.screen = false;
    }

    /**
     * Paints with widths that were measured before.
     *
     * @param palette the colours
     * @param fonts the fonts
     * @param measure what was measured with these fonts on this display
     */
    public SwtPainter(Palette palette, SwtFonts fonts, SwtMeasure measure) {
        this.palette = palette;
        this.fonts = fonts;
        this.screen = true;
        this.widths = text -> (int) measure.width(text.text(), text.size(), text.bold());
        for (Size size : Size.values()) {
            ascents.put(size, (int) measure.ascent(size));
        }
    }

    /**
     * Paints a whole drawing, without its ground.
     *
     * @param on where; its settings are changed
     * @param drawing the drawing
     * @param x where its left edge goes
     * @param y where its upper edge goes
     */
    public void paint(GC on, Drawing drawing, double x, double y) {
        gc = on;
        gc.setAdvanced(true);
        gc.setAntialias(SWT.ON);
        if (!screen) {
            gc.setTextAntialias(SWT.ON); // on a screen as the system has it, as in every other text of the window
        }
        gc.setFillRule(SWT.FILL_EVEN_ODD);
        moved(x, y, () -> items(drawing.items()));
        gc.setAlpha(255);
    }

    private void items(List<Item> items) {
        for (Item item : items) {
            if (item instanceof Shape shape) {
                shape(shape);
            } else if (item instanceof Text text) {
                text(text);
            } else if (item instanceof Handle handle) {
                shape(handle.shape());
            } else if (item instanceof Group group) {
                group(group);
            }
        }
    }

    private void group(Group group) {
        moved(group.dx(), group.dy(), () -> {
            if (group.clip().isEmpty()) {
                items(group.items());
                return;
            }
            Rectangle before = gc.getClipping();
            gc.setClipping(outer(group.clip().get()).intersection(before));
            items(group.items());
            gc.setClipping(before);
        });
    }

    private static Rectangle outer(Box box) {
        int x = (int) Math.floor(box.x());
        int y = (int) Math.floor(box.y());
        return new Rectangle(x, y, (int) Math.ceil(box.right()) - x, (int) Math.ceil(box.bottom()) - y);
    }

    private void moved(double dx, double dy, Runnable paint) {
        if (dx == 0 && dy == 0) {
            paint.run();
            return;
        }
        Transformed.paint(gc, t -> t.translate((float) dx, (float) dy), paint);
    }

    private void shape(Shape shape) {
        Style style = shape.style();
        org.eclipse.swt.graphics.Path path = SwtPath.of(gc.getDevice(), shape.path());
        try {
            style.fill().ifPresent(role -> {
                gc.setAlpha((int) Math.round(255 * style.fillOpacity()));
                gc.setBackground(SwtColors.of(palette.of(role)));
                gc.fillPath(path);
                gc.setAlpha(255);
            });
            style.stroke().ifPresent(role -> {
                gc.setForeground(SwtColors.of(palette.of(role)));
                gc.setLineAttributes(line(style));
                gc.drawPath(path);
            });
        } finally {
            path.dispose();
        }
    }

    private static LineAttributes line(Style style) {
        // Round ends and corners take several times as long, and cannot be seen on a thin line.
        boolean thin = style.width() < THIN;
        LineAttributes line = new LineAttributes((float) style.width(), thin ? SWT.CAP_FLAT : SWT.CAP_ROUND, thin ? SWT.JOIN_BEVEL : SWT.JOIN_ROUND);
        if (style.dash() != Dash.SOLID) {
            double[] lengths = style.dash().lengths();
            line.style = SWT.LINE_CUSTOM;
            line.cap = SWT.CAP_FLAT;
            line.dash = new float[lengths.length];
            for (int i = 0; i < lengths.length; i++) {
                line.dash[i] = (float) lengths[i];
            }
        }
        return line;
    }

    private void text(Text text) {
        if (!screen) {
            gc.setFont(fonts.get(text.size(), text.bold() ? SWT.BOLD : SWT.NORMAL));
        }
        gc.setForeground(SwtColors.of(palette.of(text.role())));
        if (text.turn() == 0) {
            string(text, text.x(), text.y());
            return;
        }
        Transformed.paint(gc, t -> {
            t.translate((float) text.x(), (float) text.y());
            t.rotate((float) text.turn());
        }, () -> string(text, 0, 0));
    }

    private void string(Text text, double x, double y) {
        int width = text.anchor() == Anchor.START ? 0 : widths.applyAsInt(text);
        double left = text.anchor() == Anchor.END ? x - width : text.anchor() == Anchor.MIDDLE ? x - width / 2.0 : x;
        int from = (int) Math.round(left);
        int top = (int) Math.round(y - ascent(text.size()));
        if (screen) {
            fonts.texts().draw(gc, text.text(), text.size(), text.bold(), from, top);
        } else {
            gc.drawString(text.text(), from, top, true);
        }
    }

    /** Asking for a font's metrics takes longer than painting with it. */
    private int ascent(Size size) {
        return ascents.computeIfAbsent(size, s -> gc.getFontMetrics().getAscent() + gc.getFontMetrics().getLeading());
    }
}

package culm.bench.plots;

import java.util.List;

import culm.figures.Drawing;
import culm.figures.Pen;

/** Drawings put together. */
final class Sheets {
    private static final double APART = 12;

    private Sheets() {
    }

    /** One below the other. */
    static Drawing below(String title, List<Drawing> drawings) {
        Pen pen = new Pen();
        double y = 0;
        double width = 0;
        for (Drawing drawing : drawings) {
            pen.add(drawing.at(0, y));
            y += drawing.height() + APART;
            width = Math.max(width, drawing.width());
        }
        return pen.drawing(width, y - APART, title, String.join(" ", drawings.stream().map(Drawing::description).toList()));
    }

    /** One beside the other. */
    static Drawing beside(String title, List<Drawing> drawings) {
        Pen pen = new Pen();
        double x = 0;
        double height = 0;
        for (Drawing drawing : drawings) {
            pen.add(drawing.at(x, 0));
            x += drawing.width();
            height = Math.max(height, drawing.height());
        }
        return pen.drawing(x, height, title, String.join(" ", drawings.stream().map(Drawing::description).toList()));
    }
}

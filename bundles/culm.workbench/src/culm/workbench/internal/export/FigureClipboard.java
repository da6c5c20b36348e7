package culm.workbench.internal.export;

import java.util.Optional;

import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;

import culm.figures.Drawing;
import culm.figures.Role;
import culm.workbench.internal.graphs.Figure;
import culm.workbench.internal.look.Look;

/** Copies a drawing as a picture or as a table. */
public final class FigureClipboard {
    private static final int LARGER = 2;
    private final Look look;

    /**
     * Copies in given colours.
     *
     * @param look the colours
     */
    public FigureClipboard(Look look) {
        this.look = look;
    }

    /** Copies as a picture, twice as large as on the screen. */
    public void picture(Figure figure) {
        Optional<Drawing> drawing = figure.onScreen();
        if (drawing.isEmpty()) {
            return;
        }
        int width = LARGER * (int) Math.ceil(drawing.get().width());
        int height = LARGER * (int) Math.ceil(drawing.get().height());
        Image image = new Image(look.display(), width, height);
        GC gc = new GC(image);
        org.eclipse.swt.graphics.Transform twice = new org.eclipse.swt.graphics.Transform(look.display(), LARGER, 0, 0, LARGER, 0, 0);
        try {
            gc.setBackground(look.colour(Role.PAPER));
            gc.fillRectangle(0, 0, width, height);
            gc.setTransform(twice);
            look.painter().paint(gc, drawing.get(), 0, 0);
            put(image.getImageData(), ImageTransfer.getInstance());
        } finally {
            twice.dispose();
            gc.dispose();
            image.dispose();
        }
    }

    /** Copies the numbers as text for a spreadsheet. */
    public void table(Figure figure) {
        put(figure.table().text(), TextTransfer.getInstance());
    }

    private void put(Object content, Transfer transfer) {
        Clipboard clipboard = new Clipboard(look.display());
        try {
            clipboard.setContents(new Object[] { content }, new Transfer[] { transfer });
        } finally {
            clipboard.dispose();
        }
    }
}

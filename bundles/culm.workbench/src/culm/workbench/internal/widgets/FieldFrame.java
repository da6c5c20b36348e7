package culm.workbench.internal.widgets;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import culm.figures.Role;
import culm.workbench.internal.look.Look;

/** The frame of what is typed into. */
public final class FieldFrame {
    private static final int ROUND = 5;
    private static final int[] DASHES = { 4, 3 };

    private FieldFrame() {
    }

    /**
     * Paints it, ground included.
     *
     * @param gc where
     * @param look colours
     * @param area what it goes around
     * @param ground the colour inside
     * @param edge the colour of the line
     * @param strong whether the line is two wide, for the one that the keys go to or that is wrong
     * @param dashed whether the line is broken, for what is assumed
     */
    public static void paint(GC gc, Look look, Rectangle area, Role ground, Role edge, boolean strong, boolean dashed) {
        gc.setBackground(look.colour(ground));
        gc.fillRoundRectangle(0, 0, area.width - 1, area.height - 1, ROUND, ROUND);
        gc.setForeground(look.colour(edge));
        gc.setLineWidth(strong ? 2 : 1);
        if (dashed) {
            gc.setLineDash(DASHES);
        }
        // A line two wide lies on both sides of where it is drawn: all of it inside, or it is thinner at the top and the left.
        int inside = strong ? 1 : 0;
        gc.drawRoundRectangle(inside, inside, area.width - 1 - inside, area.height - 1 - inside, ROUND, ROUND);
    }
}

package culm.workbench.internal.widgets;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import culm.figures.Role;
import culm.workbench.internal.look.Look;

/** What stands behind the icon of a chosen row: paper, since the icons are drawn for paper and the system's colour of what is chosen may be theirs. */
public final class IconGround {
    private static final int AROUND = 1;
    private static final int ROUND = 6;

    private IconGround() {
    }

    /**
     * Paints it.
     *
     * @param gc where
     * @param look the colours
     * @param icon where the icon goes, points
     */
    public static void paint(GC gc, Look look, Rectangle icon) {
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRoundRectangle(icon.x - AROUND, icon.y - AROUND, icon.width + 2 * AROUND, icon.height + 2 * AROUND, ROUND, ROUND);
    }
}

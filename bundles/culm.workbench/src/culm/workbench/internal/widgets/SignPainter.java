package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;

import culm.blank.rules.Severity;
import culm.blank.rules.Verdict;
import culm.figures.Role;
import culm.workbench.internal.look.Look;

/** The signs of findings and verdicts. Each has its own shape; two colours only. */
public final class SignPainter {
    private SignPainter() {
    }

    /**
     * Paints the sign of a severity around a point.
     *
     * @param gc where
     * @param look colours
     * @param severity which
     * @param x middle
     * @param y middle
     */
    public static void paint(GC gc, Look look, Severity severity, int x, int y) {
        gc.setAntialias(SWT.ON);
        switch (severity) {
            case FINE -> disc(gc, look, x, y);
            case WARNING -> triangle(gc, look, x, y);
            case ERROR -> cross(gc, look, x, y);
            case ADVICE -> square(gc, look, x, y);
        }
    }

    /**
     * Paints the sign of a verdict.
     *
     * @param gc where
     * @param look colours
     * @param sign which
     * @param x middle
     * @param y middle
     */
    public static void paint(GC gc, Look look, Verdict.Sign sign, int x, int y) {
        paint(gc, look, switch (sign) {
            case FITS -> Severity.FINE;
            case MAY_FIT -> Severity.WARNING;
            case DOES_NOT -> Severity.ERROR;
        }, x, y);
    }

    /**
     * The colour that goes with a severity.
     *
     * @param severity which
     * @return its role
     */
    public static Role role(Severity severity) {
        return switch (severity) {
            case FINE -> Role.FITS;
            case ADVICE -> Role.QUIET;
            default -> Role.DOES_NOT;
        };
    }

    private static void disc(GC gc, Look look, int x, int y) {
        gc.setBackground(look.colour(Role.FITS));
        gc.fillOval(x - 6, y - 6, 12, 12);
        gc.setForeground(look.colour(Role.PAPER));
        gc.setLineWidth(2);
        gc.drawPolyline(new int[] { x - 3, y, x - 1, y + 3, x + 3, y - 2 });
    }

    private static void triangle(GC gc, Look look, int x, int y) {
        gc.setForeground(look.colour(Role.DOES_NOT));
        gc.setLineWidth(2);
        gc.setLineJoin(SWT.JOIN_ROUND);
        gc.drawPolygon(new int[] { x, y - 6, x + 6, y + 5, x - 6, y + 5 });
        gc.drawLine(x, y - 2, x, y);
        gc.setBackground(look.colour(Role.DOES_NOT));
        gc.fillRectangle(x - 1, y + 2, 2, 1);
    }

    private static void cross(GC gc, Look look, int x, int y) {
        gc.setBackground(look.colour(Role.DOES_NOT));
        gc.fillRoundRectangle(x - 6, y - 6, 12, 12, 3, 3);
        gc.setForeground(look.colour(Role.PAPER));
        gc.setLineWidth(2);
        gc.drawLine(x - 3, y - 3, x + 3, y + 3);
        gc.drawLine(x - 3, y + 3, x + 3, y - 3);
    }

    private static void square(GC gc, Look look, int x, int y) {
        gc.setBackground(look.colour(Role.QUIET));
        gc.fillRectangle(x - 4, y - 4, 8, 8);
    }
}

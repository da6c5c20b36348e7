package culm.workbench.internal.paint;

import org.eclipse.swt.graphics.Color;

import culm.figures.Rgb;

/** Colours of a palette for SWT, which has needed no disposing of them since 3.115. */
public final class SwtColors {
    private SwtColors() {
    }

    /**
     * A colour.
     *
     * @param rgb which
     * @return the same for SWT
     */
    public static Color of(Rgb rgb) {
        return new Color(rgb.red(), rgb.green(), rgb.blue());
    }
}

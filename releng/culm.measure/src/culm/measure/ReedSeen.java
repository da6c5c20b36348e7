package culm.measure;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

import culm.workbench.internal.graphs.Figure;

/** Finds the drawing of the reed in the window. */
final class ReedSeen {
    private ReedSeen() {
    }

    /** {@return whether the reed can be seen, with a drawing in it} */
    static boolean in(Display display) {
        return canvas(display).filter(c -> ((Figure) c).onScreen().isPresent()).isPresent();
    }

    /** {@return the drawing of the reed, when there is one} */
    static Optional<Canvas> canvas(Display display) {
        return Arrays.stream(display.getShells()).flatMap(ReedSeen::below).filter(c -> c instanceof Figure f && f.title().equals("Reed") && c.isVisible()).map(Canvas.class::cast).findFirst();
    }

    private static Stream<Control> below(Control control) {
        return control instanceof Composite parent ? Stream.concat(Stream.of(control), Arrays.stream(parent.getChildren()).flatMap(ReedSeen::below)) : Stream.of(control);
    }
}

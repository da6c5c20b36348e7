package culm.workbench.internal.look;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.Widget;

import culm.figures.Role;

/**
 * What the platform makes around our parts: the window's ground, the stacks of tabs and the bars beside them. It has this program's colours as
 * soon as it is made and after every change. The platform's engine for style sheets does that too, and takes about an eighth of the time in which
 * the window opens beyond a bare one.
 */
final class Frame {
    /** Under this key the platform says what a widget shows. */
    private static final String WHAT = "org.eclipse.e4.ui.css.CssClassName";
    private static final Set<String> GROUND = Set.of("MTrimmedWindow");
    private static final Set<String> ON_GROUND = Set.of("MPartSashContainer", "MPerspectiveStack", "MPerspective", "MPlaceholder", "MArea", "MPart", "MTrimBar");
    private static final Set<String> BAR = Set.of("MToolBar");
    private final Look look;

    private Frame(Look look) {
        this.look = look;
    }

    /** Dresses all that is made from now on, and all that there is after every change. */
    static void follow(Look look) {
        Frame frame = new Frame(look);
        look.display().addListener(SWT.Skin, e -> frame.dress(e.widget));
        look.onChange(frame::dressAll);
    }

    /** Now, and once the system's own colours have followed. */
    private void dressAll() {
        Runnable dress = () -> Stream.of(look.display().getShells()).forEach(this::dressBelow);
        dress.run();
        look.later(dress);
    }

    private void dressBelow(Control control) {
        dress(control);
        if (control instanceof Composite parent) {
            Stream.of(parent.getChildren()).forEach(this::dressBelow);
        }
    }

    private void dress(Widget widget) {
        if (widget instanceof CTabFolder folder) {
            dress(folder);
        } else if (widget instanceof CTabItem tab) {
            dress(tab);
        } else if (widget instanceof Control control) {
            if (is(control, GROUND)) {
                ground(control, look.colour(Role.PAPER));
            } else if (is(control, ON_GROUND) || between(control)) {
                ground(control, look.clear());
            } else if (is(control, BAR)) {
                ground(control, look.colour(Role.STRIP));
            }
        }
    }

    private static boolean is(Control control, Set<String> any) {
        return control.getData(WHAT) instanceof String words && !Collections.disjoint(List.of(words.split(" ")), any);
    }

    /** What the platform puts between two of its pieces takes the ground of the one below, and would paint it again. */
    private static boolean between(Control control) {
        return control.getClass() == Composite.class && control.getData(WHAT) == null && control.getParent() != null
                && (is(control.getParent(), GROUND) || is(control.getParent(), ON_GROUND));
    }

    /** While nothing is open there are no tabs, and no strip behind them. */
    private void dress(CTabFolder folder) {
        boolean empty = folder.getItemCount() == 0;
        Color strip = look.colour(empty ? Role.PAPER : Role.STRIP);
        if (!(folder.getRenderer() instanceof Tabs)) {
            folder.setRenderer(new Tabs(folder, look));
        }
        folder.setSimple(true);
        ground(folder, strip);
        folder.setForeground(look.colour(Role.QUIET));
        folder.setSelectionBackground(look.colour(Role.PAPER));
        folder.setSelectionForeground(look.colour(Role.INK));
        Stream.of(folder.getChildren()).filter(ToolBar.class::isInstance).forEach(bar -> ground(bar, strip));
        if (empty) {
            EmptyArea.dress(look, folder);
        }
    }

    /** The first tab brings the strip, the last one takes it away. */
    private void dress(CTabItem tab) {
        CTabFolder folder = tab.getParent();
        dress(folder);
        tab.addListener(SWT.Dispose, e -> look.later(() -> {
            if (!folder.isDisposed() && folder.getItemCount() == 0) {
                dress(folder);
            }
        }));
    }

    /** Each ground costs the toolkit a millisecond, whether it is another one or not. */
    private static void ground(Control control, Color colour) {
        if (!control.getBackground().equals(colour)) {
            control.setBackground(colour);
        }
    }
}

package culm.workbench.internal.handlers;

import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Predicate;

import org.eclipse.swt.widgets.Display;

import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.look.ThemeChoice;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.widgets.Typing;

/** What is chosen for the whole window. */
public enum WindowTask {
    /** A light window. */
    LIGHT(w -> new ThemeChoice(w.look()).choose(false), w -> !w.look().dark()),
    /** A dark window. */
    DARK(w -> new ThemeChoice(w.look()).choose(true), w -> w.look().dark()),
    /** Lengths in mm. */
    MM(w -> show(w, LengthUnit.MM), w -> w.units().now() == LengthUnit.MM),
    /** Lengths in thousandths of an inch. */
    THOU(w -> show(w, LengthUnit.THOU), w -> w.units().now() == LengthUnit.THOU);

    private final Consumer<Workshop> todo;
    private final Predicate<Workshop> chosen;

    WindowTask(Consumer<Workshop> todo, Predicate<Workshop> chosen) {
        this.todo = todo;
        this.chosen = chosen;
    }

    /** What is being typed was meant in the unit that was shown. */
    private static void show(Workshop workshop, LengthUnit unit) {
        Typing.end(Display.getCurrent().getFocusControl());
        workshop.units().choose(unit);
    }

    /** {@return the command that does it, as in plugin.xml} */
    String command() {
        return "culm.window." + name().toLowerCase(Locale.ROOT);
    }

    void run(Workshop workshop) {
        todo.accept(workshop);
    }

    boolean chosen(Workshop workshop) {
        return chosen.test(workshop);
    }
}

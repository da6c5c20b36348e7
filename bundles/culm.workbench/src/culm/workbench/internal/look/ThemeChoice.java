package culm.workbench.internal.look;

import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

import culm.figures.Palette;
import culm.figures.Rgb;
import culm.figures.Role;

/** Light or dark: chosen by the user and remembered; until then as the system has it. */
public final class ThemeChoice {
    private static final String NODE = "culm.workbench";
    private static final String DARK = "dark";
    private final Look look;

    /**
     * The choice for a look.
     *
     * @param look the look
     */
    public ThemeChoice(Look look) {
        this.look = look;
    }

    /** Before any window: controls and drawings look as it was chosen. */
    public void restore() {
        if (chosen() != Display.isSystemDarkTheme()) {
            NativeTheme.dark(chosen()); // takes long: the system reads its theme again
        }
        look.dark(chosen());
        // The platform writes into an empty editor area with this colour, and keeps it when the theme changes: it must be readable on both.
        JFaceResources.getColorRegistry().put(JFacePreferences.QUALIFIER_COLOR, between(Palette.LIGHT.of(Role.QUIET), Palette.DARK.of(Role.QUIET)));
    }

    private static RGB between(Rgb a, Rgb b) {
        return new RGB((a.red() + b.red()) / 2, (a.green() + b.green()) / 2, (a.blue() + b.blue()) / 2);
    }

    /** As soon as the window stands: its frame does, too. */
    public void restoreFrame() {
        engine().filter(e -> e.getActiveTheme() == null || !e.getActiveTheme().getId().equals(id(chosen()))).ifPresentOrElse(e -> apply(chosen()), this::dressEmptyAreas);
    }

    private static boolean chosen() {
        return settings().getBoolean(DARK, Display.isSystemDarkTheme());
    }

    /**
     * Chooses and remembers.
     *
     * @param dark whether dark
     */
    public void choose(boolean dark) {
        apply(dark);
        settings().putBoolean(DARK, dark);
        try {
            settings().flush();
        } catch (BackingStoreException e) {
            ILog.get().warn("The choice of colours is not remembered.", e);
        }
    }

    private void apply(boolean dark) {
        NativeTheme.dark(dark);
        engine().ifPresent(e -> e.setTheme(id(dark), true));
        look.redress(dark); // after the engine, which gives every control back what it had first
        dressEmptyAreas();
    }

    /** Now, and once the system's own colours have followed. */
    private void dressEmptyAreas() {
        Runnable dress = () -> {
            for (Shell shell : look.display().getShells()) {
                EmptyArea.dress(look, shell);
            }
        };
        dress.run();
        look.later(dress);
    }

    private static String id(boolean dark) {
        return dark ? "culm.dark" : "culm.light";
    }

    private static Optional<IThemeEngine> engine() {
        return Optional.ofNullable(PlatformUI.getWorkbench().getService(IThemeEngine.class));
    }

    private static Preferences settings() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}

package culm.workbench.internal.look;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
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
        Frame.follow(look);
        // The platform writes into an empty editor area with this colour, and keeps it when the theme changes: it must be readable on both.
        JFaceResources.getColorRegistry().put(JFacePreferences.QUALIFIER_COLOR, between(Palette.LIGHT.of(Role.QUIET), Palette.DARK.of(Role.QUIET)));
    }

    private static RGB between(Rgb a, Rgb b) {
        return new RGB((a.red() + b.red()) / 2, (a.green() + b.green()) / 2, (a.blue() + b.blue()) / 2);
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
        NativeTheme.dark(dark);
        look.dark(dark);
        settings().putBoolean(DARK, dark);
        try {
            settings().flush();
        } catch (BackingStoreException e) {
            ILog.get().warn("The choice of colours is not remembered.", e);
        }
    }

    private static Preferences settings() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}

package culm.workbench.internal.look;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

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

	/** Makes the window look as it was chosen. */
	public void restore() {
		apply(settings().getBoolean(DARK, Display.isSystemDarkTheme()));
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
		look.dark(dark);
		IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
		if (engine != null) {
			engine.setTheme(dark ? "culm.dark" : "culm.light", false);
		}
	}

	private static Preferences settings() {
		return InstanceScope.INSTANCE.getNode(NODE);
	}
}

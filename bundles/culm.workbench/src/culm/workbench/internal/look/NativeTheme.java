package culm.workbench.internal.look;

import java.lang.reflect.InvocationTargetException;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;

/** Tells the system's own controls (menus, scroll bars, dialogs) to be dark or light. */
final class NativeTheme {
    private NativeTheme() {
    }

    /** Each port of SWT has this method, on a class of its own name. */
    static void dark(boolean dark) {
        Optional<String> owner = switch (SWT.getPlatform()) {
            case "gtk" -> Optional.of("org.eclipse.swt.internal.gtk.OS");
            case "win32" -> Optional.of("org.eclipse.swt.internal.win32.OS");
            case "cocoa" -> Optional.of("org.eclipse.swt.internal.cocoa.OS");
            default -> Optional.empty();
        };
        if (owner.isEmpty()) {
            return;
        }
        try {
            Class.forName(owner.get(), true, Display.class.getClassLoader()).getMethod("setTheme", boolean.class)
                    .invoke(null, dark);
        } catch (ClassNotFoundException | NoSuchMethodException | IllegalAccessException
                | InvocationTargetException e) {
            ILog.get().warn("The system's controls keep their colours.", e);
        }
    }
}

package culm.workbench.internal;

import java.io.IOException;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/** Starts the workbench and runs it until its last window closes. */
public final class Application implements IApplication {

	@Override
	public Object start(IApplicationContext context) throws IOException {
		StateFolder.take();
		Display display = PlatformUI.createDisplay();
		try {
			int code = PlatformUI.createAndRunWorkbench(display, new StudioAdvisor());
			return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
		} finally {
			display.dispose();
		}
	}

	@Override
	public void stop() {
		if (!PlatformUI.isWorkbenchRunning())
			return;
		IWorkbench workbench = PlatformUI.getWorkbench();
		workbench.getDisplay().syncExec(workbench::close);
	}
}

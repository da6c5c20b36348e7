package culm.workbench.internal;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Says how the workbench starts: one window, the design perspective, and what was open last time. */
public class StudioAdvisor extends WorkbenchAdvisor {

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		super.initialize(configurer);
		configurer.setSaveAndRestore(true);
	}

	@Override
	public String getInitialWindowPerspectiveId() {
		return DesignPerspective.ID;
	}

	@Override
	public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		configurer.setInitialSize(new Point(1280, 800));
		configurer.setTitle("Culm");
		configurer.setShowCoolBar(false);
		configurer.setShowStatusLine(true);
		return new WorkbenchWindowAdvisor(configurer);
	}
}

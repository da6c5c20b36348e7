package culm.measure;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The smallest window the platform opens: what Culm's is measured against. */
public final class BareShell implements IApplication {

    /** A perspective without views. */
    public static final class Empty implements IPerspectiveFactory {
        @Override
        public void createInitialLayout(IPageLayout layout) {
            layout.setEditorAreaVisible(true);
        }
    }

    @Override
    public Object start(IApplicationContext context) {
        Display display = PlatformUI.createDisplay();
        try {
            PlatformUI.createAndRunWorkbench(display, new WorkbenchAdvisor() {
                @Override
                public String getInitialWindowPerspectiveId() {
                    return "culm.measure.empty";
                }

                @Override
                public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
                    configurer.setInitialSize(new Point(1280, 800));
                    return new WorkbenchWindowAdvisor(configurer);
                }
            });
            return EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    @Override
    public void stop() {
        // It ends by itself.
    }
}

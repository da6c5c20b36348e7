package culm.workbench.internal;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.osgi.framework.FrameworkUtil;

import culm.extensions.Extensions;
import culm.workbench.internal.app.FirstDesign;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.handlers.WindowHandler;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.look.ThemeChoice;

/** Says how the workbench starts: one window, the design perspective, and what was open last time. */
public class StudioAdvisor extends WorkbenchAdvisor {
    private final Optional<Path> studio;
    private Workshop workshop;

    /** Starts without a studio. */
    public StudioAdvisor() {
        this(Optional.empty());
    }

    /**
     * Starts on a studio.
     *
     * @param studio its folder
     */
    public StudioAdvisor(Optional<Path> studio) {
        this.studio = studio;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        File fonts = FrameworkUtil.getBundle(StudioAdvisor.class).getDataFile("fonts");
        Look look = new Look(Display.getCurrent(), fonts.toPath());
        workshop = new Workshop(look, Extensions.start());
        workshop.installIn(configurer.getWorkbench());
    }

    @Override
    public void preStartup() {
        new ThemeChoice(workshop.look()).restore();
    }

    @Override
    public void postStartup() {
        new ThemeChoice(workshop.look()).restoreFrame();
        WindowHandler.activateIn(getWorkbenchConfigurer().getWorkbench());
        studio.or(workshop::lastStudio).ifPresent(folder -> {
            workshop.studio().open(folder);
            new FirstDesign(workshop).openIn(getWorkbenchConfigurer().getWorkbench(), folder);
        });
    }

    @Override
    public void postShutdown() {
        workshop.close();
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
        configurer.setShowProgressIndicator(false);
        return new WorkbenchWindowAdvisor(configurer);
    }
}

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
import culm.workbench.internal.widgets.WheelGuard;

/** Says how the workbench starts: one window, the design perspective, and what was open last time. */
public class StudioAdvisor extends WorkbenchAdvisor {
    private static final int IMAGES_AFTER = 1000;
    private final Optional<Path> studio;
    private final Extensions extensions;
    private Workshop workshop;

    /** Starts without a studio. */
    public StudioAdvisor() {
        this(Optional.empty(), Extensions.start());
    }

    /**
     * Starts on a studio.
     *
     * @param studio its folder
     * @param extensions what Culm and the plug-ins bring
     */
    public StudioAdvisor(Optional<Path> studio, Extensions extensions) {
        this.studio = studio;
        this.extensions = extensions;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        File fonts = FrameworkUtil.getBundle(StudioAdvisor.class).getDataFile("fonts");
        Look look = new Look(Display.getCurrent(), fonts.toPath());
        WheelGuard.install(look.display());
        workshop = new Workshop(look, extensions);
        workshop.installIn(configurer.getWorkbench());
    }

    @Override
    public void preStartup() {
        new ThemeChoice(workshop.look()).restore();
    }

    @Override
    public void postStartup() {
        // Later: the list of windows can wait for its pictures, the user cannot wait for the window.
        workshop.look().display().timerExec(IMAGES_AFTER, workshop.icons()::giveToWindows);
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

package culm.workbench.internal.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.services.IServiceLocator;
import org.osgi.service.prefs.BackingStoreException;
import org.osgi.service.prefs.Preferences;

import culm.blank.rules.Rules;
import culm.design.Bridge;
import culm.extensions.Extensions;
import culm.model.files.Claims;
import culm.model.files.ModelFiles;
import culm.workbench.internal.look.Icons;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.studio.StudioFolder;

/** What every part of the window works with. One for each running workbench; parts get it from their site. */
public final class Workshop {
    private static final String STUDIO = "studio";
    private static final String WHO = "who";
    private final Look look;
    private final Units units = new Units();
    private final ModelFiles files = new ModelFiles();
    private final Bridge bridge;
    private final Rules rules;
    private final Extensions extensions;
    private final Icons icons;
    private final StudioFolder studio;
    private final Notices notices = new Notices();
    private final Claims claims = new Claims();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "Culm assessments");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * A workshop that knows some types and rules.
     *
     * @param look how the window looks
     * @param extensions what Culm and the plug-ins bring
     */
    public Workshop(Look look, Extensions extensions) {
        this.look = look;
        this.extensions = extensions;
        this.bridge = new Bridge(extensions.profiles());
        this.rules = extensions.rules();
        this.icons = new Icons(look.display());
        this.studio = new StudioFolder(files, worker, look::later);
    }

    /**
     * The workshop of a part, from its site.
     *
     * @param site a part's site, or the workbench
     * @return the workshop
     */
    public static Workshop of(IServiceLocator site) {
        return site.getService(Workshop.class);
    }

    /**
     * Makes this the workshop of a workbench.
     *
     * @param workbench the workbench
     */
    public void installIn(IWorkbench workbench) {
        workbench.getService(IEclipseContext.class).set(Workshop.class, this);
    }

    /** {@return colours and fonts} */
    public Look look() {
        return look;
    }

    /** {@return the unit lengths are shown in} */
    public Units units() {
        return units;
    }

    /** {@return the studio that is open} */
    public StudioFolder studio() {
        return studio;
    }

    /** {@return what could not be opened though nobody asked for it} */
    public Notices notices() {
        return notices;
    }

    /** {@return the icons} */
    public Icons icons() {
        return icons;
    }

    /** {@return what Culm and the plug-ins bring, and what could not be used} */
    public Extensions extensions() {
        return extensions;
    }

    /** {@return says to others which files are open here} */
    public Claims claims() {
        return claims;
    }

    /** {@return the name that others see; until one is given, the one at this machine} */
    public String who() {
        return settings().get(WHO, System.getProperty("user.name", ""));
    }

    /**
     * Gives the name that others see.
     *
     * @param name the name
     */
    public void who(String name) {
        settings().put(WHO, name);
        flush("The name is not remembered.");
    }

    /** {@return what reads and writes files} */
    public ModelFiles files() {
        return files;
    }

    /** {@return from designs to blanks, with all known types} */
    public Bridge bridge() {
        return bridge;
    }

    /** {@return the rules blanks are judged by} */
    public Rules rules() {
        return rules;
    }

    /** {@return computes off the display's thread, one thing after the other} */
    public ExecutorService worker() {
        return worker;
    }

    /**
     * Opens this studio again the next time.
     *
     * @param folder its folder
     */
    public void rememberStudio(Path folder) {
        settings().put(STUDIO, folder.toString());
        flush("The studio is not remembered.");
    }

    private static void flush(String otherwise) {
        try {
            settings().flush();
        } catch (BackingStoreException e) {
            ILog.get().warn(otherwise, e);
        }
    }

    /** {@return the studio that was open last, if it is still there} */
    public Optional<Path> lastStudio() {
        return Optional.ofNullable(settings().get(STUDIO, null)).map(Path::of).filter(Files::isDirectory);
    }

    private static Preferences settings() {
        return InstanceScope.INSTANCE.getNode("culm.workbench");
    }

    /** Ends all computing. */
    public void close() {
        studio.close();
        try {
            claims.close();
        } catch (IOException e) {
            ILog.get().warn("Files may still count as open here.", e);
        }
        worker.shutdownNow();
    }
}

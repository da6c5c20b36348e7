package culm.measure;

import java.util.Dictionary;
import java.util.Hashtable;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;
import org.osgi.service.event.Event;
import org.osgi.service.event.EventConstants;
import org.osgi.service.event.EventHandler;

/**
 * Says when the window stands, in ms since the time in {@code culm.measure.began} (ms since 1970), and closes it. Idle without that property.
 */
public final class Opened implements BundleActivator, EventHandler {
    private static final String STANDS = "org/eclipse/e4/ui/LifeCycle/appStartupComplete";
    private static final Long BEGAN = Long.getLong("culm.measure.began");
    private static final int LOOK_AGAIN = 5;

    @Override
    public void start(BundleContext context) {
        if (BEGAN != null) {
            Dictionary<String, Object> topic = new Hashtable<>();
            topic.put(EventConstants.EVENT_TOPIC, STANDS);
            context.registerService(EventHandler.class, this, topic);
        }
    }

    @Override
    public void stop(BundleContext context) {
        // The service goes with the bundle.
    }

    @Override
    public void handleEvent(Event event) {
        Display display = PlatformUI.getWorkbench().getDisplay();
        display.asyncExec(() -> {
            say("window");
            if (Boolean.getBoolean("culm.measure.reed")) {
                awaitReed(display);
            } else {
                close();
            }
        });
    }

    private static void awaitReed(Display display) {
        if (ReedSeen.in(display)) {
            say("reed");
            close();
        } else {
            display.timerExec(LOOK_AGAIN, () -> awaitReed(display));
        }
    }

    private static void say(String what) {
        System.out.println(what + " " + (System.currentTimeMillis() - BEGAN));
    }

    private static void close() {
        PlatformUI.getWorkbench().getDisplay().asyncExec(PlatformUI.getWorkbench()::close);
    }
}

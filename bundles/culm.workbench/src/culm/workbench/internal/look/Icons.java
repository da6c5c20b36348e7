package culm.workbench.internal.look;

import java.net.URL;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** The icons of this program, drawn for it; by name. Disposed with the display. */
public final class Icons {
    private static final int[] OF_WINDOWS = {16, 32, 48, 64, 128, 256};
    private final Map<String, Image> images = new HashMap<>();
    private final Display display;

    /**
     * No icon is loaded yet.
     *
     * @param display the display they are for
     */
    public Icons(Display display) {
        this.display = display;
        display.disposeExec(() -> images.values().forEach(Image::dispose));
    }

    /**
     * An icon.
     *
     * @param name its file's name in the folder of icons, without ending
     * @return the icon; not to be disposed
     */
    public Image get(String name) {
        return images.computeIfAbsent(name, n -> descriptor(n).createImage());
    }

    /** Gives every window of now and of later the program's picture, in all sizes that lists of windows want. */
    public void giveToWindows() {
        Image[] pictures = IntStream.of(OF_WINDOWS).mapToObj(size -> get("culm" + size)).toArray(Image[]::new);
        Window.setDefaultImages(pictures);
        for (Shell shell : display.getShells()) {
            shell.setImages(pictures);
        }
    }

    /**
     * An icon to be made by someone else.
     *
     * @param name as in {@link #get}
     * @return its descriptor
     */
    public static ImageDescriptor descriptor(String name) {
        URL url = Icons.class.getResource("/icons/" + name + ".svg");
        return url == null ? ImageDescriptor.getMissingImageDescriptor() : ImageDescriptor.createFromURL(url);
    }
}

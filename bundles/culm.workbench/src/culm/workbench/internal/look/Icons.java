package culm.workbench.internal.look;

import java.net.URL;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;

/** The icons of this program, drawn for it; by name. Disposed with the display. */
public final class Icons {
    private final Map<String, Image> images = new HashMap<>();

    /**
     * No icon is loaded yet.
     *
     * @param display the display they are for
     */
    public Icons(Display display) {
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

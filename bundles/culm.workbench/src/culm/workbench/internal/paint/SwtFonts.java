package culm.workbench.internal.paint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Display;

import culm.figures.Size;
import culm.figures.font.FontFile;

/** The shipped font in the sizes of the drawings, for one display or printer. */
public final class SwtFonts {
    private static final String FAMILY = "DejaVu Sans";
    private static final double POINTS_PER_INCH = 72;
    private static final double UNITS_PER_INCH = 96;

    private record Key(Size size, int style) {
    }

    private final Device device;
    private final Map<Key, Font> fonts = new ConcurrentHashMap<>();
    private final KeptTexts texts;

    /**
     * Makes the shipped font known to a display or printer.
     *
     * @param device the display or printer
     * @param folder where the font's files may be put; the device reads them from there
     */
    public SwtFonts(Device device, Path folder) {
        this.device = device;
        this.texts = new KeptTexts(device, this);
        for (FontFile file : FontFile.values()) {
            device.loadFont(unpacked(file, folder).toString());
        }
        if (device instanceof Display display) {
            display.disposeExec(this::dispose);
        }
    }

    /** Gives all fonts back; done by itself for a display. */
    public void dispose() {
        texts.dispose();
        fonts.values().forEach(Font::dispose);
        fonts.clear();
    }

    private static Path unpacked(FontFile file, Path folder) {
        Path target = folder.resolve("culm-" + file.name().toLowerCase(Locale.ROOT) + ".ttf");
        if (Files.exists(target)) {
            return target;
        }
        try (InputStream in = file.open()) {
            Files.createDirectories(folder);
            Path beside = Files.createTempFile(folder, "font", ".part");
            Files.copy(in, beside, StandardCopyOption.REPLACE_EXISTING);
            return Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException("The shipped font cannot be put into " + folder, e);
        }
    }

    /**
     * A font.
     *
     * @param size what for
     * @param style {@link org.eclipse.swt.SWT#NORMAL}, BOLD or ITALIC
     * @return the font; not to be disposed
     */
    public Font get(Size size, int style) {
        return fonts.computeIfAbsent(new Key(size, style), this::make);
    }

    /** {@return texts on the screen that were laid out before} */
    public KeptTexts texts() {
        return texts;
    }

    private Font make(Key key) {
        // As text, since only so a height may have a fraction.
        double height = key.size().units() * POINTS_PER_INCH / UNITS_PER_INCH;
        return new Font(device, new FontData("1|" + FAMILY + "|" + height + "|" + key.style() + "|"));
    }
}

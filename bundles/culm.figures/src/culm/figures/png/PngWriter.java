package culm.figures.png;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

import culm.figures.Drawing;
import culm.figures.Palette;

/** Writes a drawing as PNG with its resolution, so that a page program prints it true to scale. Needs no display and no installed font. */
public final class PngWriter {
    /** Pixels that an image may have at most. */
    public static final long MOST_PIXELS = 100_000_000L;
    private static final double DRAWING_DPI = 96;
    private static final double MM_PER_INCH = 25.4;

    private PngWriter() {
    }

    /**
     * Writes the drawing; the stream stays open.
     * @param dpi pixels to the inch on paper; 96 gives one pixel a drawing unit
     * @throws IllegalArgumentException when the resolution is not positive or the image would be too large
     */
    public static void write(Drawing drawing, Palette palette, double dpi, OutputStream out) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            BufferedImage image = image(drawing, palette, dpi);
            IIOMetadata metadata = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), null);
            resolution(metadata, dpi);
            writer.setOutput(stream);
            writer.write(new IIOImage(image, null, metadata));
        } finally {
            writer.dispose();
        }
    }

    /** The drawing as an image. */
    public static BufferedImage image(Drawing drawing, Palette palette, double dpi) {
        double scale = dpi / DRAWING_DPI;
        long width = (long) Math.ceil(drawing.width() * scale);
        long height = (long) Math.ceil(drawing.height() * scale);
        if (!(dpi > 0) || width * height > MOST_PIXELS) {
            throw new IllegalArgumentException("an image of " + width + " by " + height + " pixels cannot be made");
        }
        BufferedImage image = new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.transform(AffineTransform.getScaleInstance(scale, scale));
        try (Glyphs glyphs = new Glyphs()) {
            new PngPainter(g, palette, glyphs).paint(drawing);
        } finally {
            g.dispose();
        }
        return image;
    }

    private static void resolution(IIOMetadata metadata, double dpi) throws IOException {
        String size = Double.toString(dpi / MM_PER_INCH);
        IIOMetadataNode across = new IIOMetadataNode("HorizontalPixelSize");
        across.setAttribute("value", size);
        IIOMetadataNode down = new IIOMetadataNode("VerticalPixelSize");
        down.setAttribute("value", size);
        IIOMetadataNode dimension = new IIOMetadataNode("Dimension");
        dimension.appendChild(across);
        dimension.appendChild(down);
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_1.0");
        root.appendChild(dimension);
        metadata.mergeTree("javax_imageio_1.0", root);
    }
}

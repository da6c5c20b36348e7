package culm.figures.svg;

import java.util.Objects;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Dash;
import culm.figures.Drawing;
import culm.figures.Group;
import culm.figures.Handle;
import culm.figures.Item;
import culm.figures.Numbers;
import culm.figures.Palette;
import culm.figures.Role;
import culm.figures.Shape;
import culm.figures.Style;
import culm.figures.Text;
import culm.figures.font.FontFile;

/**
 * Writes a drawing as SVG 1.1 text: its size in mm, so that it prints true to scale; the same drawing always gives the same text. Coordinates
 * are rounded to 0.001 drawing units. Text stays text.
 */
public final class SvgWriter {
    private final Palette palette;
    private final StringBuilder out = new StringBuilder(1 << 14);
    private int clips;

    private SvgWriter(Palette palette) {
        this.palette = palette;
    }

    /** The drawing as a whole document. */
    public static String write(Drawing drawing, Palette palette) {
        SvgWriter writer = new SvgWriter(Objects.requireNonNull(palette));
        writer.document(drawing);
        return writer.out.toString();
    }

    private void document(Drawing d) {
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"")
                .append(mm(d.width())).append("mm\" height=\"").append(mm(d.height())).append("mm\" viewBox=\"0 0 ")
                .append(n(d.width())).append(' ').append(n(d.height())).append("\" font-family=\"").append(FontFile.FAMILIES)
                .append("\" fill=\"none\" stroke-linejoin=\"round\" stroke-linecap=\"round\" fill-rule=\"evenodd\">\n");
        out.append("<title>").append(Xml.escape(d.title())).append("</title>\n");
        if (!d.description().isEmpty()) {
            out.append("<desc>").append(Xml.escape(d.description())).append("</desc>\n");
        }
        out.append("<rect width=\"").append(n(d.width())).append("\" height=\"").append(n(d.height())).append("\" fill=\"")
                .append(hex(Role.PAPER)).append("\"/>\n");
        d.items().forEach(this::item);
        out.append("</svg>\n");
    }

    private void item(Item item) {
        if (item instanceof Shape s) {
            shape(s);
        } else if (item instanceof Text t) {
            text(t);
        } else if (item instanceof Handle h) {
            out.append("<g class=\"handle\" data-mark=\"").append(Xml.escape(h.id())).append("\">");
            shape(h.shape());
            out.append("</g>\n");
        } else if (item instanceof Group g) {
            group(g);
        }
    }

    private void group(Group g) {
        String clip = "";
        if (g.clip().isPresent()) {
            Box b = g.clip().get();
            clip = "clip" + ++clips;
            out.append("<clipPath id=\"").append(clip).append("\"><rect x=\"").append(n(b.x() + g.dx())).append("\" y=\"").append(n(b.y() + g.dy()))
                    .append("\" width=\"").append(n(b.width())).append("\" height=\"").append(n(b.height())).append("\"/></clipPath>\n");
            out.append("<g clip-path=\"url(#").append(clip).append(")\">\n");
        }
        out.append("<g class=\"").append(g.part().id()).append('"');
        if (g.dx() != 0 || g.dy() != 0) {
            out.append(" transform=\"translate(").append(n(g.dx())).append(' ').append(n(g.dy())).append(")\"");
        }
        out.append(">\n");
        if (!g.title().isEmpty()) {
            out.append("<title>").append(Xml.escape(g.title())).append("</title>\n");
        }
        g.items().forEach(this::item);
        out.append(clip.isEmpty() ? "</g>\n" : "</g>\n</g>\n");
    }

    private void shape(Shape shape) {
        Style s = shape.style();
        out.append("<path d=\"");
        shape.path().walk(new SvgPath(out));
        out.append('"');
        s.fill().ifPresent(role -> out.append(" fill=\"").append(hex(role)).append('"'));
        if (s.fill().isPresent() && s.fillOpacity() < 1) {
            out.append(" fill-opacity=\"").append(n(s.fillOpacity())).append('"');
        }
        s.stroke().ifPresent(role -> out.append(" stroke=\"").append(hex(role)).append("\" stroke-width=\"").append(n(s.width())).append('"'));
        if (s.stroke().isPresent() && s.dash() != Dash.SOLID) {
            double[] lengths = s.dash().lengths();
            out.append(" stroke-dasharray=\"").append(n(lengths[0])).append(' ').append(n(lengths[1])).append("\" stroke-linecap=\"butt\"");
        }
        out.append("/>\n");
    }

    private void text(Text t) {
        out.append("<text x=\"").append(n(t.x())).append("\" y=\"").append(n(t.y())).append("\" font-size=\"").append(n(t.size().units()))
                .append("\" fill=\"").append(hex(t.role())).append('"');
        if (t.anchor() != Anchor.START) {
            out.append(" text-anchor=\"").append(t.anchor() == Anchor.END ? "end" : "middle").append('"');
        }
        if (t.bold()) {
            out.append(" font-weight=\"bold\"");
        }
        if (t.turn() != 0) {
            out.append(" transform=\"rotate(").append(n(t.turn())).append(' ').append(n(t.x())).append(' ').append(n(t.y())).append(")\"");
        }
        out.append('>').append(Xml.escape(t.text())).append("</text>\n");
    }

    private String hex(Role role) {
        return palette.of(role).hex();
    }

    private static String mm(double units) {
        return Numbers.plain(units / Drawing.UNITS_PER_MM);
    }

    private static String n(double value) {
        return Numbers.plain(value);
    }
}

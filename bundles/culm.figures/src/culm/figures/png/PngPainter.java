package culm.figures.png;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Group;
import culm.figures.Handle;
import culm.figures.Item;
import culm.figures.Palette;
import culm.figures.Path;
import culm.figures.PathSink;
import culm.figures.Rgb;
import culm.figures.Role;
import culm.figures.Shape;
import culm.figures.Style;
import culm.figures.Text;

/** Paints one drawing with Graphics2D. */
final class PngPainter {
    private final Graphics2D g;
    private final Palette palette;
    private final Glyphs glyphs;

    PngPainter(Graphics2D g, Palette palette, Glyphs glyphs) {
        this.g = g;
        this.palette = palette;
        this.glyphs = glyphs;
    }

    void paint(Drawing drawing) {
        g.setColor(colour(Role.PAPER));
        g.fill(new Rectangle2D.Double(0, 0, drawing.width() + 1, drawing.height() + 1));
        drawing.items().forEach(this::item);
    }

    private void item(Item item) {
        if (item instanceof Shape s) {
            shape(s);
        } else if (item instanceof Handle h) {
            shape(h.shape());
        } else if (item instanceof Text t) {
            text(t);
        } else if (item instanceof Group group) {
            group(group);
        }
    }

    private void group(Group group) {
        AffineTransform before = g.getTransform();
        java.awt.Shape clip = g.getClip();
        g.translate(group.dx(), group.dy());
        if (group.clip().isPresent()) {
            Box b = group.clip().get();
            g.clip(new Rectangle2D.Double(b.x(), b.y(), b.width(), b.height()));
        }
        group.items().forEach(this::item);
        g.setTransform(before);
        g.setClip(clip);
    }

    private void shape(Shape shape) {
        Style s = shape.style();
        Path2D path = path(shape.path());
        s.fill().ifPresent(role -> {
            g.setColor(colour(role));
            g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) s.fillOpacity()));
            g.fill(path);
            g.setComposite(AlphaComposite.SrcOver);
        });
        s.stroke().ifPresent(role -> {
            g.setColor(colour(role));
            g.setStroke(stroke(s));
            g.draw(path);
        });
    }

    private static BasicStroke stroke(Style s) {
        double[] lengths = s.dash().lengths();
        if (lengths.length == 0) {
            return new BasicStroke((float) s.width(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        return new BasicStroke((float) s.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1,
                new float[] {(float) lengths[0], (float) lengths[1]}, 0);
    }

    private void text(Text t) {
        Glyphs.Outline outline = glyphs.outline(t.text(), t.size().units(), t.bold());
        double back = t.anchor() == Anchor.START ? 0 : t.anchor() == Anchor.END ? outline.width() : outline.width() / 2;
        AffineTransform place = AffineTransform.getTranslateInstance(t.x(), t.y());
        place.rotate(Math.toRadians(t.turn()));
        place.translate(-back, 0);
        g.setColor(colour(t.role()));
        g.fill(outline.path().createTransformedShape(place));
    }

    private Color colour(Role role) {
        Rgb c = palette.of(role);
        return new Color(c.red(), c.green(), c.blue());
    }

    private static Path2D path(Path path) {
        Path2D all = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        path.walk(new PathSink() {
            @Override
            public void move(double x, double y) {
                all.moveTo(x, y);
            }

            @Override
            public void line(double x, double y) {
                all.lineTo(x, y);
            }

            @Override
            public void curve(double x1, double y1, double x2, double y2, double x, double y) {
                all.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                all.closePath();
            }
        });
        return all;
    }
}

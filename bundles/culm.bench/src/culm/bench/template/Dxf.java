package culm.bench.template;

import java.util.List;
import java.util.Locale;

import culm.geometry.section.Point;

/**
 * A tiny writer of DXF R12 (AC1009), the form every cutter and drawing program reads: layers, closed polylines, lines, text. One drawing unit is 1 mm;
 * R12 has no unit of its own, so a comment says it. Lines end with CR LF, numbers have a point.
 */
final class Dxf {
    private final StringBuilder entities = new StringBuilder();
    private final StringBuilder layers = new StringBuilder();
    private int layerCount;
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;

    /** A layer. @param colour number of the colour, 1 red, 3 green, 5 blue, 7 black or white */
    Dxf layer(String name, int colour) {
        layerCount++;
        pair(layers, 0, "LAYER");
        pair(layers, 2, name);
        pair(layers, 70, "0");
        pair(layers, 62, Integer.toString(colour));
        pair(layers, 6, "CONTINUOUS");
        return this;
    }

    Dxf polygon(String layer, List<Point> points) {
        pair(entities, 0, "POLYLINE");
        pair(entities, 8, layer);
        pair(entities, 66, "1");
        pair(entities, 70, "1");
        at(10, 0, 0);
        for (Point p : points) {
            pair(entities, 0, "VERTEX");
            pair(entities, 8, layer);
            at(10, p.x(), p.y());
            reach(p.x(), p.y());
        }
        pair(entities, 0, "SEQEND");
        pair(entities, 8, layer);
        return this;
    }

    Dxf line(String layer, double x1, double y1, double x2, double y2) {
        pair(entities, 0, "LINE");
        pair(entities, 8, layer);
        at(10, x1, y1);
        at(11, x2, y2);
        reach(x1, y1);
        reach(x2, y2);
        return this;
    }

    /** Plain letters only; others become question marks, as R12 knows no others. */
    Dxf text(String layer, double x, double y, double height, String text) {
        pair(entities, 0, "TEXT");
        pair(entities, 8, layer);
        at(10, x, y);
        pair(entities, 40, number(height));
        pair(entities, 1, text.replaceAll("[^ -~]", "?"));
        reach(x, y);
        return this;
    }

    private void at(int code, double x, double y) {
        pair(entities, code, number(x));
        pair(entities, code + 10, number(y));
        pair(entities, code + 20, "0.0");
    }

    private void reach(double x, double y) {
        minX = Math.min(minX, x);
        minY = Math.min(minY, y);
        maxX = Math.max(maxX, x);
        maxY = Math.max(maxY, y);
    }

    String file() {
        StringBuilder out = new StringBuilder();
        pair(out, 999, "Culm; 1 drawing unit is 1 mm");
        section(out, "HEADER");
        pair(out, 9, "$ACADVER");
        pair(out, 1, "AC1009");
        corner(out, "$EXTMIN", minX, minY);
        corner(out, "$EXTMAX", maxX, maxY);
        pair(out, 0, "ENDSEC");
        section(out, "TABLES");
        pair(out, 0, "TABLE");
        pair(out, 2, "LAYER");
        pair(out, 70, Integer.toString(layerCount));
        out.append(layers);
        pair(out, 0, "ENDTAB");
        pair(out, 0, "ENDSEC");
        section(out, "ENTITIES");
        out.append(entities);
        pair(out, 0, "ENDSEC");
        pair(out, 0, "EOF");
        return out.toString();
    }

    private static void corner(StringBuilder out, String name, double x, double y) {
        pair(out, 9, name);
        pair(out, 10, number(x));
        pair(out, 20, number(y));
        pair(out, 30, "0.0");
    }

    private static void section(StringBuilder out, String name) {
        pair(out, 0, "SECTION");
        pair(out, 2, name);
    }

    private static void pair(StringBuilder out, int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code)).append("\r\n").append(value).append("\r\n");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value + 0.0);
    }
}

package culm.figures.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Clip;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/**
 * Places the names of a map's regions: within the region and clear of lines where that can be, as near as can be to where it is deepest; a name for which its
 * region is too narrow stands beside it, with a thin line to it. No name lies on another.
 */
final class RegionNames {
    private static final double HALO = 0.75;
    private static final double FROM_LINES = 2;
    private final RegionMap map;
    private final ChartDrawing chart;
    private final TextMeasure measure;
    private final List<double[]> lines;
    private final double high;
    private final List<Box> taken = new ArrayList<>();

    /** @param contours lines of equal value: pairs of points in the map's values, each followed by one that is not a number */
    RegionNames(RegionMap map, ChartDrawing chart, List<double[]> contours, TextMeasure measure) {
        this.map = map;
        this.chart = chart;
        this.measure = measure;
        this.high = measure.line(Size.SMALL);
        this.lines = IntStream.range(0, contours.size() - 1).filter(i -> Double.isFinite(contours.get(i)[0]) && Double.isFinite(contours.get(i + 1)[0]))
                .mapToObj(i -> new double[] {chart.x().at(contours.get(i)[0]), chart.y().at(contours.get(i)[1]), chart.x().at(contours.get(i + 1)[0]), chart.y().at(contours.get(i + 1)[1])})
                .toList();
    }

    /** Draws one name; none where there is no room left. */
    void draw(Pen pen, RegionMap.Name name) {
        String words = Clip.to(name.words(), measure, Size.SMALL, chart.plot().width() - 8);
        double wide = measure.width(words, Size.SMALL, false) + 4;
        double px = chart.x().at(map.x()[name.column()]);
        double py = chart.y().at(map.y()[name.row()]);
        List<Box> places = places(wide, px, py);
        int marks = map.marks()[name.row()][name.column()];
        Optional<Box> within = places.stream().filter(b -> clear(b) && inside(b, marks)).findFirst();
        Optional<Box> place = within.or(() -> places.stream().filter(b -> clear(b) && !holds(b, px, py)).findFirst()).or(() -> places.stream().findFirst());
        place.ifPresent(box -> {
            taken.add(box);
            Role role = name.fine() ? Role.FITS : Role.DOES_NOT;
            pen.group(Part.MARKS, words, p -> {
                if (within.isEmpty() && !holds(box, px, py)) {
                    p.line(px, py, Math.max(box.x(), Math.min(box.right(), px)), Math.max(box.y(), Math.min(box.bottom(), py)), role, Style.THIN);
                }
                p.shape(Path.box(box), Style.tint(Role.PAPER, HALO));
                p.text(words, box.x() + box.width() / 2, box.y() + measure.ascent(Size.SMALL), Anchor.MIDDLE, Size.SMALL, role);
            });
        });
    }

    /** Places around every crossing that lie inside the map and on no other name, the nearest first. */
    private List<Box> places(double wide, double px, double py) {
        Box plot = chart.plot();
        List<Box> places = new ArrayList<>();
        for (double y : map.y()) {
            for (double x : map.x()) {
                double left = Math.max(plot.x() + 2, Math.min(plot.right() - 2 - wide, chart.x().at(x) - wide / 2));
                double top = Math.max(plot.y() + 2, Math.min(plot.bottom() - 2 - high, chart.y().at(y) - high / 2));
                Box box = new Box(left, top, wide, high);
                if (taken.stream().noneMatch(box::overlaps)) {
                    places.add(box);
                }
            }
        }
        places.sort(Comparator.comparingDouble(b -> Math.hypot(b.x() + wide / 2 - px, b.y() + high / 2 - py)));
        return places;
    }

    private boolean clear(Box box) {
        return lines.stream().noneMatch(l -> crosses(l, new Box(box.x() - FROM_LINES, box.y() - FROM_LINES, box.width() + 2 * FROM_LINES, box.height() + 2 * FROM_LINES)));
    }

    /** Whether nothing else lies at the ends and in the middle of a place. */
    private boolean inside(Box box, int marks) {
        for (double x : new double[] {box.x(), box.x() + box.width() / 2, box.right()}) {
            for (double y : new double[] {box.y(), box.bottom()}) {
                if (map.marks()[nearest(map.y(), chart.y().value(y))][nearest(map.x(), chart.x().value(x))] != marks) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int nearest(double[] values, double value) {
        return IntStream.range(0, values.length).boxed().min(Comparator.comparingDouble(i -> Math.abs(values[i] - value))).orElseThrow();
    }

    private static boolean holds(Box box, double x, double y) {
        return x >= box.x() && x <= box.right() && y >= box.y() && y <= box.bottom();
    }

    /** Whether a straight piece meets a box: their bounds do, and the box's corners do not all lie on one side of it. */
    private static boolean crosses(double[] l, Box box) {
        if (Math.max(l[0], l[2]) < box.x() || Math.min(l[0], l[2]) > box.right() || Math.max(l[1], l[3]) < box.y() || Math.min(l[1], l[3]) > box.bottom()) {
            return false;
        }
        double a = side(l, box.x(), box.y());
        double b = side(l, box.right(), box.y());
        double c = side(l, box.x(), box.bottom());
        double d = side(l, box.right(), box.bottom());
        return Math.min(Math.min(a, b), Math.min(c, d)) <= 0 && Math.max(Math.max(a, b), Math.max(c, d)) >= 0;
    }

    private static double side(double[] l, double x, double y) {
        return (l[2] - l[0]) * (y - l[1]) - (l[3] - l[1]) * (x - l[0]);
    }
}

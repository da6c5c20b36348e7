package culm.figures;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Points are left out only where the line without them passes near. */
class StraightenedTest {
    private static final double ROUNDING = 1e-9;

    /** What is left, each piece as its letter and numbers. */
    private static List<String> pieces(Path path) {
        List<String> all = new ArrayList<>();
        Straightened.walk(path, new PathSink() {
            @Override
            public void move(double x, double y) {
                all.add("M " + x + " " + y);
            }

            @Override
            public void line(double x, double y) {
                all.add("L " + x + " " + y);
            }

            @Override
            public void curve(double x1, double y1, double x2, double y2, double x, double y) {
                all.add("C " + x + " " + y);
            }

            @Override
            public void close() {
                all.add("Z");
            }
        });
        return all;
    }

    private static List<double[]> left(List<double[]> points) {
        return pieces(Path.through(points)).stream().map(p -> p.split(" ")).map(p -> new double[] {Double.parseDouble(p[1]), Double.parseDouble(p[2])}).toList();
    }

    private static double distance(double[] p, double[] a, double[] b) {
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double length = dx * dx + dy * dy;
        double u = length == 0 ? 0 : Math.max(0, Math.min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / length));
        return Math.hypot(p[0] - a[0] - u * dx, p[1] - a[1] - u * dy);
    }

    private static double distance(double[] p, List<double[]> line) {
        return IntStream.range(1, line.size()).mapToDouble(i -> distance(p, line.get(i - 1), line.get(i))).min().orElseThrow();
    }

    @Test
    void aStraightLineOfManyPointsHasTwo() {
        List<double[]> line = IntStream.rangeClosed(0, 100).mapToObj(i -> new double[] {i, 0.5 * i}).toList();
        assertEquals(List.of("M 0.0 0.0", "L 100.0 50.0"), pieces(Path.through(line)));
    }

    @Test
    void cornersAndWhatTurnsBackStay() {
        Path box = Path.box(new Box(1, 2, 30, 40));
        assertEquals(List.of("M 1.0 2.0", "L 31.0 2.0", "L 31.0 42.0", "L 1.0 42.0", "Z"), pieces(box));
        assertEquals(List.of("M 0.0 0.0", "L 10.0 0.0", "L 4.0 0.0"), pieces(Path.start().move(0, 0).line(10, 0).line(4, 0).path()));
        assertEquals(List.of("M 0.0 0.0", "L 5.0 0.0", "C 9.0 3.0", "L 12.0 3.0", "M 20.0 0.0", "L 21.0 0.0", "Z"),
                pieces(Path.start().move(0, 0).line(2, 0).line(5, 0).curve(6, 0, 9, 0, 9, 3).line(12, 3).move(20, 0).line(20.5, 0).line(21, 0).close().path()));
    }

    @Test
    void aCurveOfLinesKeepsItsShapeWithFewerPoints() {
        List<double[]> arc = IntStream.rangeClosed(0, 400).mapToObj(i -> new double[] {80 * Math.cos(i * Math.PI / 400), 80 * Math.sin(i * Math.PI / 400)}).toList();
        List<double[]> less = left(arc);
        assertTrue(less.size() < 100, less.size() + " points");
        arc.forEach(p -> assertTrue(distance(p, less) <= Straightened.NEAR + ROUNDING, () -> "off by " + distance(p, less)));
    }

    @Test
    void noPointOfAnyPathIsFarFromWhatIsLeftAndTheEndsStay() {
        SplittableRandom random = new SplittableRandom(11);
        for (int run = 0; run < 500; run++) {
            List<double[]> walk = new ArrayList<>(List.of(new double[] {0, 0}));
            double bend = random.nextDouble(0.001, 2);
            double heading = 0;
            for (int i = 0; i < 200; i++) {
                double[] last = walk.get(walk.size() - 1);
                heading += random.nextDouble(-bend, bend);
                double step = random.nextInt(10) == 0 ? 0 : random.nextDouble(0.001, 3);
                walk.add(new double[] {last[0] + step * Math.cos(heading), last[1] + step * Math.sin(heading)});
            }
            List<double[]> less = left(walk);
            assertArrayEquals(walk.get(0), less.get(0));
            assertArrayEquals(walk.get(200), less.get(less.size() - 1));
            for (double[] p : walk) {
                assertTrue(distance(p, less) <= Straightened.NEAR + ROUNDING, "run " + run + ": off by " + distance(p, less));
            }
        }
    }
}

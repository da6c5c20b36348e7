package culm.explore;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * A map of two numbers: turns left and closing at every crossing of a grid, and the regions in which the same rules fail.
 *
 * @param x     axis to the right
 * @param y     axis upwards
 * @param rules ids of the rules
 * @param names their names
 * @param turns turns left, [row of y][column of x]; NaN where the sides never close or it cannot be computed
 * @param closes where the sides close, mm, likewise
 * @param open  how far the sides are open at the staple's top, mm
 * @param failed a bit for each rule that fails
 * @param regions the regions, the largest first
 */
public record TwoWayMap(Axis.Numbers x, Axis.Numbers y, List<String> rules, List<String> names, double[][] turns, double[][] closes, double[][] open,
        int[][] failed, List<Region> regions) {
    /**
     * A connected region (across edges, not corners) in which the same rules fail.
     *
     * @param failed  the rules that fail there; empty where all is well
     * @param cells   how many crossings it has
     * @param labelX  column of the crossing that lies deepest in it, for a label
     * @param labelY  its row
     * @param bounds  rules that begin or cease to fail where it ends, by neighbouring crossings
     */
    public record Region(List<String> failed, int cells, int labelX, int labelY, List<String> bounds) {
    }

    /** Most crossings. */
    public static final int MOST = 4_000_000;

    /**
     * Makes a map.
     * @throws IllegalArgumentException when the axes do not go with the base, or are the same
     */
    public static TwoWayMap of(Study study, Axis.Numbers x, Axis.Numbers y, int threads, Watcher<Void> watcher) {
        if (x.id().equals(y.id()) || (long) x.size() * y.size() > MOST) {
            throw new IllegalArgumentException("A map needs two different numbers and at most " + MOST + " crossings.");
        }
        int columns = x.size();
        double[][] turns = new double[y.size()][columns];
        double[][] closes = new double[y.size()][columns];
        double[][] open = new double[y.size()][columns];
        int[][] failed = new int[y.size()][columns];
        VariantHead[] head = new VariantHead[1];
        VariantSink sink = new VariantSink() {
            @Override
            public void begin(VariantHead planned) {
                head[0] = planned;
            }

            @Override
            public void rows(VariantBlock block) {
                for (int r = 0; r < block.rows(); r++) {
                    int at = (int) block.first() + r;
                    turns[at / columns][at % columns] = block.turnsLeft()[r];
                    closes[at / columns][at % columns] = block.closesAt()[r];
                    open[at / columns][at % columns] = block.openAtTop()[r];
                    failed[at / columns][at % columns] = block.failed()[r];
                }
            }
        };
        try {
            long made = Variants.run(study, List.of(y, x), new VariantPlan.Grid(), threads, sink, watcher);
            List<Region> regions = made < (long) columns * y.size() ? List.of() : new Regions(failed, head[0].rules()).find();
            return new TwoWayMap(x, y, head[0].rules(), head[0].names(), turns, closes, open, failed, regions);
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Finds the regions by flooding. */
    private static final class Regions {
        private static final int[][] STEPS = {{0, 1}, {1, 0}, {0, -1}, {-1, 0}};
        private final int[][] failed;
        private final List<String> rules;
        private final int[][] owner;

        Regions(int[][] failed, List<String> rules) {
            this.failed = failed;
            this.rules = rules;
            this.owner = new int[failed.length][failed[0].length];
        }

        List<Region> find() {
            List<Region> all = new ArrayList<>();
            for (int r = 0; r < failed.length; r++) {
                for (int c = 0; c < failed[r].length; c++) {
                    if (owner[r][c] == 0) {
                        all.add(flood(r, c, all.size() + 1));
                    }
                }
            }
            all.sort((a, b) -> Integer.compare(b.cells(), a.cells()));
            return List.copyOf(all);
        }

        private Region flood(int row, int column, int number) {
            Deque<int[]> open = new ArrayDeque<>();
            List<int[]> cells = new ArrayList<>();
            TreeSet<Integer> bounds = new TreeSet<>();
            owner[row][column] = number;
            open.add(new int[] {row, column});
            while (!open.isEmpty()) {
                int[] cell = open.remove();
                cells.add(cell);
                for (int[] step : STEPS) {
                    int r = cell[0] + step[0];
                    int c = cell[1] + step[1];
                    if (!inside(r, c)) {
                        continue;
                    }
                    int differs = failed[r][c] ^ failed[row][column];
                    if (differs != 0) {
                        bounds.addAll(bits(differs));
                    } else if (owner[r][c] == 0) {
                        owner[r][c] = number;
                        open.add(new int[] {r, c});
                    }
                }
            }
            int[] label = deepest(cells, number);
            return new Region(bits(failed[row][column]).stream().map(rules::get).toList(), cells.size(), label[1], label[0], bounds.stream().map(rules::get).toList());
        }

        private boolean inside(int r, int c) {
            return r >= 0 && c >= 0 && r < failed.length && c < failed[0].length;
        }

        private List<Integer> bits(int mask) {
            return IntStream.range(0, rules.size()).filter(i -> (mask & 1 << i) != 0).boxed().toList();
        }

        /** The cell that is peeled off last, layer by layer. */
        private int[] deepest(List<int[]> cells, int number) {
            List<int[]> layer = cells;
            int[] last = cells.get(cells.size() / 2);
            while (!layer.isEmpty()) {
                List<int[]> rim = layer.stream().filter(cell -> onRim(cell, number)).toList();
                last = rim.isEmpty() ? last : rim.get(rim.size() / 2);
                rim.forEach(cell -> owner[cell[0]][cell[1]] = -number);
                layer = layer.stream().filter(cell -> owner[cell[0]][cell[1]] == number).toList();
            }
            return last;
        }

        private boolean onRim(int[] cell, int number) {
            for (int[] step : STEPS) {
                int r = cell[0] + step[0];
                int c = cell[1] + step[1];
                if (!inside(r, c) || owner[r][c] != number) {
                    return true;
                }
            }
            return false;
        }
    }
}

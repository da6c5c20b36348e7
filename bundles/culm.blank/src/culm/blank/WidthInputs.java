package culm.blank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.geometry.GeometryException;
import culm.geometry.profile.Quantity;
import culm.geometry.shape.ShapeWidth;

/** Which numbers of a blank's shape are widths: those that together widen the cane by as much as is added to each of them. */
public final class WidthInputs {
    private static final String SHAPE = "shape.";
    private static final String INSIDE = "inside.";
    private static final double ADDED = 0.05;
    private static final double NEAR = 1e-9;
    private static final int PLACES = 24;
    private static final int MOST = 10;

    private WidthInputs() {
    }

    /**
     * Found by trying, so that it holds for any type of shape: of the shape's lengths (a column of a table counts as one) the fewest that widen it evenly.
     *
     * @return their paths, inside widths too; empty when the shape has no such numbers or cannot be computed
     */
    public static List<String> of(Blank blank) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        List<String> inside = new ArrayList<>();
        for (Input input : blank.inputs()) {
            if (input.path().startsWith(SHAPE) && input.parameter().quantity() == Quantity.LENGTH && !Inputs.all().containsKey(input.path())) {
                groups.computeIfAbsent(input.path().replaceAll("\\[\\d+\\]", ""), k -> new ArrayList<>()).add(input.path());
            } else if (input.path().startsWith(INSIDE) && input.path().endsWith(".width")) {
                inside.add(input.path());
            }
        }
        List<List<String>> columns = List.copyOf(groups.values());
        List<String> best = List.of();
        int fewest = Integer.MAX_VALUE;
        for (int mask = 1; columns.size() <= MOST && mask < 1 << columns.size(); mask++) {
            if (Integer.bitCount(mask) < fewest) {
                List<String> paths = chosen(columns, mask);
                if (widensEvenly(blank, paths)) {
                    best = paths;
                    fewest = Integer.bitCount(mask);
                }
            }
        }
        if (!best.isEmpty()) {
            best = new ArrayList<>(best);
            best.addAll(inside);
        }
        return List.copyOf(best);
    }

    private static List<String> chosen(List<List<String>> columns, int mask) {
        List<String> paths = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if ((mask & 1 << i) != 0) {
                paths.addAll(columns.get(i));
            }
        }
        return paths;
    }

    private static boolean widensEvenly(Blank blank, List<String> paths) {
        Blank wider = blank;
        for (String path : paths) {
            wider = wider.with(path, blank.value(path).orElseThrow() + ADDED);
        }
        try {
            ShapeWidth now = blank.parts().width();
            ShapeWidth then = wider.parts().width();
            if (now.from() != then.from() || now.to() != then.to()) {
                return false;
            }
            double end = Math.min(now.to(), blank.parts().foldedLength());
            for (int i = 0; i <= PLACES; i++) {
                double s = now.from() + (end - now.from()) * i / PLACES;
                if (!(Math.abs(then.at(s) - now.at(s) - ADDED) < NEAR)) {
                    return false;
                }
            }
            return true;
        } catch (GeometryException e) {
            return false; // not a shape any more: these are no widths
        }
    }
}

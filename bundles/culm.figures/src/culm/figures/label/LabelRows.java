package culm.figures.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import culm.figures.Size;
import culm.figures.TextMeasure;

/**
 * Places the labels of marks in rows below an axis. No two texts overlap, no leader runs through a text, nothing leaves the space between the two
 * ends. The fewest rows win, then the shortest leaders. Where full texts find no room the longest become brief; where not even brief ones do (an axis
 * of some ten letters), the last in the list are left out.
 * <p>Every choice of sides is tried for up to {@value Arrangement#TRIED} labels, the rows of each follow from which leader has to end above which text; beyond
 * that only choices where all on the left of some label stand left and all others right. Marks half a millimetre apart are the normal case.
 */
public final class LabelRows {
    private final TextMeasure measure;
    private final Size size;
    private final double left;
    private final double right;

    /** @param left left end of the space; @param right right end, drawing units */
    public LabelRows(TextMeasure measure, Size size, double left, double right) {
        this.measure = measure;
        this.size = size;
        this.left = left;
        this.right = right;
    }

    /** Places the labels; those that come first are the last to be left out. The result is in the order of x. */
    public List<PlacedLabel> place(List<Label> labels) {
        List<Label> all = new ArrayList<>(labels);
        while (!all.isEmpty()) {
            List<PlacedLabel> placed = shortened(all);
            if (!placed.isEmpty()) {
                return placed;
            }
            all.remove(all.size() - 1);
        }
        return List.of();
    }

    private List<PlacedLabel> shortened(List<Label> labels) {
        List<Label> sorted = new ArrayList<>(labels);
        sorted.sort(Comparator.comparingDouble(Label::x));
        String[] texts = sorted.stream().map(Label::full).toArray(String[]::new);
        for (int tries = 0; tries <= texts.length; tries++) {
            List<PlacedLabel> placed = new Arrangement(sorted, texts, widths(sorted, texts), left, right).best();
            if (!placed.isEmpty()) {
                return placed;
            }
            shortenLongest(sorted, texts);
        }
        return List.of();
    }

    private void shortenLongest(List<Label> labels, String[] texts) {
        double[] widths = widths(labels, texts);
        int longest = -1;
        for (int i = 0; i < texts.length; i++) {
            if (!texts[i].equals(labels.get(i).brief()) && (longest < 0 || widths[i] > widths[longest])) {
                longest = i;
            }
        }
        if (longest >= 0) {
            texts[longest] = labels.get(longest).brief();
        }
    }

    private double[] widths(List<Label> labels, String[] texts) {
        double[] widths = new double[texts.length];
        for (int i = 0; i < texts.length; i++) {
            widths[i] = measure.width(texts[i], size, labels.get(i).bold());
        }
        return widths;
    }
}

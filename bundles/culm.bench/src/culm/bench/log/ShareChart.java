package culm.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import culm.explore.Share;
import culm.figures.Anchor;
import culm.figures.Axis;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/** A share for each group with its 95 % interval: a dot, a line, and the counts in words. */
public final class ShareChart {
    private static final double ROW = 26;
    private static final double TOP = 44;

    private ShareChart() {
    }

    /**
     * Draws it.
     * @param caption what share it is
     * @param groups  one row each
     * @param share   which share
     * @param width   drawing units, at least 320
     */
    public static Drawing draw(String caption, List<GroupStats> groups, Function<GroupStats, Share> share, double width, TextMeasure measure) {
        double w = Math.max(320, width);
        double names = Math.min(0.3 * w, groups.stream().mapToDouble(g -> measure.width(name(g), Size.BODY, false)).max().orElse(0));
        double texts = groups.stream().mapToDouble(g -> measure.width(Shares.text(share.apply(g)), Size.SMALL, false)).max().orElse(0);
        Axis x = new Axis(0, 1, 12 + names + 14, w - 12 - texts - 14);
        double bottom = TOP + ROW * groups.size();
        Pen pen = new Pen();
        pen.text(caption + ", with its 95 % interval", 12, 18, Anchor.START, Size.BODY, Role.INK);
        pen.group(Part.AXIS, "axis", p -> {
            for (int percent = 0; percent <= 100; percent += 25) {
                p.line(x.at(percent / 100.0), TOP - 4, x.at(percent / 100.0), bottom, Role.GRID, Style.THIN);
                p.text(percent + " %", x.at(percent / 100.0), TOP - 8, Anchor.MIDDLE, Size.SMALL, Role.QUIET);
            }
        });
        pen.group(Part.SERIES, caption, p -> {
            for (int i = 0; i < groups.size(); i++) {
                Share s = share.apply(groups.get(i));
                double y = TOP + ROW * (i + 0.5);
                p.text(name(groups.get(i)), 12, y + 4.5, Anchor.START, Size.BODY, groups.get(i).group().isEmpty() ? Role.QUIET : Role.INK);
                p.text(Shares.text(s), w - 12, y + 4, Anchor.END, Size.SMALL, Role.QUIET);
                if (s.of() > 0) {
                    p.line(x.at(s.low()), y, x.at(s.high()), y, Role.THREAD, 2.4);
                    p.shape(Path.circle(x.at(s.value()), y, 5), Style.fill(Role.THREAD).edged(Role.PAPER, Style.THIN));
                }
            }
        });
        List<String> words = new ArrayList<>();
        groups.forEach(g -> words.add(name(g) + " " + Shares.text(share.apply(g))));
        return pen.drawing(w, bottom + 10, caption, String.join("; ", words) + ".");
    }

    private static String name(GroupStats group) {
        return group.group().isEmpty() ? "not noted" : group.group();
    }
}

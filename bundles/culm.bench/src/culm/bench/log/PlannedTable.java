package culm.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Numbers;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;

/** Planned against measured for one blank: a row for each length and for the turns left. */
public final class PlannedTable {
    private static final double ROW = 22;
    private static final double LEFT = 14;

    private record Row(String words, OptionalDouble planned, OptionalDouble measured) {
    }

    private PlannedTable() {
    }

    /** Draws it. @param planned the blank as planned; @param width drawing units, at least 240 */
    public static Drawing draw(Tied tied, Blank planned, double width) {
        double w = Math.max(240, width);
        List<Row> rows = List.of(new Row("staple length", planned.value(Inputs.STAPLE_LENGTH), tied.seen().stapleLength()), new Row("tie length", planned.value(Inputs.TIE_LENGTH), tied.seen().tie()),
                new Row("top of the wrap", planned.value(Inputs.WRAP_TOP), tied.seen().wrapTop()), new Row("finished length", planned.value(Inputs.FINISHED), tied.seen().finished()),
                new Row("turns left", PlannedSeen.turns(planned), tied.seen().turns()),
                new Row("expected, as tied", PlannedSeen.turns(PlannedSeen.asTied(planned, tied)), tied.seen().turns()));
        double[] ends = {w - 128, w - 68, w - 10};
        Pen pen = new Pen();
        String[] heads = {"planned", "measured", "more"};
        for (int i = 0; i < heads.length; i++) {
            pen.text(heads[i], ends[i], 14, Anchor.END, Size.SMALL, Role.QUIET);
        }
        List<String> words = new ArrayList<>();
        double y = 20;
        for (Row row : rows) {
            if (row.words().equals("turns left")) {
                pen.line(LEFT, y + 3, w - 10, y + 3, Role.RULE, Style.THIN);
                y += 4;
            }
            boolean both = row.planned().isPresent() && row.measured().isPresent();
            double more = both ? row.measured().getAsDouble() - row.planned().getAsDouble() : 0;
            pen.text(row.words(), LEFT, y + 15, Anchor.START, Size.BODY, Role.QUIET);
            pen.text(number(row.planned()), ends[0], y + 15, Anchor.END, Size.BODY, Role.INK);
            pen.text(number(row.measured()), ends[1], y + 15, Anchor.END, Size.BODY, Role.INK);
            pen.bold(both ? (more >= 0.05 ? "+" : "") + Numbers.fixed(more, 1) : "", ends[2], y + 15, Anchor.END, Size.BODY, Role.INK);
            words.add(row.words() + " planned " + number(row.planned()) + ", measured " + number(row.measured()));
            y += ROW;
        }
        return pen.drawing(w, y + 6, "Planned against measured", String.join("; ", words) + ".");
    }

    private static String number(OptionalDouble value) {
        return value.isEmpty() ? "–" : Numbers.fixed(value.getAsDouble(), 1);
    }
}

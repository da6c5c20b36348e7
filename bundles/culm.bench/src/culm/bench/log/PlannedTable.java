package culm.bench.log;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import culm.blank.Blank;
import culm.blank.Inputs;
import culm.figures.Anchor;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Size;
import culm.figures.Style;

/**
 * Planned against measured for one blank: a row for each length and for the turns left. A row has as many decimals as what was measured needs, and its
 * difference is that of what is shown: what was measured is shown whole, so that is as near as the rounding of what was planned.
 */
public final class PlannedTable {
    private static final double ROW = 22;
    private static final double LEFT = 14;
    /** From this width on the words leave room for the numbers beside them. */
    private static final double BESIDE = 260;

    private record Row(String words, OptionalDouble planned, OptionalDouble measured, boolean length) {
        /** Decimals that show the reading whole, a planned length until it is measured; one or two. */
        int digits() {
            return whole(length && measured.isEmpty() ? planned : measured) ? 1 : 2;
        }

        private static boolean whole(OptionalDouble value) {
            return value.isEmpty() || Math.abs(value.getAsDouble() * 10 - Math.rint(value.getAsDouble() * 10)) < 0.05;
        }

        String number(OptionalDouble value, Lengths unit) {
            return value.isEmpty() ? "\u2013" : length ? unit.fixed(value.getAsDouble(), digits()) : Numbers.fixed(value.getAsDouble(), digits());
        }
    }

    private PlannedTable() {
    }

    /** Draws it. @param planned the blank as planned; @param width drawing units, at least 240; @param unit in what lengths are written */
    public static Drawing draw(Tied tied, Blank planned, double width, Lengths unit) {
        double w = Math.max(240, width);
        List<Row> rows = List.of(length("staple length", Inputs.STAPLE_LENGTH, tied.seen().stapleLength(), planned), length("tie length", Inputs.TIE_LENGTH, tied.seen().tie(), planned),
                length("top of the wrap", Inputs.WRAP_TOP, tied.seen().wrapTop(), planned), length("finished length", Inputs.FINISHED, tied.seen().finished(), planned),
                new Row("turns left", PlannedSeen.turns(planned), tied.seen().turns(), false),
                new Row("expected, as tied", PlannedSeen.turns(PlannedSeen.asTied(planned, tied)), tied.seen().turns(), false));
        double[] ends = {w - 112, w - 62, w - 8};
        Pen pen = new Pen();
        pen.text("lengths in " + unit.sign(), LEFT, 14, Anchor.START, Size.SMALL, Role.QUIET); // once: beside each row it would meet the numbers
        String[] heads = {"planned", "seen", "more"};
        for (int i = 0; i < heads.length; i++) {
            pen.text(heads[i], ends[i], w < BESIDE ? 14 + ROW : 14, Anchor.END, Size.SMALL, Role.QUIET);
        }
        List<String> words = new ArrayList<>();
        double below = w < BESIDE ? ROW : 0; // where words and numbers would meet, the numbers stand below
        double y = 20 + (below > 0 ? ROW : 0);
        for (Row row : rows) {
            if (row.words().equals("turns left")) {
                pen.line(LEFT, y + 3, w - 10, y + 3, Role.RULE, Style.THIN);
                y += 4;
            }
            boolean both = row.planned().isPresent() && row.measured().isPresent();
            String plan = row.number(row.planned(), unit);
            String seen = row.number(row.measured(), unit);
            String more = both ? Numbers.signed(Numbers.difference(seen, plan)) : "";
            pen.text(row.words(), LEFT, y + 15, Anchor.START, Size.BODY, Role.QUIET);
            y += below;
            pen.text(plan, ends[0], y + 15, Anchor.END, Size.BODY, Role.INK);
            pen.text(seen, ends[1], y + 15, Anchor.END, Size.BODY, Role.INK);
            pen.bold(more, ends[2], y + 15, Anchor.END, Size.BODY, Role.INK);
            words.add(row.words() + " planned " + plan + ", measured " + seen);
            y += ROW;
        }
        return pen.drawing(w, y + 6, "Planned against measured", String.join("; ", words) + ".");
    }

    private static Row length(String words, String path, OptionalDouble measured, Blank planned) {
        return new Row(words, planned.value(path), measured, true);
    }
}

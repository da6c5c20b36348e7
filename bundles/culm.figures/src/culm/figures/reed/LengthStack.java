package culm.figures.reed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.Mark;
import culm.blank.Tolerance;
import culm.figures.Anchor;
import culm.figures.Box;
import culm.figures.Drawing;
import culm.figures.Lengths;
import culm.figures.Numbers;
import culm.figures.Part;
import culm.figures.Path;
import culm.figures.PathBuilder;
import culm.figures.Pen;
import culm.figures.Role;
import culm.figures.Scale;
import culm.figures.Size;
import culm.figures.Style;
import culm.figures.TextMeasure;

/**
 * The length stack: the reed's wide side at a stated scale, and below it a dimension line for each mark from the bottom of the staple, with its
 * give or take. Values that were assumed say so. On paper it is true to its scale.
 */
public final class LengthStack {
    private static final double MARGIN = 12;
    private static final double CAPTION = 30;
    private static final double ROW = 19;
    private static final double ARROW = 6;
    private static final double BESIDE = 8;
    private final Reed reed;
    private final MarkLook look;
    private final Lengths unit;
    private final TextMeasure measure;
    private final double enlargement;
    private final double perMm;

    private LengthStack(Reed reed, Limits limits, double enlargement, TextMeasure measure, Lengths unit) {
        this.reed = reed;
        this.look = new MarkLook(reed, limits, unit);
        this.unit = unit;
        this.measure = measure;
        this.enlargement = enlargement;
        this.perMm = enlargement * Drawing.UNITS_PER_MM;
    }

    /** One dimension. */
    private record Row(double from, double to, String words, String number, String remark, boolean bold, Role role) {
    }

    /** The stack with its lengths in mm; see {@link #draw(Reed, Limits, double, TextMeasure, Lengths)}. */
    public static Drawing draw(Reed reed, Limits limits, double enlargement, TextMeasure measure) {
        return draw(reed, limits, enlargement, measure, Lengths.MM);
    }

    /**
     * Draws the stack.
     *
     * @param enlargement times life size on paper, such as 2
     * @param unit        in what lengths are written
     */
    public static Drawing draw(Reed reed, Limits limits, double enlargement, TextMeasure measure, Lengths unit) {
        return new LengthStack(reed, limits, enlargement, measure, unit).run();
    }

    private Drawing run() {
        List<Row> rows = new ArrayList<>(between());
        List<Row> marks = new ArrayList<>(marks());
        marks.sort(Comparator.comparingDouble(Row::to).reversed());
        rows.addAll(marks);
        Scale scale = new Scale(0, reed.top(), MARGIN, MARGIN + reed.top() * perMm);
        double right = scale.right();
        for (Row row : rows) {
            right = Math.max(right, scale.x(row.to()) + BESIDE + textWidth(row));
        }
        Outlines outlines = reed.outlines();
        WideSide wide = new WideSide(reed, outlines);
        double half = wide.half() * perMm;
        double strip = CAPTION + half;
        double first = CAPTION + 2 * half + 26;
        Pen pen = new Pen();
        pen.text("Length stack, " + unit.sign(), MARGIN, 16, Anchor.START, Size.BODY, Role.QUIET);
        pen.text("scale " + Numbers.plain(enlargement) + " : 1; above the staple a sketch", right, 16, Anchor.END, Size.SMALL, Role.QUIET);
        if (reed.drawable()) {
            wide.draw(pen, new Lane(scale, strip, 1));
        }
        pen.group(Part.DIMENSIONS, "dimensions", p -> {
            for (int i = 0; i < rows.size(); i++) {
                extension(p, scale, rows.get(i), strip + half + 4, first + i * ROW);
            }
            p.line(scale.x(0), strip + half + 4, scale.x(0), first + (rows.size() - 1) * ROW + 5, Role.RULE, Style.THIN);
            for (int i = 0; i < rows.size(); i++) {
                dimension(p, scale, rows.get(i), first + i * ROW);
            }
        });
        return pen.drawing(right + MARGIN, first + rows.size() * ROW, "Length stack", describe(marks));
    }

    private List<Row> marks() {
        List<Row> rows = new ArrayList<>();
        for (Mark mark : look.shown(new Scale(0, Math.max(1, reed.top()), 0, 1))) {
            double z = reed.mark(mark).getAsDouble();
            rows.add(new Row(0, z, mark.label(), look.number(mark, z), remark(mark), MarkLook.bold(mark), look.role(mark)));
        }
        return rows;
    }

    private String remark(Mark mark) {
        if (mark == Mark.SIDES_CLOSE) {
            return reed.assessment().closeBand().map(b -> "give or take " + unit.fixed(b.half(), 1)).orElse("");
        }
        if (!MarkLook.movable(mark)) {
            return "";
        }
        Tolerance tolerance = reed.assessment().blank().tolerance(mark.path());
        String take = tolerance.plusMinus() > 0 ? "\u00b1 " + unit.given(tolerance.plusMinus(), tolerance.plusMinus() < 0.1 ? 2 : 1) : "";
        return tolerance.measured() ? take : (take.isEmpty() ? "" : take + ", ") + "assumed";
    }

    /** Lengths between marks. */
    private List<Row> between() {
        List<Row> rows = new ArrayList<>();
        Assessment a = reed.assessment();
        if (reed.fold() > reed.stapleTop()) {
            rows.add(new Row(reed.stapleTop(), reed.fold(), "cane above the staple", unit.given(a.caneAboveStaple(), 1), "", false, Role.INK));
        }
        a.caneOnStaple().ifPresent(on -> rows.add(
                new Row(reed.caneEnd(), reed.stapleTop(), "cane on the staple", unit.given(on, 1), "", false, Role.INK)));
        a.turnsLeft().ifPresent(turns -> rows.add(new Row(a.sidesCloseAt().orElseThrow(), reed.wrapTop(), "turns left", Numbers.fixed(turns, 1),
                a.turnsBand().map(b -> "give or take " + Numbers.fixed(b.half(), 1)).orElse(""), true, look.role(Mark.SIDES_CLOSE))));
        return rows;
    }

    private double textWidth(Row row) {
        double width = measure.width(row.words() + " " + row.number(), Size.BODY, row.bold());
        return row.remark().isEmpty() ? width : width + 6 + measure.width(row.remark(), Size.SMALL, false);
    }

    private void extension(Pen p, Scale scale, Row row, double top, double y) {
        p.line(scale.x(row.to()), top, scale.x(row.to()), y + 5, Role.RULE, Style.THIN);
        if (row.from() > 0) {
            p.line(scale.x(row.from()), top, scale.x(row.from()), y + 5, Role.RULE, Style.THIN);
        }
    }

    private void dimension(Pen p, Scale scale, Row row, double y) {
        double from = scale.x(Math.min(row.from(), row.to()));
        double to = scale.x(Math.max(row.from(), row.to()));
        boolean small = to - from < 2 * ARROW;
        p.line(from, y, to, y, row.role(), small ? 2.4 : Style.THIN);
        PathBuilder heads = Path.start();
        heads.move(to, y).line(to - ARROW, y - ARROW / 2.6).line(to - ARROW, y + ARROW / 2.6).close();
        heads.move(from, y).line(from + ARROW, y - ARROW / 2.6).line(from + ARROW, y + ARROW / 2.6).close();
        p.shape(small ? Path.start().path() : heads.path(), Style.fill(row.role()));
        double at = to + BESIDE;
        String text = row.words() + " " + row.number();
        p.shape(Path.box(new Box(at - 3, y - ROW / 2 + 1, textWidth(row) + 6, ROW - 2)), Style.fill(Role.PAPER));
        p.add(new culm.figures.Text(text, at, y + 4.5, Anchor.START, Size.BODY, row.bold(), row.role(), 0));
        if (!row.remark().isEmpty()) {
            p.text(row.remark(), at + measure.width(text, Size.BODY, row.bold()) + 6, y + 4.5, Anchor.START, Size.SMALL, Role.QUIET);
        }
    }

    private String describe(List<Row> marks) {
        StringBuilder text = new StringBuilder();
        for (int i = marks.size() - 1; i >= 0; i--) {
            text.append(text.length() == 0 ? "" : ", ").append(marks.get(i).words()).append(' ').append(marks.get(i).number());
        }
        return text + " " + unit.sign() + ".";
    }
}

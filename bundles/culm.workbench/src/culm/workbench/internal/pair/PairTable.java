package culm.workbench.internal.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.design.DesignComparison;
import culm.design.DesignComparison.InputRow;
import culm.design.DesignComparison.ResultRow;
import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.geometry.profile.Quantity;
import culm.model.text.Numbers;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.numbers.Units;

/** Results of two designs side by side, then the numbers in which they differ. */
final class PairTable extends Canvas {
    private static final int WORDS = 250;
    private static final int COLUMN = 200;
    private static final int CHANGE = 160;

    /** One line; without a first column the heading of what follows. */
    record Row(String words, String left, String right, String change) {
        boolean heading() {
            return left.isEmpty() && right.isEmpty() && change.isEmpty();
        }
    }

    private final Look look;
    private final Units units;
    private PairShown shown = PairShown.NOTHING;
    private List<Row> rows = List.of();

    PairTable(Composite parent, Look look, Units units) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.look = look;
        this.units = units;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, this::paint);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                StringBuilder text = new StringBuilder();
                rows.forEach(r -> text.append(r.words()).append(": ").append(r.left()).append(", ").append(r.right()).append(". "));
                e.result = text.toString();
            }
        });
    }

    void show(PairShown now) {
        shown = now;
        rows = now.comparison().map(this::rows).orElse(List.of());
        redraw();
    }

    /** {@return what stands there} */
    List<Row> rows() {
        return rows;
    }

    private List<Row> rows(DesignComparison c) {
        List<Row> all = new ArrayList<>();
        all.add(new Row("Computed", "", "", ""));
        c.results().forEach(r -> all.add(new Row(r.label(), number(r, r.left()), number(r, r.right()), change(r))));
        all.add(new Row(c.inputs().isEmpty() ? "Given: nothing differs" : "Given, where they differ", "", "", ""));
        for (InputRow r : c.inputs()) {
            all.add(new Row(units.now().drawn().told(r.toldLabel()), given(r.toldLeft()), given(r.toldRight()), ""));
        }
        return List.copyOf(all);
    }

    private String given(String told) {
        return told.isEmpty() ? "none" : units.now().drawn().told(told);
    }

    private String number(ResultRow row, OptionalDouble value) {
        return value.isEmpty() ? "none" : bare(row, value.getAsDouble()) + sign(row);
    }

    /** No more digits than a caliper sees: hundredths across the reed, tenths along it. */
    private String bare(ResultRow row, double value) {
        if (bore(row)) {
            return Numbers.fixed(value / 1000, 3);
        }
        return form(row).rounded(value);
    }

    private String sign(ResultRow row) {
        String sign = bore(row) ? "cm\u00b3" : form(row).sign();
        return sign.isEmpty() ? "" : "\u2009" + sign;
    }

    private static boolean bore(ResultRow row) {
        return row.name().equals("boreVolume");
    }

    private NumberForm form(ResultRow row) {
        LengthUnit unit = row.quantity() == Quantity.LENGTH ? units.now() : LengthUnit.MM;
        return new NumberForm(row.quantity(), unit, row.name().startsWith("open") ? 2 : 1);
    }

    /** Right less left as they are shown, so that a row adds up; the head says that it is so. */
    private String change(ResultRow row) {
        if (row.left().isEmpty() || row.right().isEmpty()) {
            return "";
        }
        String left = bare(row, row.left().getAsDouble());
        String right = bare(row, row.right().getAsDouble());
        return left.equals(right) ? "same" : culm.figures.Numbers.signed(culm.figures.Numbers.difference(right, left)) + sign(row);
    }

    private int line() {
        return (int) Math.ceil(look.measure().line(Size.BODY)) + 6;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        return new Point(WORDS + 2 * COLUMN + CHANGE + 20, (rows.size() + 1) * line() + 30);
    }

    private void paint(Event e) {
        GC gc = e.gc;
        int y = 4;
        gc.setFont(look.font(Size.BODY, SWT.BOLD));
        gc.setForeground(look.colour(Role.INK));
        right(gc, Clip.to(shown.name(true), look.measure(), Size.BODY, COLUMN - 30), WORDS + COLUMN, y);
        right(gc, Clip.to(shown.name(false), look.measure(), Size.BODY, COLUMN - 30), WORDS + 2 * COLUMN, y);
        gc.setFont(look.font(Size.SMALL, SWT.NORMAL));
        gc.setForeground(look.colour(Role.QUIET));
        right(gc, "right less left, as shown", WORDS + 2 * COLUMN + CHANGE, y + 2);
        y += line();
        for (Row row : rows) {
            if (row.heading()) {
                y += 6;
                gc.setFont(look.font(Size.BODY, SWT.BOLD));
                gc.setForeground(look.colour(Role.INK));
                gc.drawString(row.words(), 12, y, true);
            } else {
                paint(gc, row, y);
            }
            y += line();
        }
    }

    private void paint(GC gc, Row row, int y) {
        boolean differs = !row.left().equals(row.right());
        gc.setFont(look.font(Size.BODY, SWT.NORMAL));
        gc.setForeground(look.colour(Role.QUIET));
        gc.drawString(Clip.to(row.words(), look.measure(), Size.BODY, WORDS - 30), 26, y, true);
        if (differs) {
            gc.setBackground(look.colour(Role.THREAD));
            gc.fillPolygon(new int[] { 12, y + 4, 18, y + 8, 12, y + 12 });
        }
        gc.setForeground(look.colour(Role.INK));
        right(gc, row.left(), WORDS + COLUMN, y);
        gc.setFont(look.font(Size.BODY, differs ? SWT.BOLD : SWT.NORMAL));
        right(gc, row.right(), WORDS + 2 * COLUMN, y);
        gc.setFont(look.font(Size.BODY, SWT.NORMAL));
        gc.setForeground(look.colour(Role.QUIET));
        right(gc, row.change(), WORDS + 2 * COLUMN + CHANGE, y);
    }

    private static void right(GC gc, String text, int x, int y) {
        gc.drawString(text, x - gc.stringExtent(text).x, y, true);
    }
}

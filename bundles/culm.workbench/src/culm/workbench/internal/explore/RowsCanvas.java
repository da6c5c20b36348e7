package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Verdict;
import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.app.Workshop;
import culm.workbench.internal.editor.Recompute;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.SignPainter;

/** A table of variants. Only the rows that can be seen are painted, so a million of them are as quick as ten. */
public final class RowsCanvas extends Canvas {
    /** The strip before the chosen row, points. */
    private static final int CHOSEN = 3;
    private static final int LEFT = 24;
    private static final int SIGN = 10;
    private static final int PAD = 6;
    /** The design itself among the rows. */
    public static final int OWN = -1;
    /** A verdict that is not known yet. */
    static final String NOT_YET = "…";
    /** Rows that are judged at once: what is seen comes soon, and nothing else waits long. */
    private static final int AT_ONCE = 8;
    private final Workshop workshop;
    private final Look look;
    private Optional<VariantsFound> found = Optional.empty();
    private RowsColumns columns;
    private final Recompute<Verdicts> judging;
    private final Map<Integer, Judging.Judged> judged = new HashMap<>();
    private int pinnedRow = OWN;
    private VariantsFound.Line pinned;
    private String pinnedName = "";
    private int[] rows = new int[0];
    private RowOrder order = RowOrder.ALL;
    private int selected = -1;
    private Consumer<RowOrder> sort = o -> {
    };
    private Runnable select = () -> {
    };
    private Runnable open = () -> {
    };

    private record Verdicts(VariantsFound of, Map<Integer, Judging.Judged> found) {
    }

    RowsCanvas(Composite parent, Workshop workshop) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL);
        this.workshop = workshop;
        this.look = workshop.look();
        this.judging = new Recompute<>(workshop.worker(), look::later, this::judged);
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, e -> paint(e.gc));
        addListener(SWT.Resize, e -> bar());
        getVerticalBar().addListener(SWT.Selection, e -> redraw());
        addListener(SWT.MouseDown, e -> click(e.x, e.y));
        addListener(SWT.MouseDoubleClick, e -> {
            if (e.y > body() && selected >= 0) {
                open.run();
            }
        });
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = said();
            }
        });
    }

    void onSort(Consumer<RowOrder> todo) {
        sort = todo;
    }

    void onSelect(Runnable todo) {
        select = todo;
    }

    void onOpen(Runnable todo) {
        open = todo;
    }

    /** Shows other variants; the design itself is the baseline. */
    void show(VariantsFound now) {
        found = Optional.of(now);
        judged.clear();
        columns = new RowsColumns(now, workshop.units().now(), look.measure());
        pin(OWN, "this design");
        rows = new int[0];
        selected = -1;
        bar();
        redraw();
    }

    /** Shows these rows. */
    public void rows(int[] now, RowOrder how) {
        int row = selected >= 0 && selected < rows.length ? rows[selected] : -1;
        rows = now;
        order = how;
        selected = -1;
        for (int i = 0; i < now.length && row >= 0; i++) {
            if (now[i] == row) {
                selected = i;
                break;
            }
        }
        bar();
        redraw();
        select.run();
    }

    /** Compares all rows with this one, or with the design itself. */
    void pin(int row, String name) {
        if (found.isPresent()) {
            pinnedRow = row;
            pinned = line(row);
            pinnedName = name;
            redraw();
        }
    }

    private VariantsFound.Line line(int row) {
        return row == OWN ? found.get().own() : found.get().line(row);
    }

    /** Judges rows that are seen and were not judged yet, a few at a time. */
    private void judge(List<Integer> seen) {
        List<Integer> next = seen.stream().filter(r -> !judged.containsKey(r)).limit(AT_ONCE).toList();
        if (!next.isEmpty() && !judging.pending()) {
            VariantsFound of = found.get();
            Map<Integer, VariantsFound.Line> lines = next.stream().collect(Collectors.toMap(r -> r, this::line));
            judging.ask(() -> new Verdicts(of, lines.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, e -> of.judged(e.getValue())))));
        }
    }

    private void judged(Verdicts now) {
        if (!isDisposed()) {
            if (found.filter(f -> f == now.of()).isPresent()) {
                judged.putAll(now.found());
            }
            redraw();
        }
    }

    /** {@return whether verdicts are still to come} */
    boolean pending() {
        return judging.pending();
    }

    /** {@return the verdict of a row, or of the design itself; dots while it is not known} */
    public String verdict(int row) {
        return judged.containsKey(row) ? judged.get(row).words() : NOT_YET;
    }

    /** Lengths are shown in another unit. */
    void unit() {
        found.ifPresent(f -> columns = new RowsColumns(f, workshop.units().now(), look.measure()));
        redraw();
    }

    /** {@return the row that is chosen, its number among all variants; -1 for none} */
    public int chosen() {
        return selected >= 0 && selected < rows.length ? rows[selected] : -1;
    }

    /** {@return the rows that are shown} */
    public int[] rows() {
        return rows.clone();
    }

    /** {@return the row that others are compared with} */
    public VariantsFound.Line pinned() {
        return pinned;
    }

    /** {@return the text of a cell as it is painted} */
    public String cell(int shown, int column) {
        return columns.text(found.get().line(rows[shown]), pinned, column, verdict(rows[shown]));
    }

    private String said() {
        if (chosen() < 0 || found.isEmpty()) {
            return rows.length + " variants";
        }
        VariantsFound.Line line = found.get().line(chosen());
        StringBuilder text = new StringBuilder();
        for (int c = 0; c < columns.count(); c++) {
            text.append(c == 0 ? "" : ", ").append(columns.head(c)).append(' ').append(columns.text(line, pinned, c, verdict(chosen())));
        }
        return text.toString();
    }

    private int line() {
        return (int) Math.ceil(look.measure().line(Size.BODY)) + PAD;
    }

    /** Where the rows begin: below the heads and the pinned row. */
    private int body() {
        return 2 * line() + 8;
    }

    /** How many rows fit; the table ends on a whole one. */
    private int whole(int height) {
        return Math.max(1, (height - body()) / line());
    }

    private void bar() {
        var bar = getVerticalBar();
        int page = whole(getClientArea().height);
        bar.setVisible(rows.length > page);
        bar.setValues(Math.min(bar.getSelection(), Math.max(0, rows.length - page)), 0, Math.max(1, rows.length), Math.min(page, Math.max(1, rows.length)), 1, page);
    }

    private void click(int x, int y) {
        setFocus();
        if (found.isEmpty()) {
            return;
        }
        if (y < line()) {
            int left = LEFT;
            for (int c = 0; c < columns.count(); c++) {
                int width = c == columns.count() - 1 ? Integer.MAX_VALUE / 2 : columns.width(c);
                if (x < left + width) {
                    sortBy(c);
                    return;
                }
                left += width;
            }
        } else if (y > body() && (y - body()) / line() < whole(getClientArea().height)) { // below the last whole row stands nothing
            choose(getVerticalBar().getSelection() + (y - body()) / line());
        }
    }

    /** Sorts by a column; once more turns it round. */
    public void sortBy(int column) {
        int by = columns.sortsBy(column);
        if (by >= 0) {
            boolean same = order.column().isPresent() && order.column().getAsInt() == by;
            sort.accept(order.sorted(by, same && !order.falling()));
        }
    }

    /** Chooses a shown row. */
    public void choose(int shown) {
        selected = Math.max(-1, Math.min(rows.length - 1, shown));
        var bar = getVerticalBar();
        if (selected >= 0 && selected < bar.getSelection()) {
            bar.setSelection(selected);
        } else if (selected >= bar.getSelection() + bar.getThumb()) {
            bar.setSelection(selected - bar.getThumb() + 1);
        }
        setToolTipText(chosen() < 0 ? null : verdict(chosen()));
        redraw();
        getAccessible().setFocus(0);
        select.run();
    }

    private void key(Event e) {
        int page = getVerticalBar().getThumb();
        switch (e.keyCode) {
            case SWT.ARROW_DOWN -> choose(selected + 1);
            case SWT.ARROW_UP -> choose(Math.max(0, selected - 1));
            case SWT.PAGE_DOWN -> choose(selected + page);
            case SWT.PAGE_UP -> choose(Math.max(0, selected - page));
            case SWT.HOME -> choose(0);
            case SWT.END -> choose(rows.length - 1);
            case SWT.CR -> open.run();
            default -> {
            }
        }
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(look.colour(Role.PAPER));
        gc.fillRectangle(area);
        if (found.isEmpty()) {
            gc.setFont(look.font(Size.BODY, SWT.NORMAL));
            gc.setForeground(look.colour(Role.QUIET));
            gc.drawString("Nothing was run yet.", LEFT, 8, true);
            return;
        }
        int line = line();
        columns.fit(area.width - LEFT);
        heads(gc, area);
        gc.setBackground(look.colour(Role.PANEL));
        gc.fillRectangle(0, line + 1, area.width, line);
        row(gc, area, pinnedRow, line + 1, pinnedName);
        List<Integer> seen = new ArrayList<>(List.of(pinnedRow));
        gc.setForeground(look.colour(Role.RULE));
        gc.drawLine(0, 2 * line + 4, area.width, 2 * line + 4);
        int first = getVerticalBar().getSelection();
        for (int i = first; i < rows.length && i < first + whole(area.height); i++) {
            int y = body() + (i - first) * line;
            if (i == selected) {
                gc.setBackground(look.colour(isFocusControl() ? Role.GRID : Role.PANEL));
                gc.fillRectangle(0, y, area.width, line);
                gc.setBackground(look.colour(isFocusControl() ? Role.THREAD : Role.QUIET));
                gc.fillRectangle(0, y, CHOSEN, line);
            }
            row(gc, area, rows[i], y, "");
            seen.add(rows[i]);
        }
        judge(seen);
    }

    private void heads(GC gc, Rectangle area) {
        gc.setFont(look.font(Size.SMALL, SWT.NORMAL));
        int x = LEFT;
        int shows = order.column().isPresent() ? columns.shows(order.column().getAsInt()) : -1;
        for (int c = 0; c < columns.count(); c++) {
            boolean last = c == columns.count() - 1;
            if (!last && columns.width(c) == 0) {
                continue;
            }
            int room = last ? Math.max(0, area.width - x) : columns.width(c) - RowsColumns.GAP;
            gc.setForeground(look.colour(c == shows ? Role.INK : Role.QUIET));
            String words = (c == shows ? order.falling() ? "▼ " : "▲ " : "") + columns.head(c);
            String text = Clip.to(words, look.measure(), Size.SMALL, room);
            gc.drawString(text, columns.leftwards(c) ? x : x + room - gc.stringExtent(text).x, 4, true);
            x += columns.width(c);
        }
    }

    private void row(GC gc, Rectangle area, int row, int y, String name) {
        VariantsFound.Line line = row == pinnedRow ? pinned : line(row);
        Optional<Judging.Judged> told = Optional.ofNullable(judged.get(row));
        Optional<Verdict.Sign> sign = told.map(Judging.Judged::sign);
        gc.setFont(look.font(Size.BODY, SWT.NORMAL));
        int x = LEFT;
        boolean own = !name.isEmpty();
        sign.ifPresent(s -> SignPainter.paint(gc, look, s, SIGN, y + line() / 2));
        for (int c = 0; c < columns.count(); c++) {
            boolean last = c == columns.count() - 1;
            if (!last && columns.width(c) == 0) {
                continue;
            }
            int room = last ? Math.max(0, area.width - x - 4) : columns.width(c) - RowsColumns.GAP;
            String text = (last && own ? name + ": " : "") + columns.text(line, pinned, c, verdict(row));
            if (last && !own && look.measure().width(text, Size.BODY, false) > room) {
                text = told.map(Judging.Judged::brief).orElse(text);
            }
            text = Clip.to(text, look.measure(), Size.BODY, room);
            boolean same = c < line.values().length && line.values()[c] == pinned.values()[c];
            gc.setForeground(look.colour(last ? ink(sign) : same && !own ? Role.QUIET : Role.INK));
            gc.drawString(text, columns.leftwards(c) ? x : x + room - gc.stringExtent(text).x, y + PAD / 2, true);
            x += columns.width(c);
        }
    }

    private static Role ink(Optional<Verdict.Sign> sign) {
        return sign.map(s -> switch (s) {
            case FITS -> Role.FITS;
            case MAY_FIT -> Role.INK;
            case DOES_NOT -> Role.DOES_NOT;
        }).orElse(Role.QUIET);
    }
}

package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.widgets.RowsList;

/**
 * The findings, the worst first: sign, sentence, why, and what can be done. Up and Down choose one, Enter does what it
 * proposes, Right and Left open and close why.
 */
final class FindingsList extends RowsList {
    private static final int LEFT = 12;
    private static final int BAR = 8;
    private static final int STEP = 20;
    private final List<FindingRow> rows = new ArrayList<>();
    private List<Finding> findings = List.of();
    private LengthUnit shownIn = LengthUnit.MM;
    private int selected = -1;
    private Consumer<Fix> apply = fix -> { };
    private Consumer<Finding> select = finding -> { };

    FindingsList(Composite parent, Look look) {
        super(parent, look);
        look.clear(this);
        setEnabled(false);
        addListener(SWT.MouseMove, this::move);
        addListener(SWT.MouseDoubleClick, e -> openOrClose());
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.FocusIn, e -> choose(Math.max(0, selected)));
    }

    @Override
    public String spoken() {
        return selected >= 0 && selected < findings.size()
                ? findings.get(selected).severity().word() + ": " + findings.get(selected).text()
                : findings.size() + " findings. " + heading();
    }

    /** How many are out of sight stands in the heading, for a scroll bar may hide. */
    private String heading() {
        int bottom = getClientArea().height + scrolled();
        long below = rows.stream().filter(r -> r.bottom() > bottom + FindingRow.AROUND).count();
        return "Findings" + (below > 0 ? ", " + below + " more below" : "");
    }

    void onApply(Consumer<Fix> todo) {
        apply = todo;
    }

    void onSelect(Consumer<Finding> todo) {
        select = todo;
    }

    /** Lists findings. @param unit in what their numbers are written; @return whether they are others than before */
    boolean show(List<Finding> now, LengthUnit unit) {
        if (now.equals(findings) && unit == shownIn) {
            return false;
        }
        List<String> open = rows.stream().filter(FindingRow::isOpen).map(r -> r.finding().rule()).toList();
        List<FindingRow> before = new ArrayList<>(rows);
        rows.clear();
        for (Finding finding : now) {
            Optional<FindingRow> same = before.stream().filter(r -> unit == shownIn && r.finding().equals(finding)).findFirst();
            same.ifPresent(before::remove); // measuring its words takes long
            FindingRow row = same.orElseGet(() -> new FindingRow(finding, unit, look()));
            row.open(open.contains(finding.rule()));
            rows.add(row);
        }
        findings = now;
        shownIn = unit;
        selected = Math.min(selected, rows.size() - 1);
        setEnabled(!rows.isEmpty()); // nothing to go to
        layOut();
        return true;
    }

    /** {@return what is listed} */
    List<Finding> findings() {
        return findings;
    }

    /** {@return what it says, finding by finding, with why and what to do} */
    List<String> words() {
        return findings.stream().map(f -> f.text() + "\n" + FindingWords.more(f, shownIn) + f.fix().map(x -> "\n" + x.text()).orElse("")).toList();
    }

    /** Chooses the next finding, going round. */
    void next() {
        int next = selected + 1; // the focus alone chooses the first
        setFocus();
        if (!rows.isEmpty()) {
            choose(next % rows.size());
        }
    }

    /** {@return the chosen finding's proposal is applied, when it has one} */
    boolean applySelected() {
        if (selected < 0 || selected >= rows.size() || findings.get(selected).fix().isEmpty()) {
            return false;
        }
        apply.accept(findings.get(selected).fix().get());
        return true;
    }

    @Override
    protected void layOut() {
        int width = getClientArea().width;
        place(width);
        boolean before = getVerticalBar().getVisible();
        bar();
        if (getVerticalBar().getVisible() != before) {
            place(width);
        }
        if (isFocusControl() && selected >= 0) {
            reveal(rows.get(selected).top(), rows.get(selected).bottom());
        }
        redraw();
    }

    private int place(int width) {
        int y = headHeight();
        int room = width - LEFT - (getVerticalBar().getVisible() ? BAR : 0); // it may lie over the list
        for (FindingRow row : rows) {
            y = row.place(y, room);
        }
        return y;
    }

    @Override
    protected int whole() {
        return rows.isEmpty() ? headHeight() : rows.get(rows.size() - 1).bottom();
    }

    @Override
    protected int step() {
        return STEP;
    }

    /** Without findings there is no heading either: it would stand over nothing. */
    private int headHeight() {
        return rows.isEmpty() ? 0 : (int) (look().measure().line(Size.HEADING)) + 18;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? 600 : wHint;
        int height = place(width);
        layOut();
        return new Point(width, height + 4);
    }

    @Override
    protected void paint(GC gc) {
        Rectangle area = getClientArea();
        if (rows.isEmpty()) {
            return;
        }
        gc.setForeground(look().colour(Role.RULE));
        gc.drawLine(LEFT, 0, area.width, 0);
        gc.setForeground(look().colour(Role.INK));
        look().write(gc, heading(), Size.BODY, true, LEFT, 9 - scrolled());
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).paint(gc, LEFT, scrolled(), area.height, i == selected && isFocusControl());
        }
    }

    private int rowAt(int y) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).holds(y + scrolled())) {
                return i;
            }
        }
        return -1;
    }

    @Override
    protected void down(Event e) {
        int at = rowAt(e.y);
        if (at < 0) {
            return;
        }
        choose(at);
        FindingRow row = rows.get(at);
        if (row.whyAt(e.x, e.y + scrolled())) {
            openOrClose();
        } else if (row.fixAt(e.x, e.y + scrolled())) {
            applySelected();
        }
    }

    private void move(Event e) {
        int at = rowAt(e.y);
        boolean link = at >= 0 && (rows.get(at).whyAt(e.x, e.y + scrolled()) || rows.get(at).fixAt(e.x, e.y + scrolled()));
        setCursor(link ? getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }

    @Override
    protected void key(Event e) {
        switch (e.keyCode) {
            case SWT.ARROW_DOWN -> choose(Math.min(rows.size() - 1, selected + 1));
            case SWT.ARROW_UP -> choose(Math.max(0, selected - 1));
            case SWT.ARROW_RIGHT, SWT.ARROW_LEFT -> openOrClose();
            case SWT.CR, SWT.KEYPAD_CR -> {
                if (!applySelected()) {
                    openOrClose();
                }
            }
            default -> { }
        }
    }

    private void choose(int at) {
        selected = at < rows.size() ? at : -1;
        if (selected >= 0) {
            select.accept(findings.get(selected));
            reveal(rows.get(selected).top(), rows.get(selected).bottom());
        }
        redraw();
    }

    private void openOrClose() {
        if (selected >= 0 && selected < rows.size()) {
            rows.get(selected).open(!rows.get(selected).isOpen());
            layOut();
            getParent().layout();
        }
    }
}

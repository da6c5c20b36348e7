package culm.workbench.internal.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Finding;
import culm.blank.rules.Fix;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/**
 * The findings, the worst first: sign, sentence, why, and what can be done. Up and Down choose one, Enter does what it
 * proposes, Right and Left open and close why.
 */
final class FindingsList extends Canvas {
    private static final int LEFT = 12;
    private final Look look;
    private final List<FindingRow> rows = new ArrayList<>();
    private List<Finding> findings = List.of();
    private int selected = -1;
    private int scrolled;
    private Consumer<Fix> apply = fix -> { };
    private Consumer<Finding> select = finding -> { };

    FindingsList(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.V_SCROLL);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, this::paint);
        addListener(SWT.Resize, e -> layOut());
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseMove, this::move);
        addListener(SWT.MouseDoubleClick, e -> openOrClose());
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.FocusIn, e -> choose(Math.max(0, selected)));
        addListener(SWT.FocusOut, e -> redraw());
        addListener(SWT.Dispose, e -> rows.forEach(FindingRow::dispose));
        getVerticalBar().addListener(SWT.Selection, e -> {
            scrolled = getVerticalBar().getSelection();
            redraw();
        });
        getVerticalBar().setVisible(false);
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = selected >= 0 && selected < findings.size()
                        ? findings.get(selected).severity().word() + ": " + findings.get(selected).text()
                        : "Findings: " + findings.size();
            }
        });
    }

    void onApply(Consumer<Fix> todo) {
        apply = todo;
    }

    void onSelect(Consumer<Finding> todo) {
        select = todo;
    }

    /** Lists findings. @return whether they are others than before */
    boolean show(List<Finding> now) {
        if (now.equals(findings)) {
            return false;
        }
        findings = now;
        List<String> open = rows.stream().filter(FindingRow::isOpen).map(r -> r.finding().rule()).toList();
        rows.forEach(FindingRow::dispose);
        rows.clear();
        for (Finding finding : now) {
            FindingRow row = new FindingRow(finding, look);
            row.open(open.contains(finding.rule()));
            rows.add(row);
        }
        selected = Math.min(selected, rows.size() - 1);
        layOut();
        return true;
    }

    /** {@return what is listed} */
    List<Finding> findings() {
        return findings;
    }

    /** Chooses the next finding, going round. */
    void next() {
        setFocus();
        if (!rows.isEmpty()) {
            choose((selected + 1) % rows.size());
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

    private void layOut() {
        int width = getClientArea().width - LEFT;
        int y = headHeight();
        for (FindingRow row : rows) {
            y = row.place(y, width);
        }
        int height = Math.max(1, getClientArea().height);
        var bar = getVerticalBar();
        bar.setVisible(y > height);
        bar.setValues(Math.min(scrolled, Math.max(0, y - height)), 0, Math.max(1, y), Math.min(height, Math.max(1, y)), 20, height);
        scrolled = y > height ? bar.getSelection() : 0;
        redraw();
    }

    private int headHeight() {
        return (int) (look.measure().ascent(Size.HEADING) + look.measure().descent(Size.HEADING)) + 18;
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int height = headHeight();
        for (FindingRow row : rows) {
            height = row.place(height, (wHint == SWT.DEFAULT ? 600 : wHint) - LEFT);
        }
        layOut();
        return new Point(wHint == SWT.DEFAULT ? 600 : wHint, height + 4);
    }

    private void paint(Event e) {
        GC gc = e.gc;
        Rectangle area = getClientArea();
        gc.setForeground(look.colour(Role.RULE));
        gc.drawLine(LEFT, 0, area.width, 0);
        gc.setTextAntialias(SWT.ON);
        gc.setFont(look.font(Size.BODY, SWT.BOLD));
        gc.setForeground(look.colour(Role.INK));
        gc.drawString("Findings", LEFT, 9 - scrolled, true);
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).paint(gc, LEFT, scrolled, i == selected && isFocusControl());
        }
    }

    private int rowAt(int y) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).holds(y + scrolled)) {
                return i;
            }
        }
        return -1;
    }

    private void down(Event e) {
        setFocus();
        int at = rowAt(e.y);
        if (at < 0) {
            return;
        }
        choose(at);
        FindingRow row = rows.get(at);
        if (row.whyAt(e.x, e.y + scrolled)) {
            openOrClose();
        } else if (row.fixAt(e.x, e.y + scrolled)) {
            applySelected();
        }
    }

    private void move(Event e) {
        int at = rowAt(e.y);
        boolean link = at >= 0 && (rows.get(at).whyAt(e.x, e.y + scrolled) || rows.get(at).fixAt(e.x, e.y + scrolled));
        setCursor(link ? getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
    }

    private void key(Event e) {
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
            scrollTo(rows.get(selected));
        }
        redraw();
    }

    private void scrollTo(FindingRow row) {
        int height = getClientArea().height;
        if (getVerticalBar().getVisible() && (row.top() < scrolled || row.bottom() > scrolled + height)) {
            getVerticalBar().setSelection(row.top() < scrolled ? row.top() : row.bottom() - height);
            scrolled = getVerticalBar().getSelection();
        }
    }

    private void openOrClose() {
        if (selected >= 0 && selected < rows.size()) {
            rows.get(selected).open(!rows.get(selected).isOpen());
            layOut();
            getParent().layout();
        }
    }
}

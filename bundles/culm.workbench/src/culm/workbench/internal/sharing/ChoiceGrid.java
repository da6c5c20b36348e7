package culm.workbench.internal.sharing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Severity;
import culm.design.compare.Choice;
import culm.design.compare.Difference;
import culm.design.compare.Side;
import culm.figures.Clip;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.RowsList;
import culm.workbench.internal.widgets.SignPainter;

/** Values in rows, before, yours and theirs in columns; the one that is kept has a filled ring. By mouse, or with the arrow keys. */
public final class ChoiceGrid extends RowsList {
    private static final double WORDS = 0.28;
    private static final int SIGN = 20;
    private static final int RING = 18;
    private static final List<Choice> ORDER = List.of(Choice.BEFORE, Choice.YOURS, Choice.THEIRS);
    private static final List<String> HEADS = List.of("before", "yours", "theirs");

    /** A value, or without one the heading of a file. */
    private record Line(String file, Difference difference) {
    }

    private final List<Line> lines = new ArrayList<>();
    private final Map<Line, Choice> choices = new HashMap<>();
    private Runnable changed = () -> { };
    private int selected;

    ChoiceGrid(Composite parent, Look look, List<Compared> files) {
        super(parent, look);
        for (Compared file : files) {
            lines.add(new Line(file.file(), null));
            for (Difference row : file.rows()) {
                Line line = new Line(file.file(), row);
                lines.add(line);
                if (row.side() != Side.CONFLICT) {
                    choices.put(line, row.side() == Side.THEIRS ? Choice.THEIRS : Choice.YOURS);
                }
            }
        }
        selected = next(-1, 1);
        addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_ARROW_NEXT && e.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
    }

    @Override
    public String spoken() {
        return selected < 0 ? "nothing differs" : spoken(lines.get(selected));
    }

    private String spoken(Line line) {
        Difference d = line.difference();
        Choice kept = choices.get(line);
        return d.label() + ": before " + said(d.before()) + ", yours " + said(d.yours()) + ", theirs " + said(d.theirs()) + "; "
                + (kept == null ? "nothing is chosen" : "kept is " + HEADS.get(ORDER.indexOf(kept)));
    }

    void onChange(Runnable todo) {
        changed = todo;
    }

    /** {@return how many values both changed differently} */
    int conflicts() {
        return (int) lines.stream().filter(ChoiceGrid::isConflict).count();
    }

    /** {@return how many of them are not chosen yet} */
    int open() {
        return (int) lines.stream().filter(l -> isConflict(l) && !choices.containsKey(l)).count();
    }

    /** {@return what is kept of each value, by file and path} */
    Map<String, Map<String, Choice>> chosen() {
        Map<String, Map<String, Choice>> all = new HashMap<>();
        choices.forEach((line, choice) -> all.computeIfAbsent(line.file(), f -> new HashMap<>()).put(line.difference().path(), choice));
        return all;
    }

    /** {@return the chosen row in full} */
    String detail() {
        return selected < 0 ? "" : spoken(lines.get(selected));
    }

    private static boolean isConflict(Line line) {
        return line.difference() != null && line.difference().side() == Side.CONFLICT;
    }

    void chooseAllConflicts(Choice choice) {
        lines.stream().filter(ChoiceGrid::isConflict).forEach(l -> choices.put(l, choice));
        done();
    }

    /**
     * Keeps one version of a value.
     *
     * @param path the value's
     * @param choice which version
     */
    public void choose(String path, Choice choice) {
        lines.stream().filter(l -> l.difference() != null && l.difference().path().equals(path)).forEach(l -> choices.put(l, choice));
        done();
    }

    /** {@return the values in rows, as they stand there} */
    public List<Difference> rows() {
        return lines.stream().filter(l -> l.difference() != null).map(Line::difference).toList();
    }

    private void done() {
        redraw();
        changed.run();
    }

    private int lineHeight() {
        return (int) Math.ceil(look().measure().line(Size.BODY)) + 10;
    }

    @Override
    protected int whole() {
        return (lines.size() + 1) * lineHeight();
    }

    @Override
    protected int step() {
        return lineHeight();
    }

    private int columnLeft(int column) {
        int words = (int) (getClientArea().width * WORDS);
        return words + column * (getClientArea().width - words) / ORDER.size();
    }

    @Override
    protected void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        int height = lineHeight();
        for (int i = 0; i < lines.size(); i++) {
            int y = (i + 1) * height - scrolled();
            if (y > -height && y < getClientArea().height) {
                row(gc, i, y);
            }
        }
        gc.setBackground(look().colour(Role.PAPER));
        gc.fillRectangle(0, 0, getClientArea().width, height);
        gc.setFont(look().font(Size.SMALL, SWT.NORMAL));
        gc.setForeground(look().colour(Role.QUIET));
        for (int c = 0; c < ORDER.size(); c++) {
            gc.drawString(HEADS.get(c), columnLeft(c) + RING, 4, true);
        }
        gc.setForeground(look().colour(Role.RULE));
        gc.drawLine(0, height - 2, getClientArea().width, height - 2);
    }

    private void row(GC gc, int index, int y) {
        Line line = lines.get(index);
        int top = y + 4;
        if (line.difference() == null) {
            gc.setFont(look().font(Size.BODY, SWT.BOLD));
            gc.setForeground(look().colour(Role.INK));
            gc.drawString(line.file(), 2, top, true);
            return;
        }
        if (index == selected) {
            gc.setBackground(look().colour(Role.PANEL));
            gc.fillRoundRectangle(0, y, getClientArea().width - 1, lineHeight() - 2, 6, 6);
            gc.setForeground(look().colour(isFocusControl() ? Role.THREAD : Role.RULE));
            gc.drawRoundRectangle(0, y, getClientArea().width - 1, lineHeight() - 2, 6, 6);
        }
        Choice kept = choices.get(line);
        if (isConflict(line)) {
            SignPainter.paint(gc, look(), kept == null ? Severity.WARNING : Severity.FINE, 10, y + lineHeight() / 2 - 1);
        }
        gc.setFont(look().font(Size.BODY, SWT.NORMAL));
        gc.setForeground(look().colour(Role.INK));
        gc.drawString(Clip.to(line.difference().label(), look().measure(), Size.BODY, columnLeft(0) - SIGN - 8), SIGN + 2, top, true);
        for (int c = 0; c < ORDER.size(); c++) {
            cell(gc, c, value(line.difference(), ORDER.get(c)), kept == ORDER.get(c), y);
        }
    }

    private void cell(GC gc, int column, String text, boolean kept, int y) {
        int left = columnLeft(column);
        int middle = y + lineHeight() / 2 - 1;
        gc.setForeground(look().colour(kept ? Role.THREAD : Role.QUIET));
        gc.setLineWidth(1);
        gc.drawOval(left, middle - 5, 10, 10);
        if (kept) {
            gc.setBackground(look().colour(Role.THREAD));
            gc.fillOval(left + 2, middle - 3, 7, 7);
        }
        gc.setFont(look().font(Size.BODY, kept ? SWT.BOLD : SWT.NORMAL));
        gc.setForeground(look().colour(kept ? Role.INK : Role.QUIET));
        gc.drawString(Clip.to(said(text), look().measure(), Size.BODY, kept, columnLeft(column + 1) - left - RING - 8), left + RING, y + 4, true);
    }

    private static String value(Difference d, Choice choice) {
        return switch (choice) {
            case BEFORE -> d.before();
            case YOURS -> d.yours();
            case THEIRS -> d.theirs();
        };
    }

    private static String said(String value) {
        return value.isEmpty() ? "none" : value.replaceAll("\\s+", " ");
    }

    private int next(int from, int step) {
        for (int i = from + step; i >= 0 && i < lines.size(); i += step) {
            if (lines.get(i).difference() != null) {
                return i;
            }
        }
        return from;
    }

    @Override
    protected void down(Event e) {
        int index = (e.y + scrolled()) / lineHeight() - 1;
        if (index < 0 || index >= lines.size() || lines.get(index).difference() == null || e.y < lineHeight()) {
            return;
        }
        selected = index;
        for (int c = 0; c < ORDER.size(); c++) {
            if (e.x >= columnLeft(c) && e.x < columnLeft(c + 1)) {
                choices.put(lines.get(index), ORDER.get(c));
            }
        }
        done();
    }

    @Override
    protected void key(Event e) {
        switch (e.keyCode) {
            case SWT.ARROW_DOWN -> select(next(selected, 1));
            case SWT.ARROW_UP -> select(next(selected, -1));
            case SWT.ARROW_LEFT -> move(-1);
            case SWT.ARROW_RIGHT -> move(1);
            default -> { }
        }
    }

    private void move(int by) {
        if (selected >= 0) {
            Line line = lines.get(selected);
            int now = choices.containsKey(line) ? ORDER.indexOf(choices.get(line)) : by > 0 ? 0 : ORDER.size();
            choices.put(line, ORDER.get(Math.max(0, Math.min(ORDER.size() - 1, now + by))));
            done();
        }
    }

    private void select(int index) {
        selected = index;
        reveal(index * lineHeight(), (index + 2) * lineHeight());
        done();
    }
}

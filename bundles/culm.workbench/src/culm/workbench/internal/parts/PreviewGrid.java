package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Verdict;
import culm.design.parts.Replacement.Preview;
import culm.figures.Lines;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.numbers.LengthUnit;
import culm.workbench.internal.widgets.RowsList;
import culm.workbench.internal.widgets.SignPainter;

/** Each design with its verdict now and then; a click or Space takes it or leaves it out. */
public final class PreviewGrid extends RowsList {
    private static final double NAME = 0.28;
    private static final int BOX = 24;
    /** Where the words of a verdict begin, after "now" and its sign. */
    private static final int WORDS = 62;
    private static final int LEAST = 120;
    private final LengthUnit unit;
    private final List<Preview> rows = new ArrayList<>();
    private final Set<Path> taken = new HashSet<>();
    /** Where each row ends, counted from the first, for this width: words are broken once, however many rows there are. */
    private final List<Integer> bottoms = new ArrayList<>();
    private int width;
    private Runnable changed = () -> { };
    private int selected;

    PreviewGrid(Composite parent, Look look, LengthUnit unit) {
        super(parent, look);
        this.unit = unit;
    }

    @Override
    public String spoken() {
        return selected < rows.size() ? spoken(rows.get(selected)) : "no design";
    }

    private String spoken(Preview p) {
        return p.name() + (taken.contains(p.design()) ? ", taken" : ", left out") + ": now " + sentence(p.before(), p.reason()) + "; then " + sentence(p.after(), p.reason());
    }

    private String sentence(Optional<Verdict> verdict, String reason) {
        return verdict.map(v -> unit.drawn().told(v.told())).orElse("cannot be told: " + reason);
    }

    void onChange(Runnable todo) {
        changed = todo;
    }

    void clear() {
        rows.clear();
        bottoms.clear();
        taken.clear();
        selected = 0;
        bar();
        redraw();
    }

    void add(Preview preview) {
        rows.add(preview);
        if (preview.after().isPresent()) {
            taken.add(preview.design());
        }
        bar();
        redraw();
    }

    void takeAll(boolean now) {
        taken.clear();
        if (now) {
            rows.stream().filter(p -> p.after().isPresent()).forEach(p -> taken.add(p.design()));
        }
        redraw();
        changed.run();
    }

    /** {@return the designs that are taken, in their order} */
    List<Path> taken() {
        return rows.stream().map(Preview::design).filter(taken::contains).toList();
    }

    /** {@return how many of them fare worse then} */
    long worse() {
        return rows.stream().filter(p -> taken.contains(p.design()) && rank(p.after()) > rank(p.before())).count();
    }

    private static int rank(Optional<Verdict> verdict) {
        return verdict.map(v -> v.sign().ordinal()).orElse(Verdict.Sign.values().length);
    }

    private int line() {
        return (int) Math.ceil(look().measure().line(Size.BODY));
    }

    private int left() {
        return (int) (getClientArea().width * NAME);
    }

    /** A verdict in as many lines as it needs: none of it may hide. */
    private List<String> lines(Optional<Verdict> verdict, String reason) {
        return Lines.of(sentence(verdict, reason), look().measure(), Size.BODY, false, Math.max(LEAST, getClientArea().width - left() - WORDS - 8));
    }

    private List<String> name(Preview p) {
        return Lines.of(p.name(), look().measure(), Size.BODY, true, Math.max(LEAST / 2, left() - BOX - 20));
    }

    private int high(Preview p) {
        return Math.max(lines(p.before(), p.reason()).size() + lines(p.after(), p.reason()).size(), name(p).size()) * line() + 12;
    }

    /** Where a row begins, counted from the first; behind the last for the number of rows. */
    private int top(int index) {
        return index == 0 ? 0 : bottoms().get(index - 1);
    }

    private List<Integer> bottoms() {
        int now = getClientArea().width;
        if (width != now) {
            width = now;
            bottoms.clear();
        }
        for (int i = bottoms.size(); i < rows.size(); i++) {
            bottoms.add((i == 0 ? 0 : bottoms.get(i - 1)) + high(rows.get(i)));
        }
        return bottoms;
    }

    /** The row at a height, counted from the first row's top; the number of rows below the last. */
    private int at(int y) {
        int found = Collections.binarySearch(bottoms(), y);
        return found >= 0 ? found + 1 : -found - 1;
    }

    @Override
    protected int whole() {
        return top(rows.size());
    }

    @Override
    protected int step() {
        return 2 * line() + 12;
    }

    @Override
    protected void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        int end = scrolled() + getClientArea().height;
        for (int i = at(scrolled()); i < rows.size() && top(i) < end; i++) {
            paint(gc, rows.get(i), i, top(i) - scrolled(), top(i + 1) - top(i));
        }
    }

    private void paint(GC gc, Preview p, int index, int y, int high) {
        int width = getClientArea().width;
        if (index == selected && isFocusControl()) {
            gc.setForeground(look().colour(Role.THREAD));
            gc.drawRoundRectangle(0, y, width - 1, high - 4, 6, 6);
        }
        boolean in = taken.contains(p.design());
        gc.setForeground(look().colour(in ? Role.THREAD : Role.QUIET));
        gc.setLineWidth(1);
        gc.drawRoundRectangle(6, y + 8, 11, 11, 3, 3);
        if (in) {
            gc.setLineWidth(2);
            gc.drawPolyline(new int[] { 9, y + 13, 11, y + 16, 15, y + 10 });
            gc.setLineWidth(1);
        }
        int left = left();
        gc.setFont(look().font(Size.BODY, SWT.BOLD));
        gc.setForeground(look().colour(in ? Role.INK : Role.QUIET));
        int below = y + 5;
        for (String line : name(p)) {
            gc.drawString(line, BOX + 4, below, true);
            below += line();
        }
        int then = verdict(gc, "now", p.before(), p.reason(), left, y + 5);
        verdict(gc, "then", p.after(), p.reason(), left, then);
    }

    /** @return where the next one goes */
    private int verdict(GC gc, String word, Optional<Verdict> verdict, String reason, int left, int y) {
        gc.setFont(look().font(Size.BODY, SWT.NORMAL));
        gc.setForeground(look().colour(Role.QUIET));
        gc.drawString(word, left, y, true);
        verdict.ifPresent(v -> SignPainter.paint(gc, look(), v.sign(), left + 48, y + line() / 2));
        gc.setForeground(look().colour(verdict.isEmpty() || verdict.get().sign() == Verdict.Sign.DOES_NOT ? Role.DOES_NOT : Role.INK));
        int below = y;
        for (String line : lines(verdict, reason)) {
            gc.drawString(line, left + WORDS, below, true);
            below += line();
        }
        return below;
    }

    private void toggle(int index) {
        if (index >= 0 && index < rows.size() && rows.get(index).after().isPresent()) {
            Path design = rows.get(index).design();
            if (!taken.remove(design)) {
                taken.add(design);
            }
            redraw();
            changed.run();
        }
    }

    @Override
    protected void down(Event e) {
        int index = at(e.y + scrolled());
        if (index < rows.size()) {
            selected = index;
            toggle(index);
        }
    }

    @Override
    protected void key(Event e) {
        switch (e.keyCode) {
            case SWT.ARROW_DOWN -> select(Math.min(rows.size() - 1, selected + 1));
            case SWT.ARROW_UP -> select(Math.max(0, selected - 1));
            case ' ' -> toggle(selected);
            default -> { }
        }
    }

    private void select(int index) {
        selected = Math.max(0, index);
        reveal(top(selected), top(selected + 1));
        redraw();
    }

    /** {@return what is shown} */
    List<Preview> rows() {
        return List.copyOf(rows);
    }

    /** {@return the verdicts as they stand there, line by line} */
    public List<String> said() {
        return rows.stream().flatMap(p -> Stream.of(lines(p.before(), p.reason()), lines(p.after(), p.reason())).flatMap(List::stream)).toList();
    }
}

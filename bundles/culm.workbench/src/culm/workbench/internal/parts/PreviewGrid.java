package culm.workbench.internal.parts;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Verdict;
import culm.design.parts.Replacement.Preview;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.Clip;
import culm.workbench.internal.widgets.RowsList;
import culm.workbench.internal.widgets.SignPainter;

/** Each design with its verdict now and then; a click or Space takes it or leaves it out. */
final class PreviewGrid extends RowsList {
    private static final double NAME = 0.28;
    private static final int BOX = 24;
    private final List<Preview> rows = new ArrayList<>();
    private final Set<Path> taken = new HashSet<>();
    private Runnable changed = () -> { };
    private int selected;

    PreviewGrid(Composite parent, Look look) {
        super(parent, look);
    }

    @Override
    protected String spoken() {
        return selected < rows.size() ? spoken(rows.get(selected)) : "no design";
    }

    private String spoken(Preview p) {
        return p.name() + (taken.contains(p.design()) ? ", taken" : ", left out") + ": now " + sentence(p.before(), p.reason()) + "; then " + sentence(p.after(), p.reason());
    }

    private static String sentence(Optional<Verdict> verdict, String reason) {
        return verdict.map(Verdict::sentence).orElse("cannot be told: " + reason);
    }

    void onChange(Runnable todo) {
        changed = todo;
    }

    void clear() {
        rows.clear();
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
        return (int) Math.ceil(look().measure().ascent(Size.BODY) + look().measure().descent(Size.BODY));
    }

    private int row() {
        return 2 * line() + 12;
    }

    @Override
    protected int whole() {
        return rows.size() * row();
    }

    @Override
    protected int step() {
        return row();
    }

    @Override
    protected void paint(GC gc) {
        gc.setTextAntialias(SWT.ON);
        gc.setAntialias(SWT.ON);
        for (int i = 0; i < rows.size(); i++) {
            int y = i * row() - scrolled();
            if (y > -row() && y < getClientArea().height) {
                paint(gc, rows.get(i), i, y);
            }
        }
    }

    private void paint(GC gc, Preview p, int index, int y) {
        int width = getClientArea().width;
        if (index == selected && isFocusControl()) {
            gc.setForeground(look().colour(Role.THREAD));
            gc.drawRoundRectangle(0, y, width - 1, row() - 4, 6, 6);
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
        int left = (int) (width * NAME);
        gc.setFont(look().font(Size.BODY, SWT.BOLD));
        gc.setForeground(look().colour(in ? Role.INK : Role.QUIET));
        gc.drawString(Clip.to(p.name(), look().measure(), Size.BODY, left - BOX - 20), BOX + 4, y + 5, true);
        verdict(gc, "now", p.before(), p.reason(), left, y + 5);
        verdict(gc, "then", p.after(), p.reason(), left, y + 5 + line());
    }

    private void verdict(GC gc, String word, Optional<Verdict> verdict, String reason, int left, int y) {
        gc.setFont(look().font(Size.BODY, SWT.NORMAL));
        gc.setForeground(look().colour(Role.QUIET));
        gc.drawString(word, left, y, true);
        verdict.ifPresent(v -> SignPainter.paint(gc, look(), v.sign(), left + 48, y + line() / 2));
        gc.setForeground(look().colour(verdict.isEmpty() || verdict.get().sign() == Verdict.Sign.DOES_NOT ? Role.DOES_NOT : Role.INK));
        gc.drawString(Clip.to(sentence(verdict, reason), look().measure(), Size.BODY, getClientArea().width - left - 70), left + 62, y, true);
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
        int index = (e.y + scrolled()) / row();
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
        reveal(selected * row(), (selected + 1) * row());
        redraw();
    }

    /** {@return what is shown} */
    List<Preview> rows() {
        return List.copyOf(rows);
    }
}

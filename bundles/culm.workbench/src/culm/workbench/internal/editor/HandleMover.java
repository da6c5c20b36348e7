package culm.workbench.internal.editor;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;

import culm.blank.Inputs;
import culm.blank.Mark;
import culm.figures.Handle;
import culm.figures.Scale;
import culm.figures.reed.ReedDrawing;
import culm.geometry.profile.Quantity;
import culm.model.problem.FileProblemException;
import culm.workbench.internal.numbers.NumberForm;
import culm.workbench.internal.numbers.Units;
import culm.workbench.internal.sharing.Attempt;

/**
 * Moves the marks of a reed with the mouse and the keys. A drag goes in tenths of a mm, with Shift in hundredths and ten
 * times slower; the arrow keys go as they do in a field, by round steps of the unit that is shown; Escape gives back.
 */
final class HandleMover {
    private static final double COARSE = 0.1;
    private static final double FINE = 0.01;
    private final ReedCanvas canvas;
    private final DesignSession session;
    private final PointerHeight pointer;
    private final Units units;
    private final Consumer<FileProblemException> refused;
    private Optional<Handle> dragged = Optional.empty();
    private int grabbedAt;
    private double grabbedValue;

    HandleMover(ReedCanvas canvas, DesignSession session, PointerHeight pointer, Units units, Consumer<FileProblemException> refused) {
        this.canvas = canvas;
        this.session = session;
        this.pointer = pointer;
        this.units = units;
        this.refused = refused;
        canvas.addListener(SWT.MouseDown, this::down);
        canvas.addListener(SWT.MouseMove, this::move);
        canvas.addListener(SWT.MouseUp, this::up);
        canvas.addListener(SWT.MouseDoubleClick, e -> canvas.zoomOut());
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, this::traverse);
        canvas.addListener(SWT.FocusIn, e -> focusFirst());
        canvas.addListener(SWT.FocusOut, e -> {
            session.gesture().endSteps();
            canvas.redraw();
        });
    }

    private static Mark mark(String id) {
        for (Mark mark : Mark.values()) {
            if (mark.id().equals(id)) {
                return mark;
            }
        }
        throw new IllegalArgumentException("no mark is called " + id);
    }

    private NumberForm form(Mark mark) {
        return NumberForm.of(Quantity.LENGTH, units.now(), Inputs.all().get(mark.path()).tolerance());
    }

    private String label(Mark mark, double value) {
        return mark.label() + " " + form(mark).text(Math.rint(value * 1e6) / 1e6);
    }

    private OptionalDouble value(Mark mark) {
        return session.blank().map(b -> b.blank().value(mark.path())).orElse(OptionalDouble.empty());
    }

    private void down(Event e) {
        if (e.button != 1) {
            return;
        }
        canvas.setFocus();
        Optional<Handle> hit = canvas.handleAt(e.x, e.y);
        if (hit.isEmpty()) {
            togglePin(e);
            return;
        }
        OptionalDouble now = value(mark(hit.get().id()));
        if (now.isPresent()) {
            dragged = hit;
            grabbedAt = e.x;
            grabbedValue = now.getAsDouble();
            session.gesture().endSteps();
            canvas.focusHandle(hit.get().id());
        }
    }

    private void togglePin(Event e) {
        if (pointer.isPinned()) {
            pointer.pin(OptionalDouble.empty());
        } else {
            canvas.heightAt(e.x).ifPresent(z -> pointer.pin(OptionalDouble.of(Math.rint(z * 100) / 100)));
        }
    }

    private void move(Event e) {
        canvas.heightAt(e.x).ifPresent(z -> pointer.at(Math.rint(z * 100) / 100));
        if (dragged.isEmpty()) {
            boolean over = canvas.handleAt(e.x, e.y).isPresent();
            canvas.setCursor(over ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEWE) : null);
            return;
        }
        Optional<ReedDrawing> drawn = canvas.reedDrawing();
        if (drawn.isEmpty()) {
            return;
        }
        Scale scale = drawn.get().scale();
        boolean fine = (e.stateMask & SWT.SHIFT) != 0;
        double moved = (e.x - grabbedAt) / scale.perMm() * (fine ? FINE / COARSE : 1);
        double step = fine ? FINE : COARSE;
        Mark mark = mark(dragged.get().id());
        double to = clamped(mark, Math.rint((grabbedValue + moved) / step) * step);
        session.gesture().preview(mark.path(), Math.rint(to * 1000) / 1000, label(mark, to));
    }

    private double clamped(Mark mark, double value) {
        var described = Inputs.all().get(mark.path());
        return Math.max(described.min(), Math.min(described.max(), value));
    }

    private void up(Event e) {
        if (e.button == 1 && dragged.isPresent()) {
            dragged = Optional.empty();
            run(() -> session.gesture().settle());
        }
    }

    private void key(Event e) {
        switch (e.keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_DOWN -> nudge(e, -1);
            case SWT.ARROW_RIGHT, SWT.ARROW_UP -> nudge(e, 1);
            case SWT.ESC -> escape();
            default -> {
                return;
            }
        }
        e.doit = false;
    }

    private void escape() {
        if (dragged.isPresent() || session.gesture().previewing() || session.gesture().stepping()) {
            dragged = Optional.empty();
            session.gesture().giveBack();
        } else if (pointer.isPinned()) {
            pointer.pin(OptionalDouble.empty());
        }
    }

    private void nudge(Event e, int direction) {
        if (canvas.focusedHandle().isEmpty()) {
            return;
        }
        Mark mark = mark(canvas.focusedHandle());
        NumberForm form = form(mark);
        value(mark).ifPresent(now -> {
            double to = clamped(mark, form.stepped(now, direction * ((e.stateMask & SWT.SHIFT) != 0 ? 1 : 10)));
            run(() -> session.gesture().step(mark.path(), to, label(mark, to)));
        });
    }

    /** Tab goes from handle to handle, then on. */
    private void traverse(Event e) {
        if (e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            List<Handle> handles = handles();
            int at = index(handles) + (e.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
            e.doit = at < 0 || at >= handles.size();
            if (!e.doit) {
                session.gesture().endSteps();
                canvas.focusHandle(handles.get(at).id());
            }
        } else if (e.detail == SWT.TRAVERSE_ESCAPE || e.detail == SWT.TRAVERSE_ARROW_NEXT || e.detail == SWT.TRAVERSE_ARROW_PREVIOUS) {
            e.doit = false;
        }
    }

    private List<Handle> handles() {
        return canvas.onScreen().map(d -> d.handles().stream().sorted((a, b) -> Double.compare(a.x(), b.x())).toList()).orElse(List.of());
    }

    private int index(List<Handle> handles) {
        for (int i = 0; i < handles.size(); i++) {
            if (handles.get(i).id().equals(canvas.focusedHandle())) {
                return i;
            }
        }
        return -1;
    }

    private void focusFirst() {
        List<Handle> handles = handles();
        if (index(handles) < 0 && !handles.isEmpty()) {
            canvas.focusHandle(handles.get(0).id());
        }
        canvas.redraw();
    }

    private void run(Attempt attempt) {
        Attempt.at(attempt, refused);
    }
}

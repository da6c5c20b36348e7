package culm.workbench.internal.bench.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.figures.Lines;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.SignPainter;

/** Notes one below the other, wrapped; their links are clicked, or chosen with the arrow keys and done with Enter. */
public final class NoteList extends Canvas {
    private static final int LEFT = 14;
    private static final int SIGN = 20;
    private static final int APART = 24;
    private final Look look;
    private List<Note> notes = List.of();
    private List<Rectangle> places = List.of();
    private int chosen = -1;

    /**
     * An empty list.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    public NoteList(Composite parent, Look look) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.look = look;
        look.dress(this, Role.PAPER, Role.INK);
        look.onChange(this, this::redraw);
        addListener(SWT.Paint, e -> paint(e.gc));
        addListener(SWT.MouseUp, this::click);
        addListener(SWT.MouseMove, e -> setCursor(linkAt(e.x, e.y) < 0 ? null : getDisplay().getSystemCursor(SWT.CURSOR_HAND)));
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_RETURN && e.detail != SWT.TRAVERSE_ARROW_NEXT && e.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = notes.stream().map(n -> n.text() + (n.link().isEmpty() ? "" : ": " + n.link())).collect(Collectors.joining(". "));
            }
        });
    }

    /** Shows notes. @return whether they are others than before */
    public boolean show(List<Note> now) {
        boolean same = words(notes).equals(words(now));
        notes = List.copyOf(now);
        if (!same) {
            chosen = -1;
        }
        places = List.of();
        redraw();
        return !same;
    }

    private static List<String> words(List<Note> notes) {
        return notes.stream().map(n -> n.kind() + n.text() + n.link() + n.sign()).toList();
    }

    /** {@return the notes that are shown} */
    public List<Note> notes() {
        return notes;
    }

    private Size size(Note note) {
        return switch (note.kind()) {
            case HEAD -> Size.HEADING;
            case WEAK -> Size.SMALL;
            default -> Size.BODY;
        };
    }

    private boolean bold(Note note) {
        return note.kind() == Note.Kind.HEAD || note.kind() == Note.Kind.STRONG;
    }

    private int line(Size size) {
        return (int) Math.ceil(look.measure().line(size)) + 2;
    }

    private int above(Note note, int i) {
        return note.kind() == Note.Kind.HEAD ? i == 0 ? 6 : 14 : note.kind() == Note.Kind.WEAK ? 0 : 4;
    }

    private int linkWidth(Note note) {
        return note.link().isEmpty() ? 0 : (int) Math.ceil(look.measure().width(note.link(), Size.BODY, false)) + 16;
    }

    private int indent(Note note) {
        return LEFT + (note.kind() == Note.Kind.HEAD ? 0 : note.sign().isPresent() || note.kind() != Note.Kind.STRONG ? SIGN : 0);
    }

    private List<String> lines(Note note, int width) {
        return Lines.of(note.text(), look.measure(), size(note), bold(note), Math.max(60, width - indent(note) - linkWidth(note) - 12));
    }

    /** The links stand below each other, and in a wide window not far from what they belong to. */
    private int linksEnd(int width) {
        int end = 0;
        for (Note note : notes) {
            if (!note.link().isEmpty()) {
                double widest = lines(note, width).stream().mapToDouble(l -> look.measure().width(l, size(note), bold(note))).max().orElse(0);
                end = Math.max(end, indent(note) + (int) Math.ceil(widest) + APART + linkWidth(note));
            }
        }
        return Math.min(width, end);
    }

    @Override
    public Point computeSize(int wHint, int hHint, boolean changed) {
        int width = wHint == SWT.DEFAULT ? 400 : wHint;
        int height = 0;
        for (int i = 0; i < notes.size(); i++) {
            height += above(notes.get(i), i) + lines(notes.get(i), width).size() * line(size(notes.get(i)));
        }
        return new Point(width, height + (notes.isEmpty() ? 0 : 8));
    }

    private void paint(GC gc) {
        int width = getClientArea().width;
        int y = 0;
        List<Rectangle> links = new ArrayList<>();
        int right = linksEnd(width);
        for (int i = 0; i < notes.size(); i++) {
            Note note = notes.get(i);
            y += above(note, i);
            int line = line(size(note));
            Rectangle link = new Rectangle(right - linkWidth(note) - 4, y - 2, linkWidth(note), line + 3);
            links.add(link);
            note.sign().ifPresent(s -> SignPainter.paint(gc, look, s, LEFT + 6, link.y + 2 + line / 2));
            gc.setFont(look.font(size(note), bold(note) ? SWT.BOLD : SWT.NORMAL));
            gc.setForeground(look.colour(note.kind() == Note.Kind.WEAK ? Role.QUIET : Role.INK));
            for (String text : lines(note, width)) {
                gc.drawString(text, indent(note), y, true);
                y += line;
            }
            if (!note.link().isEmpty()) {
                gc.setFont(look.font(Size.BODY, SWT.NORMAL));
                gc.setForeground(look.colour(Role.THREAD));
                gc.drawString(note.link(), link.x + 8, link.y + 2, true);
                if (i == chosen && isFocusControl()) {
                    gc.drawRoundRectangle(link.x, link.y, link.width - 1, link.height - 1, 4, 4);
                }
            }
        }
        places = links;
    }

    private int linkAt(int x, int y) {
        for (int i = 0; i < places.size(); i++) {
            if (!notes.get(i).link().isEmpty() && places.get(i).contains(x, y)) {
                return i;
            }
        }
        return -1;
    }

    private void click(Event e) {
        setFocus();
        int at = linkAt(e.x, e.y);
        if (at >= 0 && e.button == 1) {
            chosen = at;
            notes.get(at).todo().run();
        }
    }

    private void key(Event e) {
        if (e.keyCode == SWT.ARROW_DOWN || e.keyCode == SWT.ARROW_UP) {
            int step = e.keyCode == SWT.ARROW_DOWN ? 1 : -1;
            for (int i = chosen + step; i >= 0 && i < notes.size(); i += step) {
                if (!notes.get(i).link().isEmpty()) {
                    chosen = i;
                    redraw();
                    return;
                }
            }
        } else if ((e.character == SWT.CR || e.character == ' ') && chosen >= 0) {
            notes.get(chosen).todo().run();
        }
    }
}

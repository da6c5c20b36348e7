package culm.workbench.internal.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import culm.blank.rules.Severity;
import culm.figures.Clip;
import culm.figures.Lines;
import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.LinkText;
import culm.workbench.internal.widgets.SignPainter;

/** Name and one sentence under it with its sign; beside them what can be chosen or done. */
public final class BenchHeader extends Composite {
    private static final int LEFT = 18;
    private static final int SIGN = 18;
    private final Look look;
    private final Canvas strip;
    private final List<LinkText> links = new ArrayList<>();
    private String name = "";
    private String sentence = "";
    private Optional<Severity> sign = Optional.empty();

    /**
     * A header.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param words what can be chosen beside it
     * @param choose told which was
     */
    public BenchHeader(Composite parent, Look look, List<String> words, IntConsumer choose) {
        super(parent, SWT.NONE);
        this.look = look;
        GridLayout layout = new GridLayout(1 + words.size(), false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.marginRight = 12;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        strip = new Canvas(this, SWT.DOUBLE_BUFFERED);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        strip.setLayoutData(data);
        fit();
        strip.addListener(SWT.Resize, e -> fit());
        look.dress(strip, Role.PAPER, Role.INK);
        look.onChange(strip, strip::redraw);
        strip.addListener(SWT.Paint, this::paint);
        strip.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = name + ": " + sentence;
            }
        });
        for (int i = 0; i < words.size(); i++) {
            int number = i;
            LinkText link = new LinkText(this, look, words.get(i), Size.BODY);
            GridData top = new GridData(SWT.END, SWT.BEGINNING, false, false);
            top.verticalIndent = 8;
            link.setLayoutData(top);
            link.onClick(() -> choose.accept(number));
            links.add(link);
        }
    }

    /** Shows which link is the chosen one. */
    public void chosen(int number) {
        for (int i = 0; i < links.size(); i++) {
            links.get(i).chosen(i == number);
        }
        layout();
    }

    /** Shows a name and a sentence. @param now the sentence's sign; empty for none */
    public void show(String newName, String newSentence, Optional<Severity> now) {
        name = newName;
        sentence = newSentence;
        sign = now;
        fit();
        strip.setToolTipText(sentence);
        strip.redraw();
    }

    /** {@return the sentence that stands there} */
    public String sentence() {
        return sentence;
    }

    /** The sentence in as many lines as it needs: none of it may hide. */
    private List<String> lines() {
        int room = strip.getClientArea().width;
        return Lines.of(sentence, look.measure(), Size.HEADING, false, room == 0 ? 2000 : Math.max(200, room - LEFT - SIGN - 4));
    }

    /** As high as name and sentence need. */
    private void fit() {
        GridData data = (GridData) strip.getLayoutData();
        int height = (int) Math.ceil(line(Size.TITLE) + Math.max(1, lines().size()) * line(Size.HEADING) + 18);
        if (data.heightHint != height) {
            data.heightHint = height;
            strip.requestLayout();
        }
    }

    private double line(Size size) {
        return look.measure().line(size);
    }

    private void paint(Event e) {
        int room = strip.getClientArea().width;
        e.gc.setFont(look.font(Size.TITLE, SWT.BOLD));
        e.gc.setForeground(look.colour(Role.INK));
        e.gc.drawString(Clip.to(name, look.measure(), Size.TITLE, (room - LEFT) * 0.92), LEFT, 7, true);
        int y = (int) (7 + line(Size.TITLE) + 3);
        int x = LEFT;
        e.gc.setForeground(look.colour(sign.map(SignPainter::role).orElse(Role.INK)));
        if (sign.isPresent()) {
            SignPainter.paint(e.gc, look, sign.get(), LEFT + 6, y + (int) (line(Size.HEADING) / 2));
            e.gc.setForeground(look.colour(sign.get() == Severity.WARNING ? Role.INK : SignPainter.role(sign.get())));
            x += SIGN;
        }
        e.gc.setFont(look.font(Size.HEADING, SWT.NORMAL));
        for (String line : lines()) {
            e.gc.drawString(line, x, y, true);
            y += (int) line(Size.HEADING);
        }
    }
}

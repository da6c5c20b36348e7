package culm.workbench.internal.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;

/** A line that says something important and offers what can be done about it; not there when there is nothing. */
public final class NoticeBar extends Composite {
    private final Look look;
    private final Role ink;
    private boolean narrow;
    private String shown = "";

    /**
     * An empty bar, which takes no room; its layout data must be of a grid.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    public NoticeBar(Composite parent, Look look) {
        this(parent, look, Role.DOES_NOT);
    }

    /**
     * The same in another ink.
     *
     * @param parent where it goes
     * @param look colours and fonts
     * @param ink of its words
     */
    public NoticeBar(Composite parent, Look look, Role ink) {
        super(parent, SWT.NONE);
        this.look = look;
        this.ink = ink;
        GridLayout layout = new GridLayout();
        layout.marginWidth = 18;
        layout.marginHeight = 2;
        setLayout(layout);
        look.dress(this, Role.PAPER, Role.INK);
        setVisible(false);
    }

    /** What can be done stands below the sentence instead of beside it; before anything is said. */
    public void narrow() {
        narrow = true;
        ((GridLayout) getLayout()).marginWidth = 6;
    }

    /** Something that can be done. */
    public record Offer(String words, Runnable todo) {
    }

    /**
     * Says something.
     *
     * @param sentence what; empty to take the bar away
     * @param offers what can be done
     */
    public void say(String sentence, Offer... offers) {
        if (sentence.equals(shown)) {
            return;
        }
        shown = sentence;
        if (Focus.in(this)) { // it goes with the link that was clicked
            getDisplay().asyncExec(Focus::back);
        }
        for (var child : getChildren()) {
            child.dispose();
        }
        ((GridLayout) getLayout()).numColumns = narrow ? 1 : 1 + offers.length;
        Label label = new Label(this, SWT.WRAP);
        label.setText(sentence);
        label.setFont(look.font(Size.BODY, SWT.BOLD));
        look.dress(label, Role.PAPER, ink);
        label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        for (Offer offer : offers) {
            LinkText link = new LinkText(this, look, offer.words(), Size.BODY);
            link.onClick(offer.todo());
        }
        boolean visible = !sentence.isEmpty();
        setVisible(visible);
        ((GridData) getLayoutData()).exclude = !visible;
        requestLayout();
    }

    /** {@return what it says; empty when it is not there} */
    public String sentence() {
        return shown;
    }
}

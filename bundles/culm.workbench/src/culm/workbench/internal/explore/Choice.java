package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;

import culm.figures.Role;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.LinkText;

/** One of several, as words beside each other. */
final class Choice extends Composite {
    private final List<LinkText> links = new ArrayList<>();
    private int chosen;

    Choice(Composite parent, Look look, Size size, List<String> words, IntConsumer choose) {
        super(parent, SWT.NONE);
        look.dress(this, Role.PAPER, Role.INK);
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        layout.spacing = 6;
        setLayout(layout);
        for (String word : words) {
            LinkText link = new LinkText(this, look, word, size);
            int number = links.size();
            link.onClick(() -> choose.accept(number));
            links.add(link);
        }
        choose(0);
    }

    /** Shows one as chosen. */
    void choose(int number) {
        chosen = number;
        for (int i = 0; i < links.size(); i++) {
            links.get(i).chosen(i == number);
        }
        layout();
        getParent().layout();
    }

    int chosen() {
        return chosen;
    }
}

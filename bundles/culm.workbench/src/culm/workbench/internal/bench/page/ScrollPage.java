package culm.workbench.internal.bench.page;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

import culm.figures.Role;
import culm.workbench.internal.look.Look;

/** Controls one below the other, each as wide as the page and as high as it has to be; it scrolls when they are higher. */
public final class ScrollPage extends ScrolledComposite {
    private final Composite content;

    /**
     * An empty page.
     *
     * @param parent where it goes
     * @param look colours and fonts
     */
    public ScrollPage(Composite parent, Look look) {
        super(parent, SWT.V_SCROLL);
        content = new Composite(this, SWT.NONE);
        look.dress(this, Role.PAPER, Role.INK);
        look.dress(content, Role.PAPER, Role.INK);
        content.setLayout(new Column());
        setContent(content);
        setExpandHorizontal(true);
        getVerticalBar().setIncrement(24);
        addListener(SWT.Resize, e -> fit());
    }

    /** {@return where the controls go} */
    public Composite content() {
        return content;
    }

    /** Lays the controls out anew after their content has changed. */
    public void fit() {
        if (isDisposed()) {
            return;
        }
        int width = getClientArea().width;
        place();
        if (getClientArea().width != width) { // the scroll bar came or went
            place();
        }
        getVerticalBar().setPageIncrement(Math.max(24, getClientArea().height - 24));
    }

    private void place() {
        Rectangle area = getClientArea();
        Point wanted = content.computeSize(area.width, SWT.DEFAULT);
        content.setSize(area.width, Math.max(area.height, wanted.y));
        content.layout();
    }

    private static final class Column extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flush) {
            int width = wHint == SWT.DEFAULT ? 400 : wHint;
            int height = 0;
            for (Control child : composite.getChildren()) {
                height += child.computeSize(width, SWT.DEFAULT).y;
            }
            return new Point(width, height);
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            int width = composite.getClientArea().width;
            int y = 0;
            for (Control child : composite.getChildren()) {
                int height = child.computeSize(width, SWT.DEFAULT).y;
                child.setBounds(0, y, width, height);
                y += height;
            }
        }
    }
}

package culm.workbench.internal.editor;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Layout;

import culm.blank.rules.Verdict;
import culm.figures.Size;
import culm.workbench.internal.look.Look;
import culm.workbench.internal.widgets.LinkText;

/** Name and verdict, and the choice of the page below. */
final class HeaderRow extends Composite {
    private static final int TOP = 12;
    private static final int GAP = 6;
    private static final int RIGHT = 12;
    private final HeaderStrip strip;
    private final Map<DesignEditor.Page, LinkText> links = new EnumMap<>(DesignEditor.Page.class);

    HeaderRow(Composite parent, Look look, Consumer<DesignEditor.Page> choose) {
        super(parent, SWT.NONE);
        setLayout(new BesideTheName());
        look.clear(this);
        strip = new HeaderStrip(this, look);
        for (DesignEditor.Page page : DesignEditor.Page.values()) {
            LinkText link = new LinkText(this, look, page.words(), Size.BODY);
            link.moveAbove(strip);
            link.onClick(() -> choose.accept(page));
            links.put(page, link);
        }
    }

    void show(String name, Verdict verdict, boolean told) {
        strip.show(name, verdict, told);
    }

    void chosen(DesignEditor.Page page) {
        links.forEach((p, link) -> link.chosen(p == page));
        layout();
    }

    Verdict verdict() {
        return strip.verdict();
    }

    /** The links stand at the right of the name; the verdict below has the whole width. */
    private final class BesideTheName extends Layout {
        @Override
        protected Point computeSize(Composite composite, int wHint, int hHint, boolean flush) {
            return strip.computeSize(wHint, hHint, flush);
        }

        @Override
        protected void layout(Composite composite, boolean flush) {
            Rectangle area = getClientArea();
            int x = area.width - RIGHT - links.values().stream().mapToInt(link -> link.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + GAP).sum() + GAP;
            strip.nameRoom(x - GAP);
            strip.setBounds(area);
            for (LinkText link : links.values()) {
                Point size = link.computeSize(SWT.DEFAULT, SWT.DEFAULT);
                link.setBounds(x, TOP, size.x, size.y);
                x += size.x + GAP;
            }
        }
    }
}
